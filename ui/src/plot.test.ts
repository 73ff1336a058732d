import { expect, test } from 'vitest';
import { legible } from './plot.ts';

test.each([
  ['a box as wide as its units', 100, 100, 7, 18.4],
  ['a box that grew', 100, 600, 7, 7],
  ['a box that is not laid out yet', 100, 0, 7, 7],
])('words stay legible in %s', (_, units, width, usual, size) => {
  expect(legible(units, width, usual)).toBeCloseTo(size, 9);
});
