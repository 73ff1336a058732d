import { expect, it } from 'vitest';
import { emptyGrid } from './bore-file.ts';
import { readings } from './bore-paste.ts';

const START = { depth: 0, angle: 0 };
const said = (text: string, angles = 3, depths = 2): string[] =>
  readings(text, emptyGrid('dial', angles, depths), START).map((way) => {
    const cells = way.cells.map(({ spot, text: cell }) => `${spot.depth}.${spot.angle}=${cell}`);
    return `${way.as} ${way.number}: ${cells.join(' ')}`;
  });

it('puts one column in from the place of the pad on', () => {
  expect(said('72.031\n72.029\n')).toEqual(['column 1: 0.0=72.031 0.1=72.029']);
  expect(said('72.031\t72.029')).toEqual(['row 1: 0.0=72.031 0.1=72.029']);
});

it('offers each column of a gauge file that holds numbers', () => {
  expect(said('no;value;unit\n1;72,031;mm\n2;72,029;mm')).toEqual([
    'column 1: 0.0=1 0.1=2',
    'column 2: 0.0=72,031 0.1=72,029',
  ]);
});

it('reads a table by its size, and a square one both ways', () => {
  expect(said('1\t2\t3\n4\t5\t6')).toEqual(['lines-are-depths 0: 0.0=1 0.1=2 0.2=3 1.0=4 1.1=5 1.2=6']);
  expect(said('1\t4\n2\t5\n3\t6')).toEqual(['columns-are-depths 0: 0.0=1 1.0=4 0.1=2 1.1=5 0.2=3 1.2=6']);
  expect(said('1\t2\n3\t4', 2, 2)).toHaveLength(2);
});

it('shows both readings of a comma that may part cells or be decimal', () => {
  expect(said('72,031\n72,029')).toEqual([
    'column 1: 0.0=72,031 0.1=72,029',
    'column 1: 0.0=72 0.1=72',
    'column 2: 0.0=031 0.1=029',
  ]);
  expect(said('72.031,1\n72.029,2')).toEqual(['column 1: 0.0=72.031 0.1=72.029', 'column 2: 0.0=1 0.1=2']);
});

it('puts nothing in that has no room or is no number', () => {
  expect(said('1\n2\n3\n4\n5\n6\n7')).toEqual([]);
  expect(said('good morning')).toEqual([]);
});
