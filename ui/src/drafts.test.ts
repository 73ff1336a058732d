import { beforeEach, expect, it } from 'vitest';
import { dropDraft, dropDraftsOf, saveDraft, readForm } from './drafts.ts';
import { blank, intakeDraft, readIntake } from './intake.ts';

beforeEach(() => {
  localStorage.clear();
});

it('gives back a draft as it was kept, each visit its own', () => {
  const draft = blank();
  draft.vehicle.layout = 'rubber-centre';
  draft.owner.name = 'An Owner';
  saveDraft(intakeDraft(null), draft);
  expect(readIntake(null)).toEqual(draft);
  expect(readIntake('another')).toBeNull();
});

it('is gone once dropped', () => {
  saveDraft('one', blank());
  dropDraft('one');
  expect(readIntake('one')).toBeNull();
});

it('drops everything of a visit and nothing of another', () => {
  for (const name of ['one', 'bench.note.one', 'two']) saveDraft(name, 'half a note');
  dropDraftsOf('one');
  expect(Object.keys(localStorage)).toEqual(['steady.draft.two']);
});

it('fills in what an older draft did not know', () => {
  localStorage.setItem('steady.draft.new', '{"vehicle":{"plate":"TR 4417"}}');
  const draft = readIntake(null);
  expect(draft?.vehicle.plate).toBe('TR 4417');
  expect(draft?.owner).toEqual({ name: '', contact: '' });
});

it.each(['', '{', '7', '"text"', 'null', '[]'])('is none where the store holds %s', (stored) => {
  localStorage.setItem('steady.draft.new', stored);
  expect(readIntake(null)).toBeNull();
});

const KNOWN = { name: 'Core', unit: null as string | null, hours: [{ tier: 'a', from: '' }] };

it('gives back what was written into a form until it is dropped', () => {
  expect(readForm('workshop', KNOWN)).toBeNull();
  const written = { name: 'Typed', unit: 'mm', hours: [{ tier: 'a', from: '2,5' }] };
  saveDraft('workshop', written);
  expect(readForm('workshop', KNOWN)).toEqual(written);
  expect(readForm('other', KNOWN)).toBeNull();
  dropDraft('workshop');
  expect(readForm('workshop', KNOWN)).toBeNull();
});

it.each([
  ['{"name":7,"unit":"mm"}', { ...KNOWN, unit: 'mm' }],
  ['{"hours":[],"name":"Typed"}', { ...KNOWN, name: 'Typed' }],
  ['{"hours":[{"tier":"a","from":3}],"name":"Typed"}', { ...KNOWN, name: 'Typed' }],
  ['{"unit":{"a":1}}', null],
  ['{"gone":"x"}', null],
  ['[]', null],
  ['{', null],
])('takes from a stored form %s what still fits it', (stored, expected) => {
  localStorage.setItem('steady.draft.workshop', stored);
  expect(readForm('workshop', KNOWN)).toEqual(expected);
});
