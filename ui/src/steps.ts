// What a step and its answers are called. A step done at a further support of the shaft ends in `:2`; it is
// otherwise the same step.
import { t, tFirst } from './text.svelte.ts';

/** The step whatever support it is done at: `play-vertical` of `play-vertical:2`. */
export function baseOf(step: string): string {
  return step.split(':', 1)[0] ?? step;
}

/** A step's title, with its support from the second on. */
export function titleOf(step: string): string {
  const title = t(`step-${baseOf(step)}`);
  const number = step.split(':')[1];
  return number === undefined ? title : t('step-at-support', { step: title, number });
}

/** An answer in the step's own wording. */
export function answerOf(step: string, choice: string): string {
  return tFirst([`answer-${baseOf(step)}-${choice}`, `answer-${choice}`]);
}
