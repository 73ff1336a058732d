// Keys of the pad that a bore is entered with: what each does to what is typed, where the pad goes next, and
// the sketch of what was typed. Nothing is judged here; the core reads the numbers once the bore is recorded.
import type { BoreGrid } from './bore-file.ts';

/** A cell of the grid. */
export interface Spot {
  depth: number;
  angle: number;
}

/** What a cell held before it was changed. */
export interface Before extends Spot {
  text: string;
}

const LONGEST = 12;
/** How often round a turn one reading shows the same: opposite contacts, three contacts, one tip. */
const COPIES: Record<string, number> = { 'two-point': 2, 'three-point': 3 };
/** The greatest deviation is drawn at most this part of the radius, as on the plot of a recorded bore. */
const ROOM = 0.25;

/** Every cell, depth by depth. */
export function spots(grid: BoreGrid): Spot[] {
  return grid.cells.flatMap((row, depth) => row.map((_, angle) => ({ depth, angle })));
}

export const textAt = (grid: BoreGrid, spot: Spot): string => grid.cells[spot.depth]?.[spot.angle] ?? '';

/** The next cell behind `spot` that is empty, else the first that is; none where all are filled in. */
export function nextEmpty(grid: BoreGrid, spot: Spot | null): Spot | null {
  const all = spots(grid);
  const at = spot === null ? -1 : all.findIndex((one) => one.depth === spot.depth && one.angle === spot.angle);
  const empty = (one: Spot): boolean => textAt(grid, one).trim() === '';
  return all.slice(at + 1).find(empty) ?? all.find(empty) ?? null;
}

/** The reading that was entered before this cell in the order of the sweep. */
export function previous(grid: BoreGrid, spot: Spot): string {
  const all = spots(grid);
  const at = all.findIndex((one) => one.depth === spot.depth && one.angle === spot.angle);
  const filled = all.slice(0, at).filter((one) => textAt(grid, one).trim() !== '');
  const last = filled.at(-1);
  return last ? textAt(grid, last).trim() : '';
}

/** What is typed once this key was pressed: a figure, the mark before decimals, or a sign that turns. */
export function pressed(text: string, key: string): string {
  if (key === 'sign') return text.startsWith('-') ? text.slice(1) : `-${text}`;
  if (key === 'erase') return text.slice(0, -1);
  if (/^[.,]$/.test(key) && /[.,]/.test(text)) return text;
  return `${text}${key}`.slice(0, LONGEST);
}

const decimals = (text: string): number => /[.,](\d*)$/.exec(text.trim())?.[1]?.length ?? 0;

/** A reading with all the decimals of its gauge: the pad goes on by itself. One without decimals waits for the key. */
export function isWhole(text: string, resolution: string): boolean {
  const shown = decimals(resolution);
  return shown > 0 && decimals(text) >= shown;
}

/**
 * Whether "next" was pressed as well where the pad has gone on by itself, to `landed`: it would leave out a cell that
 * nobody meant to, and put every later reading under a wrong angle.
 */
export function isGoneOn(landed: Spot | null, spot: Spot, text: string): boolean {
  return landed?.depth === spot.depth && landed.angle === spot.angle && text.trim() === '';
}

/** How the reading before begins, up to its mark: the figures that all readings of a bore share. */
export function head(text: string): string {
  return /^-?\d+[.,]/.exec(text)?.[0] ?? '';
}

/** One point of the sketch: where it is drawn, x to the right and y up, about a circle of radius 1. */
export interface Sketched {
  at: [number, number];
  /** Drawn from the reading across. */
  mirrored: boolean;
  /** The next angle of the grid was typed too. */
  joined: boolean;
}

/** The readings of one depth as they were typed, their differences drawn larger; empty where nothing is typed. */
export function sketch(grid: BoreGrid, depth: number): Sketched[] {
  const copies = COPIES[grid.kind] ?? 1;
  const read = (grid.cells[depth] ?? []).map((text, at) => ({
    turn: number(grid.angles[at] ?? ''),
    size: number(text) * (grid.kind === 'dial' && grid.higher === 'narrower' ? -1 : 1),
  }));
  const sizes = read.map(({ size }) => size).filter((size) => !Number.isNaN(size));
  if (sizes.length === 0) return [];
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  const most = Math.max(...sizes.map((size) => Math.abs(size - mean)));
  const all = Array.from({ length: copies }, (_, copy) =>
    read.map(({ turn, size }) => ({ turn: turn + (360 * copy) / copies, size, mirrored: copy > 0 })),
  ).flat();
  const isRead = (one: { size: number; turn: number } | undefined): boolean =>
    one !== undefined && !Number.isNaN(one.size) && !Number.isNaN(one.turn);
  return all.flatMap(({ turn, size, mirrored }, at) => {
    if (!isRead(all[at])) return [];
    const radius = 1 + (most > 0 ? (ROOM * (size - mean)) / most : 0);
    const angle = (turn * Math.PI * (grid.turn === 'clockwise' ? -1 : 1)) / 180;
    const joined = all.length > 2 && isRead(all[(at + 1) % all.length]);
    return [{ at: [radius * Math.cos(angle), radius * Math.sin(angle)] as [number, number], mirrored, joined }];
  });
}

function number(text: string): number {
  const plain = text.trim().replace(',', '.');
  return plain === '' ? Number.NaN : Number(plain);
}
