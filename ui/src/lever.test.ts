import { expect, it } from 'vitest';
import { emptyLever, positionOf } from './lever.ts';

it('puts the zero at the nearer bearing of a pair, the other behind it', () => {
  const pair = { ...emptyLever('rigid'), apart: '80', out: '150' };
  expect(pair.lever).toBe('either');
  const near = { at: 'shaft', pivot_mm: '-80', bearing_mm: '0', gauge_mm: '150', or: null, error_mm: null };
  const far = { pivot_mm: '0', bearing_mm: '-80' };
  expect(positionOf({ ...pair, lever: 'near' })).toEqual(near);
  expect(positionOf({ ...pair, lever: 'far' })).toEqual({ ...near, ...far });
  expect(positionOf(pair)).toEqual({ ...near, or: far });
});

it('takes a bearing that is alone from its far joint', () => {
  const alone = { ...emptyLever('rubber'), jointBearing: '560', jointGauge: '610' };
  expect(positionOf(alone)).toEqual({
    at: 'shaft',
    pivot_mm: '0',
    bearing_mm: '560',
    gauge_mm: '610',
    or: null,
    error_mm: null,
  });
});
