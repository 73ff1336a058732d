// Marks over a photo: how they are drawn on a picture of a size in pixels, and how a finger or a key makes
// one. Spots are shares of the picture, as the core keeps them; the papers draw the same shapes.

import { strokePath } from './signature.ts';
import { SPOTS } from './types/Limits.ts';
import type { Mark } from './types/Mark.ts';

export type Shape = Mark['shape'];
export type Spot = [number, number];

/** A mark that is being drawn. */
export interface Draft {
  shape: Shape;
  spots: Spot[];
}

/** How far apart the spots of one free line are at least. */
const STRIDE = 0.004;
const LEAST_EXTENT = 0.01;

/** How large the words of marks are on a picture of this size; lines are drawn in proportion. */
export function wordSize(width: number, height: number): number {
  return Math.min(width, height) / 16;
}

/** What a mark draws, as an SVG path; words draw nothing. */
export function markPath(mark: Mark, width: number, height: number): string {
  switch (mark.shape) {
    case 'arrow':
      return arrowPath(place(mark.from, width, height), place(mark.to, width, height), wordSize(width, height));
    case 'ring':
      return ringPath(place(mark.corners[0], width, height), place(mark.corners[1], width, height));
    case 'freehand':
      return strokePath(mark.points, width, height);
    case 'label':
      return '';
  }
}

/** Where the words of a mark stand, held within the picture: the middle, the size of the type, the slip behind. */
export function wordPlace(at: Spot, text: string, width: number, height: number) {
  const room = width * 0.94;
  const asked = wordSize(width, height);
  const size = Math.min(asked, room / letters(text) || asked);
  const [wide, high] = [letters(text) * size, size * 1.5];
  const held = (middle: number, half: number, whole: number): number =>
    Math.min(Math.max(middle, half), Math.max(half, whole - half));
  return {
    x: held(at[0] * width, wide / 2, width),
    y: held(at[1] * height, high / 2, height),
    size,
    wide,
    high,
  };
}

/** Begins a mark at a spot. */
export function begin(shape: Shape, at: Spot): Draft {
  return { shape, spots: [at] };
}

/** Goes on to a spot: a free line passes it, every other shape ends there so far. */
export function goOnTo(draft: Draft, at: Spot): Draft {
  const [first, ...rest] = draft.spots;
  if (draft.shape === 'label' || !first) return { ...draft, spots: [at] };
  if (draft.shape !== 'freehand') return { ...draft, spots: [first, at] };
  const last = rest.at(-1) ?? first;
  return Math.hypot(at[0] - last[0], at[1] - last[1]) < STRIDE ? draft : { ...draft, spots: [...draft.spots, at] };
}

/** The mark a draft makes; none where the finger only slipped or there are no words. */
export function finished(draft: Draft, words: string): Mark | null {
  const [from, ...rest] = draft.spots;
  const to = rest.at(-1);
  const text = words.trim();
  if (draft.shape === 'label') return from && text !== '' ? { shape: 'label', at: from, text } : null;
  if (!from || !to) return null;
  const [across, down] = [Math.abs(from[0] - to[0]), Math.abs(from[1] - to[1])];
  switch (draft.shape) {
    case 'arrow':
      return Math.hypot(across, down) >= LEAST_EXTENT ? { shape: 'arrow', from, to } : null;
    case 'ring':
      return Math.min(across, down) >= LEAST_EXTENT ? { shape: 'ring', corners: [from, to] } : null;
    case 'freehand':
      return { shape: 'freehand', points: thinned(draft.spots) };
  }
}

/** Every so-many-th spot and the last, where a line has more than are kept. */
function thinned(spots: Spot[]): Spot[] {
  if (spots.length <= SPOTS) return spots;
  const at = (index: number): Spot[] => spots.slice(index, index + 1);
  return Array.from({ length: SPOTS }, (_, index) => Math.round((index * (spots.length - 1)) / (SPOTS - 1))).flatMap(
    at,
  );
}

/** About how many sizes of the type a text is wide: wide scripts and pictures fill one, letters less. */
function letters(text: string): number {
  const widths = [...text].map((letter) => ((letter.codePointAt(0) ?? 0) >= 0x2e80 ? 1 : 0.62));
  return widths.reduce((sum, width) => sum + width, 0.8);
}

function place([x, y]: Spot, width: number, height: number): Spot {
  return [x * width, y * height];
}

/** Shaft and head; the head's strokes stand 28 degrees off the shaft and are at most half as long. */
function arrowPath(from: Spot, to: Spot, size: number): string {
  const angle = Math.atan2(from[1] - to[1], from[0] - to[0]);
  const barb = Math.min(size * 1.6, Math.hypot(from[0] - to[0], from[1] - to[1]) / 2);
  const end = (turn: number): Spot => [to[0] + barb * Math.cos(angle + turn), to[1] + barb * Math.sin(angle + turn)];
  const turn = (28 * Math.PI) / 180;
  return strokePath([from, to], 1, 1) + strokePath([end(turn), to, end(-turn)], 1, 1);
}

function ringPath(one: Spot, other: Spot): string {
  const [across, down] = [Math.abs(one[0] - other[0]) / 2, Math.abs(one[1] - other[1]) / 2];
  const left = Math.min(one[0], other[0]);
  const middle = (one[1] + other[1]) / 2;
  return `M${left} ${middle}a${across} ${down} 0 1 0 ${across * 2} 0a${across} ${down} 0 1 0 ${-across * 2} 0`;
}
