// Where a part of a drawing stands.

import type { Support } from '../types/Support.ts';

export interface Placed {
  x: number;
  y: number;
}

/** A part that is drawn by how this car holds its bearing. */
export interface Held extends Placed {
  support: Support;
}
