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

/** Whether any line was drawn; whether it is a signature, the core says. */
export function isDrawn(strokes: readonly (readonly Point[])[]): boolean {
  return strokes.some((stroke) => stroke.length > 1);
}

function share(distance: number, whole: number): number {
  if (whole <= 0) return 0;
  return Math.round(Math.min(1, Math.max(0, distance / whole)) * 10_000) / 10_000;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
