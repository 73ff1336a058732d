import { expect, it } from 'vitest';
import { anew, notAnew } from './redo.ts';
import type { PhotoStand } from './types/PhotoStand.ts';
import type { Standing } from './types/Standing.ts';
import type { StepStand } from './types/StepStand.ts';
import type { UndoOffer } from './types/UndoOffer.ts';

const taken = (what: string, step: string | null = null): UndoOffer => ({
  entry: '0a',
  what,
  step,
  gate: null,
  set: null,
  by: 'Kim Demo',
  at: 1,
  needs_reason: false,
});

const photo = (sha256: string, marks: number): PhotoStand =>
  ({ photo: { sha256 }, at: 1, marks: Array.from({ length: marks }, () => ({})) }) as unknown as PhotoStand;

function stand(step: Partial<StepStand>, more: Partial<Standing> = {}): Standing {
  const bare = { id: 'housing-look', answered: null, photo: null, earlier: [], before: null, waiver: null };
  return {
    visit: 'a-1',
    order: 'running-first',
    opinion: null,
    outcome: null,
    steps: [{ ...bare, ...step }],
    ...more,
  } as unknown as Standing;
}

it('writes an answer anew with what stood beside it', () => {
  const beside = { temperature: 'warm', free: null, engine: null, heard_at: null, reason: null };
  const before = stand({ answered: { value: ['sound'], ...beside } as unknown as StepStand['answered'] });
  expect(anew(taken('answered', 'housing-look'), before, stand({}))).toEqual({
    ask: 'answer',
    visit: 'a-1',
    step: 'housing-look',
    value: ['sound'],
    ...beside,
  });
});

it('writes marks anew on the photo whose marks are others now', () => {
  const before = stand({ photo: photo('bb', 2), earlier: [photo('aa', 3)] });
  const after = stand({ photo: photo('bb', 2), earlier: [photo('aa', 1)] });
  const again = anew(taken('photo-marked', 'housing-look'), before, after);
  expect(again).toMatchObject({ ask: 'mark-photo', step: 'housing-look', photo: 'aa' });
  expect(again).toHaveProperty('marks.length', 3);
});

it('writes order, waiver, pair, opinion and outcome anew from what stood before', () => {
  const opinion = { cause: 'misfire', reason: 'It pops', by: 'Kim Demo', at: 1 };
  const outcome = { causes: ['loose-seat'], by: 'Kim Demo', at: 1 };
  const before = stand({ waiver: 'dark', before: photo('aa', 0) }, { opinion, outcome });
  const asked = ['order-chosen', 'photo-waived', 'photos-paired', 'opinion-given', 'outcome-confirmed'].map((what) =>
    anew(taken(what, 'housing-look'), before, stand({})),
  );
  expect(asked).toEqual([
    { ask: 'choose-order', visit: 'a-1', order: 'running-first' },
    { ask: 'waive-photo', visit: 'a-1', step: 'housing-look', reason: 'dark' },
    { ask: 'pair-photos', visit: 'a-1', step: 'housing-look', before: 'aa' },
    { ask: 'give-opinion', visit: 'a-1', cause: 'misfire', reason: 'It pops' },
    { ask: 'confirm-outcome', visit: 'a-1', causes: ['loose-seat'], by: 'Kim Demo' },
  ]);
});

it('writes nothing anew that comes from the car, and says why', () => {
  const kinds = ['gate-confirmed', 'photo-kept', 'gauged'];
  expect(kinds.map((what) => anew(taken(what, 'housing-look'), stand({}), stand({})))).toEqual([null, null, null]);
  expect(kinds.map((what) => notAnew(taken(what)))).toEqual(['ui-redo-gate', 'ui-redo-photo', 'ui-redo-gauge']);
  expect(notAnew(taken('answered'))).toBeNull();
});
