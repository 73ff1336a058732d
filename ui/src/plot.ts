// Words in a drawing, which shrinks with its box: they do not.

/** Smallest text on any screen, CSS pixels. */
const LEAST = 18.4;

/** Font size in the drawing's own units, where `units` of them fill a box of `width` pixels: never under `usual`. */
export function legible(units: number, width: number, usual: number): number {
  return width > 0 ? Math.max(usual, (LEAST * units) / width) : usual;
}

/** The wall as it was read, in pieces: where a gap follows a piece ends. */
export function pieces(points: { at: [number, number]; gap_follows: boolean }[]): [number, number][][] {
  const afterGap = points.findIndex((point) => point.gap_follows) + 1;
  const all: [number, number][][] = [[]];
  for (const point of [...points.slice(afterGap), ...points.slice(0, afterGap)]) {
    all.at(-1)?.push(point.at);
    if (point.gap_follows) all.push([]);
  }
  return all.filter((piece) => piece.length > 0);
}

/** What arcs leave of a ring, each from and to in degrees; `to` may pass 360. The arcs stand in order. */
export function between(arcs: [number, number][]): [number, number][] {
  if (arcs.length === 0) return [[0, 360]];
  return arcs.map(([, to], at) => {
    const [next] = arcs[(at + 1) % arcs.length] ?? [0, 0];
    const from = to % 360;
    return [from, from + ((((next - from) % 360) + 360) % 360)] as [number, number];
  });
}
