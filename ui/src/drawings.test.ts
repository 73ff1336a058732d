import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { layoutOf } from './drawings/layouts.ts';
import type { Support } from './types/Support.ts';

const SHIPPED = readdirSync('../src-tauri/core/data/layouts').map((name) => name.replace(/\.toml$/, ''));

it('draws each layout that is shipped, no two alike', () => {
  expect(SHIPPED.length).toBeGreaterThan(4);
  // What is drawn for a layout nobody ships says whether one has a drawing of its own.
  const drawn = SHIPPED.map((id) => JSON.stringify(layoutOf(id, 'rigid')));
  expect(new Set(drawn).size).toBe(SHIPPED.length);
});

it.each<[Support, string]>([
  ['rigid', 'rigid-output-speed'],
  ['rubber', 'rubber-centre'],
  ['tube', 'torque-tube'],
  ['none', 'one-piece'],
])("draws a workshop's own layout with a %s support as %s", (support, as) => {
  expect(layoutOf('of-this-workshop', support)).toBe(layoutOf(as, support));
});
