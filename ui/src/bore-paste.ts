// Readings out of a spreadsheet or a gauge's own file, into the grid. Every way in which they can be read is
// offered with its first readings, and a hand chooses: nobody guesses which column was meant or what a comma
// stands for.
import type { BoreGrid } from './bore-file.ts';
import { spots, type Spot } from './bore-pad.ts';

/** One way to read what was pasted. */
export interface Reading {
  /** What the pasted lines are taken for. */
  as: 'column' | 'row' | 'lines-are-depths' | 'columns-are-depths';
  /** Which column or row, counted from 1; 0 where all are taken. */
  number: number;
  /** The readings by the cell they go into. */
  cells: { spot: Spot; text: string }[];
}

const NUMBER = /^[-+]?\d+(?:[.,]\d+)?$/;
const isNumber = (cell: string): boolean => NUMBER.test(cell);

/** Every way to read `text`, the first reading going to `from`; none where nothing in it is a number. */
export function readings(text: string, grid: BoreGrid, from: Spot): Reading[] {
  const ways = tables(text).flatMap((table) => ofTable(table, grid, from));
  const seen = new Set<string>();
  return ways.filter((way) => {
    const same = JSON.stringify(way.cells);
    return !seen.has(same) && seen.add(same);
  });
}

/** The text as cells. Commas alone between figures may part cells or be decimal: then it is read both ways. */
function tables(text: string): string[][][] {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const parted = (mark: string | RegExp): string[][] =>
    lines.map((line) => line.split(mark).map((cell) => cell.trim().replace(/^"|"$/g, '').trim()));
  for (const mark of ['\t', ';']) if (lines.some((line) => line.includes(mark))) return [parted(mark)];
  const commas = lines.some((line) => line.includes(','));
  if (!commas) return [parted(/\s+/)];
  if (lines.some((line) => line.includes('.'))) return [parted(',')];
  return [parted(/\s+/), parted(',')].filter((table) => table.some((row) => row.some(isNumber)));
}

function ofTable(table: string[][], grid: BoreGrid, from: Spot): Reading[] {
  const rows = table.filter((row) => row.some(isNumber));
  const width = Math.max(0, ...rows.map((row) => row.length));
  const full = rows.length > 0 && rows.every((row) => row.length === width && row.every(isNumber));
  const [depths, angles] = [grid.cells.length, grid.angles.length];
  const found: Reading[] = [];
  if (full && rows.length > 1 && width > 1) {
    const placed = (spot: (row: number, column: number) => Spot): Reading['cells'] =>
      rows.flatMap((row, at) => row.map((text, column) => ({ spot: spot(at, column), text })));
    if (rows.length === depths && width === angles) {
      const cells = placed((depth, angle) => ({ depth, angle }));
      found.push({ as: 'lines-are-depths', number: 0, cells });
    }
    if (rows.length === angles && width === depths) {
      const cells = placed((angle, depth) => ({ depth, angle }));
      found.push({ as: 'columns-are-depths', number: 0, cells });
    }
    if (found.length > 0) return found;
  }
  if (rows.length === 1) {
    const cells = along((rows[0] ?? []).filter(isNumber), grid, from);
    return cells.length > 0 ? [{ as: 'row', number: 1, cells }] : [];
  }
  for (let column = 0; column < width; column += 1) {
    const cells = along(
      rows.map((row) => row[column] ?? '').filter((cell) => isNumber(cell)),
      grid,
      from,
    );
    if (cells.length > 0) found.push({ as: 'column', number: column + 1, cells });
  }
  return found;
}

/** Cell after cell from `from`; none where there are more than cells left, since then something else was meant. */
function along(texts: string[], grid: BoreGrid, from: Spot): Reading['cells'] {
  const all = spots(grid);
  const at = all.findIndex((one) => one.depth === from.depth && one.angle === from.angle);
  const left = all.slice(Math.max(0, at));
  if (texts.length > left.length) return [];
  return texts.flatMap((text, index) => {
    const spot = left[index];
    return spot ? [{ spot, text }] : [];
  });
}
