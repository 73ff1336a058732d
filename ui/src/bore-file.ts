// A grid of readings as the bore file that the core reads. Nothing is converted or judged here: numbers go
// as they were typed, and the core says what it cannot read, by line.

import { decimalOf } from './written.ts';

export type BoreKind = 'two-point' | 'three-point' | 'dial' | 'coordinates';

/** What a bore was read with and where; every number as typed. */
export interface BoreGrid {
  kind: BoreKind;
  unit: 'mm' | 'um' | 'in' | 'thou';
  resolution: string;
  mpe: string;
  repeatability: string;
  wall: string;
  /** How far the wall may be read off, mm. */
  wall_error: string;
  /** Width of the seat, mm. */
  seat: string;
  zero_diameter: string;
  zero: 'set' | 'nominal';
  higher: 'wider' | 'narrower';
  turn: 'clockwise' | 'counter-clockwise';
  depths: string[];
  angles: string[];
  /** Readings, a row a depth and a column an angle. */
  cells: string[][];
  /** Coordinates as pasted, a point a line; of the kind `coordinates` alone. */
  points: string;
}

/** What a usual gauge shows, and how far it may be off, in mm. */
export const USUAL = { resolution: '0.001', mpe: '0.004' } as const;

/** An empty grid of so many angles, even round the turn that this kind needs. */
export function emptyGrid(kind: BoreKind, angles: number, depths: number): BoreGrid {
  // Opposite contacts see a diameter twice in a turn, three contacts three times.
  const turn = kind === 'two-point' ? 180 : kind === 'three-point' ? 120 : 360;
  const degrees = Array.from({ length: angles }, (_, at) => String(Math.round((turn * at * 100) / angles) / 100));
  return {
    kind,
    unit: 'mm',
    ...USUAL,
    repeatability: '',
    wall: '',
    wall_error: '',
    seat: '',
    zero_diameter: '',
    zero: 'set',
    higher: 'wider',
    turn: 'clockwise',
    depths: Array.from({ length: depths }, (_, at) => String(4 + at * 6)),
    angles: degrees,
    cells: Array.from({ length: depths }, () => degrees.map(() => '')),
    points: '',
  };
}

/** How many cells of a grid are filled in, and how many there are. */
export function filled(grid: BoreGrid): { done: number; all: number } {
  const cells = grid.kind === 'coordinates' ? pasted(grid) : grid.cells.flat();
  return { done: cells.filter((cell) => cell.trim() !== '').length, all: cells.length };
}

/** The lines that were pasted, without empty ones. */
function pasted(grid: BoreGrid): string[] {
  return grid.points.split('\n').filter((line) => line.trim() !== '');
}

/** The file; cells that are empty are left out, since what was not read is not there. */
export function boreFile(grid: BoreGrid): string {
  const points = pasted(grid);
  const [first] = points;
  // A whole file may be pasted too: it says everything itself.
  if (grid.kind === 'coordinates' && first?.startsWith('bore')) return grid.points;
  const mark = grid.kind === 'coordinates' ? ([';', '\t', ','].find((one) => first?.includes(one)) ?? ';') : ';';
  // Between commas that part cells, a decimal comma would part its number.
  const plain = (value: string): string =>
    mark === ',' && decimalOf(value) !== null ? value.trim().replace(',', '.') : value.trim();
  const word = (name: string, value: string): string[] => (value.trim() === '' ? [] : [`${name}=${plain(value)}`]);
  // Beside a bore these are taken with a calliper or a rule: in mm whatever the bore gauge shows.
  const mm = (name: string, value: string): string[] =>
    word(name, value).map((said) => (/^[\d.,]+$/.test(value.trim()) ? `${said}mm` : said));
  // The comma of a figure that nobody typed is no evidence of what a comma in the readings means.
  const unsaid = (value: string, usual: string): string => (value.trim().replace(',', '.') === usual ? usual : value);
  const dial = grid.kind === 'dial';
  const header = [
    'bore',
    `kind=${grid.kind}`,
    `unit=${grid.unit}`,
    ...word('resolution', unsaid(grid.resolution, USUAL.resolution)),
    ...word('mpe', unsaid(grid.mpe, USUAL.mpe)),
    ...word('repeatability', grid.repeatability),
    ...mm('wall', grid.wall),
    ...mm('wall-error', grid.wall_error),
    ...mm('seat', grid.seat),
    ...(dial ? [...word('zero-diameter', grid.zero_diameter), `zero=${grid.zero}`, `higher=${grid.higher}`] : []),
    `turn=${grid.turn}`,
  ];
  if (grid.kind === 'coordinates') {
    const columns = first?.split(mark).length === 3 ? ['depth_mm', 'x', 'y'] : ['x', 'y'];
    const named = /^[a-z]/i.test(first ?? '');
    return [header.join(mark), ...(named ? [] : [columns.join(mark)]), ...points, ''].join('\n');
  }
  const rows = grid.cells.flatMap((row, depth) =>
    row.flatMap((cell, angle) =>
      cell.trim() === '' ? [] : [`${grid.depths[depth] ?? ''};${grid.angles[angle] ?? ''};${cell.trim()}`],
    ),
  );
  return [header.join(';'), `depth_mm;angle_deg;${dial ? 'reading' : 'diameter'}`, ...rows, ''].join('\n');
}
