import { beforeEach, expect, it } from 'vitest';
import { blank, dropDraft, keepDraft, readDraft } from './draft.ts';

beforeEach(() => {
  localStorage.clear();
});

it('gives back a draft as it was kept, each visit its own', () => {
  const draft = blank();
  draft.vehicle.layout = 'rubber-centre';
  draft.owner.name = 'An Owner';
  keepDraft(null, draft);
  expect(readDraft(null)).toEqual(draft);
  expect(readDraft('another')).toBeNull();
});

it('is gone once dropped', () => {
  keepDraft('one', blank());
  dropDraft('one');
  expect(readDraft('one')).toBeNull();
});

it('fills in what an older draft did not know', () => {
  localStorage.setItem('steady.draft.new', '{"vehicle":{"plate":"TR 4417"}}');
  const draft = readDraft(null);
  expect(draft?.vehicle.plate).toBe('TR 4417');
  expect(draft?.owner).toEqual({ name: '', contact: '' });
});

it.each(['', '{', '7', '"text"', 'null', '[]'])('is none where the store holds %s', (kept) => {
  localStorage.setItem('steady.draft.new', kept);
  expect(readDraft(null)).toBeNull();
});
