// The small pure parts of the screens: addresses, choices, signatures, weights in words.

import { describe, expect, test } from 'vitest';
import { toggle } from './choice.ts';
import { read, write, type Address } from './router.ts';
import { isDrawn, pointOn, strokePath, type Point } from './signature.ts';
import { signalNamed, signalOf } from './signals.ts';
import { times } from './weight.ts';

/** Every screen: one that is missing here does not compile. */
const PLACES: { [S in Address['screen']]: Extract<Address, { screen: S }>[] } = {
  home: [{ screen: 'home' }],
  calibration: [{ screen: 'calibration' }],
  settings: [{ screen: 'settings' }],
  devices: [{ screen: 'devices' }],
  workshop: [{ screen: 'workshop' }],
  new: [{ screen: 'new' }],
  walk: [{ screen: 'walk', visit: 'a-1' }],
  intake: [{ screen: 'intake', visit: 'a-1' }],
  order: [{ screen: 'order', visit: 'a-1' }],
  gates: [{ screen: 'gates', visit: 'a-1', set: 'lift' }],
  leave: [{ screen: 'leave', visit: 'a-1', set: 'creep' }],
  step: ['play-vertical', 'play-vertical:2'].map((step) => ({ screen: 'step', visit: 'a-1', step })),
  looks: [{ screen: 'looks', visit: 'a-1' }],
  gauge: [{ screen: 'gauge', visit: 'a-1', step: 'play-lateral:2' }],
  photo: ['play-vertical', 'play-vertical:2'].map((step) => ({ screen: 'photo', visit: 'a-1', step })),
  driver: [{ screen: 'driver', visit: 'a-1', step: 'idle-noise' }],
  before: [{ screen: 'before', visit: 'a-1' }],
  result: [{ screen: 'result', visit: 'a-1' }],
  finding: [{ screen: 'finding', visit: 'a-1' }],
  note: [{ screen: 'note', visit: 'a-1' }],
  ledger: [{ screen: 'ledger', visit: 'a-1' }],
  bench: [{ screen: 'bench', visit: 'a-1' }],
  'work-photo': [{ screen: 'work-photo', visit: 'a-1', of: 'bench-pass-1', photo: '0af9' }],
  outcome: [{ screen: 'outcome', visit: 'a-1' }],
};

describe('addresses', () => {
  test.each(Object.values(PLACES).flat())('a written place reads back: $screen', (place) => {
    expect(read(write(place))).toEqual(place);
  });
  test.each(['', '#', '#/visit/', '#/visit/../x', '#/visit/a/step', '#/nowhere', '#/visit/a/work-photo/bench-roof/0a'])(
    '%s leads home',
    (hash) => {
      expect(read(hash)).toEqual({ screen: 'home' });
    },
  );
});

describe('choices of an any-of step', () => {
  const choices = [
    { id: 'none', lone: true },
    { id: 'rattle', lone: false },
    { id: 'pops', lone: false },
  ];
  test.each([
    [[], 'none', ['none']],
    [['none'], 'rattle', ['rattle']],
    [['pops'], 'rattle', ['rattle', 'pops']],
    [['rattle', 'pops'], 'none', ['none']],
    [['rattle'], 'rattle', []],
  ])('%j and a tap on %s gives %j', (chosen, tapped, expected) => {
    expect(toggle(choices, chosen, tapped)).toEqual(expected);
  });
});

describe('signatures', () => {
  const pad = { left: 10, top: 20, width: 200, height: 100 } as DOMRect;
  test.each([
    [10, 20, [0, 0]],
    [110, 70, [0.5, 0.5]],
    [999, -5, [1, 0]],
  ])('a pointer at %d, %d is held on the pad', (x, y, expected) => {
    expect(pointOn(pad, x, y)).toEqual(expected);
  });
  test('a stroke scales with the pad it is drawn on', () => {
    expect(
      strokePath(
        [
          [0, 0],
          [0.5, 1],
        ],
        200,
        100,
      ),
    ).toBe('M0 0L100 100');
    expect(strokePath([[0.5, 0.5]], 200, 100)).toBe('M100 50L100 50');
    expect(strokePath([], 200, 100)).toBe('');
  });
});

test.each([
  [3, 2],
  [-3, 2],
  [10, 10],
  [13, 20],
  [200, 1000],
])('%d decibans are said as %d times', (decibans, factor) => {
  expect(times(decibans)).toBe(factor);
});

test('what is no signal word reads as not rated', () => {
  expect(signalOf(null)).toBe('unrated');
  expect(signalOf('DANGER')).toBe('danger');
  expect(signalNamed('fine')).toBe('unrated');
});

describe('a signature', () => {
  const DRAWN: [string, Point[][], boolean][] = [
    ['nothing', [], false],
    ['a dot', [[[0.5, 0.5]]], false],
    ['three dots', [[[0.1, 0.5]], [[0.5, 0.5]], [[0.9, 0.5]]], false],
    [
      'a line',
      [
        [
          [0.4, 0.5],
          [0.6, 0.5],
        ],
      ],
      true,
    ],
  ];
  test.each(DRAWN)('of %s can be sent to the core or not', (_, strokes, drawn) => {
    expect(isDrawn(strokes)).toBe(drawn);
  });
});
