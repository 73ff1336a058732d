// Lengths follow the workshop's unit. By hand: 72.019 / 25.4 = 2.83539...; 0.0254 mm is one thousandth of an inch.

import { afterEach, expect, it } from 'vitest';
import { length, takeUnits } from './units.svelte.ts';

afterEach(() => takeUnits({ length: null, distance: null }));

it.each([
  [null, 72.019, 3, '72.019 mm'],
  ['mm', 0.5, 2, '0.50 mm'],
  ['thou', 72.019, 3, '2.8354 in'],
  ['thou', 0.0254, 3, '1.0 thou'],
  ['thou', 10, 1, '0.3937 in'],
  ['thou', -25.4, 1, '-1.0000 in'],
] as const)('shows in %s', (unit, mm, decimals, text) => {
  takeUnits({ length: unit, distance: null });
  expect(length(mm, decimals).replace(/\u00a0/g, ' ')).toBe(text);
});
