// What a step and its answers are called. A step done at a further support of the shaft ends in `:2`; it is
// otherwise the same step.
import { t, tFirst } from './text.svelte.ts';
import type { AnswerValue } from './types/AnswerValue.ts';
import type { Standing } from './types/Standing.ts';
import type { StepStand } from './types/StepStand.ts';
import type { Temperature } from './types/Temperature.ts';
import type { TurnsWith } from './types/TurnsWith.ts';

/** The gate sets behind which somebody sits in a car that stands or creeps, and may be handed the phone. */
const AT_THE_SEAT = ['running', 'creep'];
/** Steps whose own words say what a foot does: those of the driver's screen would say otherwise. */
const IN_ITS_OWN_WORDS = ['clutch-pedal-effect', 'selector-effect'];

/** Whether somebody in the seat can be handed the phone for this step. */
export function isDriven(step: StepStand, entered: string | null): boolean {
  const { set } = step;
  const seated = set !== null && set === entered && AT_THE_SEAT.includes(set);
  return seated && step.lock === null && !IN_ITS_OWN_WORDS.includes(step.id);
}

/** The step behind these gates that the phone is handed over for: where the walk stands, else the first. */
export function drivenBehind(standing: Standing, set: string): StepStand | null {
  const driven = standing.steps.filter((step) => step.set === set && isDriven(step, standing.entered));
  const { position } = standing;
  return driven.find(({ id }) => position.at === 'step' && position.step === id) ?? driven[0] ?? null;
}

/** The step whatever support it is done at: `play-vertical` of `play-vertical:2`. */
export function baseOf(step: string): string {
  return step.split(':', 1)[0] ?? step;
}

/** A step's title, with its support where the shaft has several; known by its id alone, from the second support on. */
export function titleOf(step: string | Pick<StepStand, 'id' | 'at_support' | 'both_ends'>): string {
  const id = typeof step === 'string' ? step : step.id;
  const ends = typeof step !== 'string' && step.both_ends ? '-ends' : '';
  const title = t(`step-${baseOf(id)}${ends}`);
  const number = (typeof step === 'string' ? null : step.at_support) ?? id.split(':')[1];
  return number === undefined ? title : t('step-at-support', { step: title, number });
}

/** Whether a shaft was turned by itself, or with what hangs on it. */
export function freedom(turnsWith: TurnsWith | null, free: boolean): string {
  return free ? t('ui-free-yes') : t(`ui-free-no-${turnsWith ?? 'engine'}`);
}

/** How warm the housing was. */
export function warmthOf(temperature: Temperature): string {
  return typeof temperature === 'number'
    ? t('ui-degrees', { degrees: temperature })
    : t(`ui-temperature-${temperature}`);
}

/** A whole answer: a reading of the engine's speed, or every choice in the step's own wording. */
export function valueOf(step: string, value: AnswerValue): string {
  if (typeof value === 'number') return t('reading-rpm', { value });
  const choices = Array.isArray(value) ? value : [value];
  return choices.map((id) => answerOf(step, id)).join(t('list-joint'));
}

/** An answer in the step's own wording. */
export function answerOf(step: string, choice: string): string {
  return tFirst([`answer-${baseOf(step)}-${choice}`, `answer-${choice}`]);
}

/** Whether a gauge reads movement at a step, whatever a hand said there. */
export function movesByGauge(standing: Standing, step: string): boolean {
  const reads = standing.gauges.find((gauge) => gauge.step === step)?.result.meaning;
  return reads === 'felt' || reads === 'beyond-figure';
}

/** Whether what was felt of a housing is now said of one that is colder or warmer: it says nothing of that. */
export function otherWarmth(before: Temperature | null, now: Temperature | null): boolean {
  return before !== null && now !== null && before !== now;
}
