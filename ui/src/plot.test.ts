import { expect, test } from 'vitest';
import { between, legible, pieces } from './plot.ts';

test.each([
  ['a box as wide as its units', 100, 100, 7, 18.4],
  ['a box that grew', 100, 600, 7, 7],
  ['a box that is not laid out yet', 100, 0, 7, 7],
])('words stay legible in %s', (_, units, width, usual, size) => {
  expect(legible(units, width, usual)).toBeCloseTo(size, 9);
});

test('opens the wall where nothing was read', () => {
  const point = (x: number, gap_follows = false) => ({ at: [x, 0] as [number, number], gap_follows });
  expect(pieces([point(1), point(2)])).toEqual([
    [
      [1, 0],
      [2, 0],
    ],
  ]);
  expect(pieces([point(1), point(2, true), point(3), point(4)])).toEqual([
    [
      [3, 0],
      [4, 0],
      [1, 0],
      [2, 0],
    ],
  ]);
  expect(pieces([point(1, true), point(2, true)])).toEqual([[[2, 0]], [[1, 0]]]);
});

test('draws a ring between the arcs that were not read', () => {
  expect(between([])).toEqual([[0, 360]]);
  expect(between([[165, 360]])).toEqual([[0, 165]]);
  expect(
    between([
      [10, 100],
      [350, 365],
    ]),
  ).toEqual([
    [100, 350],
    [5, 10],
  ]);
});
