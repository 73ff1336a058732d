// What undo would take back, in words: its kind, and the step or the safety check that it is about.

import { titleOf } from './steps.ts';
import { t } from './text.svelte.ts';
import type { StepStand } from './types/StepStand.ts';
import type { UndoOffer } from './types/UndoOffer.ts';

/** Variables of `ui-undo-what` and `ui-undone-what`. */
export function undoing(offer: UndoOffer, steps: readonly StepStand[]): { what: string; about: string } {
  return { what: t(`entry-${offer.what}`), about: aboutOf(offer, steps) };
}

function aboutOf({ step, gate }: UndoOffer, steps: readonly StepStand[]): string {
  if (step !== null) return titleOf(steps.find((one) => one.id === step) ?? step);
  return gate === null ? 'none' : t(`gate-${gate}`);
}
