// What was just taken back, written anew: by the same request, from what stood before. A safety check, a photo and a
// gauge's readings come from the car and not from memory, so that they are never written anew by a key.

import type { RequestFor } from './client.ts';
import type { PhotoStand } from './types/PhotoStand.ts';
import type { Standing } from './types/Standing.ts';
import type { StepStand } from './types/StepStand.ts';
import type { UndoOffer } from './types/UndoOffer.ts';

/** The request that writes it anew; `before` is where the visit stood, `after` where it stands without it. */
export function anew(taken: UndoOffer, before: Standing, after: Standing): RequestFor<'visit'> | null {
  const { visit, opinion, outcome } = before;
  const step = before.steps.find((one) => one.id === taken.step) ?? null;
  switch (taken.what) {
    case 'answered':
      return step && answerOf(visit, step);
    case 'photo-marked':
      return step && marksOf(visit, step, after.steps.find((one) => one.id === step.id) ?? step);
    case 'photos-paired':
      return step && { ask: 'pair-photos', visit, step: step.id, before: step.before?.photo.sha256 ?? null };
    case 'photo-waived':
      return step?.waiver ? { ask: 'waive-photo', visit, step: step.id, reason: step.waiver } : null;
    case 'order-chosen':
      return { ask: 'choose-order', visit, order: before.order };
    case 'opinion-given':
      return opinion && { ask: 'give-opinion', visit, cause: opinion.cause, reason: opinion.reason };
    case 'outcome-confirmed':
      return outcome && { ask: 'confirm-outcome', visit, causes: outcome.causes, by: outcome.by };
    default:
      return null;
  }
}

/** Text id of why something is not written anew, where somebody would look for the key. */
export function notAnew({ what }: UndoOffer): string | null {
  switch (what) {
    case 'gate-confirmed':
      return 'ui-redo-gate';
    case 'photo-kept':
      return 'ui-redo-photo';
    case 'gauged':
      return 'ui-redo-gauge';
    default:
      return null;
  }
}

function answerOf(visit: string, { id, answered }: StepStand): RequestFor<'visit'> | null {
  if (!answered) return null;
  const { value, temperature, free, engine, heard_at, reason } = answered;
  return { ask: 'answer', visit, step: id, value, temperature, free, engine, heard_at, reason };
}

/** The marks of the one photo whose marks are others now. */
function marksOf(visit: string, before: StepStand, after: StepStand): RequestFor<'visit'> | null {
  const photos = (step: StepStand): PhotoStand[] => [...(step.photo ? [step.photo] : []), ...step.earlier];
  const now = new Map(photos(after).map(({ photo, marks }) => [photo.sha256, JSON.stringify(marks)]));
  const marked = photos(before).find(({ photo, marks }) => now.get(photo.sha256) !== JSON.stringify(marks));
  return marked ? { ask: 'mark-photo', visit, step: before.id, photo: marked.photo.sha256, marks: marked.marks } : null;
}
