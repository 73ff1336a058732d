// Words in a drawing, which shrinks with its box: they do not.

/** Smallest text on any screen, CSS pixels. */
const LEAST = 18.4;

/** Font size in the drawing's own units, where `units` of them fill a box of `width` pixels: never under `usual`. */
export function legible(units: number, width: number, usual: number): number {
  return width > 0 ? Math.max(usual, (LEAST * units) / width) : usual;
}
