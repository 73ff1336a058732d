import { expect, it } from 'vitest';
import { Drawn } from './drawn.svelte.ts';
import type { Mark } from './types/Mark.ts';

const dot = (at: number): Mark => ({ shape: 'label', at: [at, at], text: 'here' });

it('takes back one change after the other, down to what the ledger has, and no further', () => {
  const drawn = new Drawn();
  drawn.draw([dot(0.1)]);
  drawn.draw([dot(0.1), dot(0.2)]);
  drawn.draw([]);
  drawn.undo();
  expect([drawn.marks, drawn.undone]).toEqual([[dot(0.1), dot(0.2)], true]);
  drawn.undo();
  expect(drawn.marks).toEqual([dot(0.1)]);
  drawn.undo();
  expect([drawn.marks, drawn.undoes]).toEqual([null, false]);
  drawn.undo();
  expect(drawn.marks).toBeNull();
});

it.each(['recorded', 'drop'] as const)('offers nothing to take back after %s', (how) => {
  const drawn = new Drawn();
  drawn.draw([dot(0.1)]);
  drawn[how]();
  expect([drawn.marks, drawn.undoes, drawn.saved]).toEqual([null, false, how === 'recorded']);
});

it('has what was drawn and not kept, when the photo is opened again', () => {
  const before = new Drawn();
  before.over('marks.visit.photo');
  before.draw([dot(0.1)]);
  const again = new Drawn();
  again.over('marks.visit.photo');
  expect(again.marks).toEqual([dot(0.1)]);
  again.over('marks.visit.other');
  expect(again.marks).toBeNull();
  again.over('marks.visit.photo');
  again.recorded();
  const reopened = new Drawn();
  reopened.over('marks.visit.photo');
  expect(reopened.marks).toBeNull();
});
