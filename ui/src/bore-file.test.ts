import { expect, it } from 'vitest';
import { boreFile, emptyGrid, filled } from './bore-file.ts';

it('spreads angles over the turn in which a kind sees something new', () => {
  expect(emptyGrid('two-point', 4, 1).angles).toEqual(['0', '45', '90', '135']);
  expect(emptyGrid('three-point', 3, 1).angles).toEqual(['0', '40', '80']);
  expect(emptyGrid('dial', 4, 1).angles).toEqual(['0', '90', '180', '270']);
});

it('writes what was typed as it was typed, and leaves out what was not read', () => {
  const grid = emptyGrid('two-point', 2, 2);
  grid.cells = [
    ['72.031', ''],
    ['72,029', '72.040'],
  ];
  expect(filled(grid)).toEqual({ done: 3, all: 4 });
  expect(boreFile(grid)).toBe(
    [
      'bore;kind=two-point;unit=mm;resolution=0.001;mpe=0.004;turn=clockwise',
      'depth_mm;angle_deg;diameter',
      '4;0;72.031',
      '10;0;72,029',
      '10;90;72.040',
      '',
    ].join('\n'),
  );
});

it('writes pasted coordinates under a header of their own mark, and a whole file as it is', () => {
  const grid = { ...emptyGrid('coordinates', 1, 1), points: '4,36.01,0\n\n4,0,36.02\n' };
  expect(filled(grid)).toEqual({ done: 2, all: 2 });
  expect(boreFile(grid)).toBe(
    [
      'bore,kind=coordinates,unit=mm,resolution=0.001,mpe=0.004,turn=clockwise',
      'depth_mm,x,y',
      '4,36.01,0',
      '4,0,36.02',
      '',
    ].join('\n'),
  );
  expect(boreFile({ ...grid, points: '36.01;0' })).toContain('\nx;y\n36.01;0\n');
  expect(boreFile({ ...grid, points: 'x\ty\n36.01\t0' })).toContain('turn=clockwise\nx\ty\n36.01\t0\n');
  expect(boreFile({ ...grid, points: 'bore,kind=coordinates\nx,y\n1,2' })).toBe('bore,kind=coordinates\nx,y\n1,2');
});

it('proves no comma of the readings by figures that the screen filled in', () => {
  const grid = { ...emptyGrid('two-point', 1, 1), resolution: '0,001', mpe: '0,02' };
  expect(boreFile(grid)).toContain('resolution=0.001;mpe=0,02;');
});

it('keeps a typed comma out of a header that commas part', () => {
  const grid = { ...emptyGrid('coordinates', 1, 1), points: '36.01,0', mpe: '0,004', wall: '6,4', seat: '1,250' };
  expect(boreFile(grid)).toContain('mpe=0.004,wall=6.4mm,seat=1,250mm,');
});

it('writes what a calliper or a rule measured in mm, whatever the bore gauge shows', () => {
  const grid = { ...emptyGrid('dial', 1, 1), unit: 'um' as const, wall: '6.4', wall_error: '0,05', seat: '17mm' };
  expect(boreFile(grid)).toContain('wall=6.4mm;wall-error=0,05mm;seat=17mm;');
});

it('names zero and sign for a dial alone', () => {
  const grid = emptyGrid('dial', 1, 1);
  grid.zero_diameter = '72';
  expect(boreFile(grid)).toContain('zero-diameter=72;zero=set;higher=wider');
  expect(boreFile(emptyGrid('two-point', 1, 1))).not.toContain('zero');
});
