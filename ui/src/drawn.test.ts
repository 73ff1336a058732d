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

it.each(['keep', 'drop'] as const)('offers nothing to take back after %s', (how) => {
  const drawn = new Drawn();
  drawn.draw([dot(0.1)]);
  drawn[how]();
  expect([drawn.marks, drawn.undoes, drawn.saved]).toEqual([null, false, how === 'keep']);
});
