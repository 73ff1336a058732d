// A signature as strokes of points, each coordinate 0 to 1 of the pad it was written on.

export type Point = [number, number];

/** Where a pointer is on the pad, held within it. */
export function pointOn(pad: DOMRect, clientX: number, clientY: number): Point {
  return [share(clientX - pad.left, pad.width), share(clientY - pad.top, pad.height)];
}

/** A stroke as an SVG path on a pad of this size; one point alone is drawn as a dot. */
export function strokePath(stroke: readonly Point[], width: number, height: number): string {
  const [first] = stroke;
  if (!first) return '';
  const points = stroke.length === 1 ? [first, first] : stroke;
  return points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${round(x * width)} ${round(y * height)}`).join('');
}

/** How long a line is at least, in shares of the pad's width, to be somebody's mark and not a slip of the finger. */
const LEAST = 0.1;

/** Whether more was written than a dot or a touch; what a signature is, the core decides. */
export function isWritten(strokes: readonly (readonly Point[])[]): boolean {
  let length = 0;
  for (const stroke of strokes)
    for (const [at, [x, y]] of stroke.entries()) {
      const before = stroke[at - 1];
      // The pad is twice as wide as high.
      if (before) length += Math.hypot(x - before[0], (y - before[1]) / 2);
    }
  return length >= LEAST;
}

function share(distance: number, whole: number): number {
  if (whole <= 0) return 0;
  return Math.round(Math.min(1, Math.max(0, distance / whole)) * 10_000) / 10_000;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
