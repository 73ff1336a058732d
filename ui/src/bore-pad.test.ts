import { expect, it } from 'vitest';
import { emptyGrid } from './bore-file.ts';
import { head, isGoneOn, isWhole, nextEmpty, pressed, previous, sketch, spots } from './bore-pad.ts';

it('types figures, one mark, and a sign that turns', () => {
  const typed = (...keys: string[]): string => keys.reduce(pressed, '');
  expect(typed('7', '2', '.', '0', '.', '3')).toBe('72.03');
  expect(typed('7', '2', ',', '0', '.', '3')).toBe('72,03');
  expect(typed('4', 'sign', '.', '5')).toBe('-4.5');
  expect(typed('sign', '4', 'sign')).toBe('4');
  expect(typed('1', '2', 'erase')).toBe('1');
});

it('goes on once a reading has the decimals of its gauge, and waits where a gauge shows none', () => {
  expect(isWhole('72.03', '0.001')).toBe(false);
  expect(isWhole('72.031', '0.001')).toBe(true);
  expect(isWhole('-0,5', '0.1')).toBe(true);
  expect(isWhole('123', '1')).toBe(false);
});

it('takes a press of "next" for the step it has just made, at that cell and while it is empty', () => {
  const landed = { depth: 0, angle: 1 };
  expect(isGoneOn(landed, { depth: 0, angle: 1 }, '')).toBe(true);
  expect(isGoneOn(landed, { depth: 0, angle: 1 }, '7')).toBe(false);
  expect(isGoneOn(landed, { depth: 1, angle: 1 }, '')).toBe(false);
  expect(isGoneOn(null, { depth: 0, angle: 1 }, '')).toBe(false);
});

it('finds the next cell that is empty, behind first and then from the start', () => {
  const grid = emptyGrid('dial', 2, 2);
  expect(spots(grid)).toHaveLength(4);
  grid.cells = [
    ['', '1'],
    ['2', ''],
  ];
  expect(nextEmpty(grid, { depth: 0, angle: 0 })).toEqual({ depth: 1, angle: 1 });
  expect(nextEmpty(grid, { depth: 1, angle: 1 })).toEqual({ depth: 0, angle: 0 });
  expect(previous(grid, { depth: 1, angle: 1 })).toBe('2');
  expect(previous(grid, { depth: 0, angle: 0 })).toBe('');
  grid.cells = [
    ['1', '1'],
    ['1', '1'],
  ];
  expect(nextEmpty(grid, null)).toBeNull();
});

it('begins as the reading before does', () => {
  expect(head('72.031')).toBe('72.');
  expect(head('72,031')).toBe('72,');
  expect(head('-4')).toBe('');
});

it('sketches what is typed, an oval as an oval, its mirrored half hollow', () => {
  const grid = emptyGrid('two-point', 4, 1);
  expect(sketch(grid, 0)).toEqual([]);
  grid.cells = [['72.02', '72.00', '71.98', '']];
  const points = sketch(grid, 0);
  expect(points.map((point) => point.mirrored)).toEqual([false, false, false, true, true, true]);
  expect(points[0]?.at[0]).toBeCloseTo(1.25);
  expect(points[2]?.at).toEqual([expect.closeTo(0), expect.closeTo(-0.75)]);
  expect(points[2]?.joined).toBe(false);
  expect(points[1]?.joined).toBe(true);
});

it('draws a dial that reads narrower upwards the other way, and what is no number not at all', () => {
  const grid = { ...emptyGrid('dial', 4, 1), higher: 'narrower' as const, turn: 'counter-clockwise' as const };
  grid.cells = [['1', '0', 'x', '-1']];
  const points = sketch(grid, 0);
  expect(points).toHaveLength(3);
  expect(points[0]?.at[0]).toBeCloseTo(0.75);
  expect(points[2]?.at[1]).toBeCloseTo(-1.25);
});
