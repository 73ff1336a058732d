import { describe, expect, test } from 'vitest';
import { begin, finished, goOnTo, markPath, wordPlace, type Draft, type Shape, type Spot } from './marks.ts';

function drawn(shape: Shape, spots: Spot[]): Draft {
  const [first = [0, 0] as Spot, ...rest] = spots;
  return rest.reduce(goOnTo, begin(shape, first));
}

describe('a finger', () => {
  test.each([
    [
      'arrow',
      [
        [0.1, 0.1],
        [0.3, 0.3],
        [0.6, 0.5],
      ],
      { shape: 'arrow', from: [0.1, 0.1], to: [0.6, 0.5] },
    ],
    [
      'ring',
      [
        [0.6, 0.5],
        [0.1, 0.1],
      ],
      {
        shape: 'ring',
        corners: [
          [0.6, 0.5],
          [0.1, 0.1],
        ],
      },
    ],
    [
      'freehand',
      [
        [0.1, 0.1],
        [0.2, 0.1],
        [0.2, 0.2],
      ],
      {
        shape: 'freehand',
        points: [
          [0.1, 0.1],
          [0.2, 0.1],
          [0.2, 0.2],
        ],
      },
    ],
    [
      'label',
      [
        [0.1, 0.1],
        [0.2, 0.1],
      ],
      { shape: 'label', at: [0.2, 0.1], text: 'crack' },
    ],
    [
      'arrow',
      [
        [0.1, 0.1],
        [0.105, 0.1],
      ],
      null,
    ],
    [
      'ring',
      [
        [0.1, 0.1],
        [0.9, 0.1],
      ],
      null,
    ],
    [
      'freehand',
      [
        [0.1, 0.1],
        [0.101, 0.1],
      ],
      null,
    ],
    ['arrow', [[0.1, 0.1]], null],
  ] as [Shape, Spot[], unknown][])('that draws %s at %j makes %j', (shape, spots, mark) => {
    expect(finished(drawn(shape, spots), ' crack ')).toEqual(mark);
  });

  test('sets no words where there are none', () => {
    expect(finished(drawn('label', [[0.5, 0.5]]), '  ')).toBeNull();
  });

  test('makes a long line of 200 spots with both its ends', () => {
    const spots = Array.from({ length: 1000 }, (_, at): Spot => [at / 1000, (at % 2) / 2]);
    const mark = finished(drawn('freehand', spots), '');
    const points = mark?.shape === 'freehand' ? mark.points : [];
    expect([points.length, points[0], points.at(-1)]).toEqual([200, spots[0], spots.at(-1)]);
  });
});

describe('on a picture of 400 by 200', () => {
  test.each([
    [
      {
        shape: 'ring',
        corners: [
          [0.75, 0.5],
          [0.25, 0],
        ],
      },
      'M100 50a100 50 0 1 0 200 0a100 50 0 1 0 -200 0',
    ],
    [
      {
        shape: 'freehand',
        points: [
          [0, 0],
          [1, 1],
        ],
      },
      'M0 0L400 200',
    ],
    [{ shape: 'label', at: [0.5, 0.5], text: 'x' }, ''],
  ] as const)('%j is the path %s', (mark, path) => {
    expect(markPath(structuredClone(mark) as unknown as Parameters<typeof markPath>[0], 400, 200)).toBe(path);
  });

  test('an arrow ends in its tip with a head behind it', () => {
    const path = markPath({ shape: 'arrow', from: [0, 0.5], to: [1, 0.5] }, 400, 200);
    expect(path).toMatch(/^M0 100L400 100M[\d.]+ [\d.]+L400 100L[\d.]+ [\d.]+$/);
    const [, x = '0'] = /M([\d.]+) [\d.]+L400 100L/.exec(path.slice(3)) ?? [];
    expect(Number(x)).toBeLessThan(400);
  });

  test.each([
    [[0, 0], 'a word'],
    [[1, 1], 'W'.repeat(40)],
    [[0.5, 0], '\u{1F697}'.repeat(40)],
    [[1, 0.5], 'x'],
  ] as [Spot, string][])('words at %j stay on it', (at, text) => {
    const { x, y, wide, high } = wordPlace(at, text, 400, 200);
    expect(x - wide / 2).toBeGreaterThanOrEqual(0);
    expect(x + wide / 2).toBeLessThanOrEqual(400);
    expect(y - high / 2).toBeGreaterThanOrEqual(0);
    expect(y + high / 2).toBeLessThanOrEqual(200);
  });
});
