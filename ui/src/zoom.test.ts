import { expect, test } from 'vitest';
import { oneToOne, pushed, spotAt, whole, zoomTo } from './zoom.ts';

const STAGE = { width: 360, height: 300 };
const PICTURE = { width: 2560, height: 1920 };

test('the whole picture stands in the middle', () => {
  expect(whole(STAGE, PICTURE)).toEqual({ scale: 360 / 2560, x: 0, y: 15 });
});

test('one to one is one picture pixel on one dot', () => {
  expect([oneToOne(1), oneToOne(3), oneToOne(0.5)]).toEqual([1, 1 / 3, 1]);
});

test.each([
  ['one to one', 1 / 3, 1 / 3],
  ['as far as it goes', 99, 4 / 3],
  ['no further out than whole', 0.001, 360 / 2560],
])('zooms: %s', (_, asked, scale) => {
  expect(zoomTo(whole(STAGE, PICTURE), asked, [180, 150], STAGE, PICTURE, 3).scale).toBeCloseTo(scale, 9);
});

test('what is under the fingers stays there', () => {
  const before = zoomTo(whole(STAGE, PICTURE), 0.3, [180, 150], STAGE, PICTURE, 3);
  const after = zoomTo(before, 0.6, [100, 200], STAGE, PICTURE, 3);
  expect(spotAt(after, 100, 200, PICTURE)).toEqual(spotAt(before, 100, 200, PICTURE));
});

test('a pushed picture leaves no gap at its edge', () => {
  const near = zoomTo(whole(STAGE, PICTURE), 1, [180, 150], STAGE, PICTURE, 1);
  expect(pushed(near, 9999, 9999, STAGE, PICTURE)).toEqual({ scale: 1, x: 0, y: 0 });
  expect(pushed(near, -9999, -9999, STAGE, PICTURE)).toEqual({ scale: 1, x: 360 - 2560, y: 300 - 1920 });
});

test.each([
  [
    [0, 15],
    [0, 0],
  ],
  [
    [360, 285],
    [1, 1],
  ],
  [
    [180, 150],
    [0.5, 0.5],
  ],
  [
    [-50, 999],
    [0, 1],
  ],
])('the place %j of the stage is the spot %j', ([x = 0, y = 0], spot) => {
  expect(spotAt(whole(STAGE, PICTURE), x, y, PICTURE)).toEqual(spot);
});

test('a small picture is enlarged to fill the stage and no further than whole asks', () => {
  const tiny = { width: 40, height: 30 };
  expect(whole(STAGE, tiny).scale).toBe(9);
  expect(zoomTo(whole(STAGE, tiny), 0.1, [0, 0], STAGE, tiny, 1).scale).toBe(9);
});
