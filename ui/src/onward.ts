// Where the screen of a step, or of two, leads: on, to the photo that is still wanted, or, where it was put off, to
// what else is open, of which the choice of how to check comes before the gates.
import { go } from './router.ts';
import { goOn } from './state.svelte.ts';
import { undone } from './undone.svelte.ts';
import type { Standing } from './types/Standing.ts';

/** Leaves the screen of these steps; `askPhoto` is called with the one that the walk stays at for its photo. */
export function onward(standing: Standing, shown: string[], askPhoto: (step: string) => void): void {
  undone.forget();
  const { visit, position, steps } = standing;
  const here = steps.filter((step) => shown.includes(step.id));
  const answered = here.every((step) => step.answered);
  const stays = position.at === 'step' && shown.includes(position.step) ? position.step : null;
  // In walk order; what was put off comes round again at the end.
  const last = Math.max(...here.map((step) => steps.indexOf(step)));
  const later = steps.slice(last + 1).find((step) => !step.answered && !step.lock);
  // The first part that can be gone to, where nothing else is open to be answered.
  const behind = standing.gate_sets.find((set) => set.lock === null && !set.open);
  // What was found is wanted in a picture, wherever the walk goes on.
  const bare = here.find(
    (step) => step.answered?.found && step.wants_photo && !(step.photo ?? step.waiver ?? step.lock),
  );
  if (answered && bare) askPhoto(bare.id);
  else if (stays !== null && answered) askPhoto(stays);
  else if (!answered && later) go({ screen: 'step', visit, step: later.id });
  else if (stays !== null && standing.offers_order) go({ screen: 'order', visit });
  else if (stays !== null && behind) go({ screen: 'gates', visit, set: behind.id });
  else goOn(standing);
}
