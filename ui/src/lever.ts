// The lever of a gauge as it was typed, as the place the core reads. Nothing is worked out here: the zero is where it
// needs no sum.
import type { GaugePosition } from './types/GaugePosition.ts';
import type { Support } from './types/Support.ts';

/** Which bearing moves and what the shaft tilts about. */
export type LeverKind = 'near' | 'far' | 'either' | 'joint';
export const LEVERS: readonly LeverKind[] = ['near', 'far', 'either', 'joint'];

/** A lever as typed, lengths in mm. */
export interface Levered {
  lever: LeverKind;
  /** From one bearing of the pair to the other. */
  apart: string;
  /** From the nearer bearing of the pair out to the gauge. */
  out: string;
  /** From the far joint to the bearing, and to the gauge. */
  jointBearing: string;
  jointGauge: string;
}

/** A lever of which nothing is typed yet: a rigid support and a tube hold bearings in pairs, rubber holds one. */
export function emptyLever(support: Support | null): Levered {
  return { lever: support === 'rubber' ? 'joint' : 'either', apart: '', out: '', jointBearing: '', jointGauge: '' };
}

/** The place; of a pair the nearer bearing is the zero and the other lies behind it. */
export function positionOf(typed: Levered): GaugePosition {
  if (typed.lever === 'joint') {
    return {
      at: 'shaft',
      pivot_mm: '0',
      gauge_mm: typed.jointGauge,
      bearing_mm: typed.jointBearing,
      or: null,
      error_mm: null,
    };
  }
  const behind = `-${typed.apart.trim()}`;
  const near = { pivot_mm: behind, bearing_mm: '0' };
  const far = { pivot_mm: '0', bearing_mm: behind };
  const one = typed.lever === 'far' ? far : near;
  return { at: 'shaft', ...one, gauge_mm: typed.out, or: typed.lever === 'either' ? far : null, error_mm: null };
}
