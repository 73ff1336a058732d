// How a car carries its shaft, as it is drawn where the layout is chosen: from the side, nose to the right, as on the
// papers. 160 by 56 units.

import type { Support } from '../types/Support.ts';

type Spot = readonly [number, number];
/** Left, top, width, height. */
type Box = readonly [number, number, number, number];

export interface Layout {
  /** Engine, gearbox, axle. */
  boxes: readonly Box[];
  /** What is only there beside the shaft that is meant. */
  beside?: string;
  /** A tube round the shaft. */
  tube?: Box;
  shaft: string;
  /** Bearings held in something solid, or in the tube. */
  solid?: readonly Spot[];
  /** Bearings held in a ring of rubber. */
  rubber?: readonly Spot[];
  /** Joints whose play decides. */
  joints?: readonly Spot[];
}

const ENGINE: Box = [111, 20, 27, 17];
const FORWARD: Box = [116, 20, 22, 17];
const GEARBOX: Box = [102, 25, 14, 10];
const AXLE: Box = [26, 26, 16, 12];
const REAR_GEARBOX: Box = [26, 25, 24, 13];
const BETWEEN = 'M102 30L73 32L42 31';
const FRONT = [FORWARD, GEARBOX, AXLE] as const;

const LAYOUTS: Record<string, Layout> = {
  'rigid-engine-speed': { boxes: [ENGINE, REAR_GEARBOX], shaft: 'M111 31H50', solid: [[102, 31]] },
  'rigid-output-speed': { boxes: FRONT, shaft: BETWEEN, solid: [[73, 32]] },
  'rubber-centre': { boxes: FRONT, shaft: BETWEEN, rubber: [[73, 32]] },
  'two-centres': {
    boxes: FRONT,
    shaft: 'M102 30L85 31L62 32L42 31',
    rubber: [
      [84, 31],
      [61, 32],
    ],
  },
  'torque-tube': {
    boxes: [ENGINE, REAR_GEARBOX],
    tube: [50, 25, 61, 12],
    shaft: 'M111 31H50',
    solid: [
      [62, 31],
      [80, 31],
      [98, 31],
    ],
  },
  'one-piece': {
    boxes: FRONT,
    shaft: 'M102 30L42 31',
    joints: [
      [98, 30],
      [46, 31],
    ],
  },
  'front-shaft': {
    boxes: [FORWARD, GEARBOX, [86, 24, 16, 20], AXLE],
    beside: 'M86 30L42 31M118 41H134',
    shaft: 'M102 40L120 41',
    joints: [
      [103, 40],
      [119, 41],
    ],
  },
  'half-shaft': { boxes: [[111, 20, 27, 15]], shaft: 'M100 28H116L125 38', solid: [[104, 28]] },
};

/** Of a workshop's own layout only how it holds the bearing is known. */
const OWN: Record<Support, string> = {
  rigid: 'rigid-output-speed',
  rubber: 'rubber-centre',
  tube: 'torque-tube',
  none: 'one-piece',
};

/** How a layout is drawn; a workshop's own as the plainest that holds its bearing so. */
export function layoutOf(id: string, support: Support): Layout | undefined {
  return LAYOUTS[id] ?? LAYOUTS[OWN[support]];
}
