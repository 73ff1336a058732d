// What the two directions on one screen share.
import { t } from './text.svelte.ts';
import { movement } from './units.svelte.ts';
import type { StepStand } from './types/StepStand.ts';
import type { Temperature } from './types/Temperature.ts';

/** How warm the housing was at an answer; before it, how warm it was felt last since the part was entered. */
export function feltOf(step: StepStand, warmth: Temperature | null): Temperature | null {
  if (step.answered) return step.answered.temperature;
  return step.asks_temperature ? warmth : null;
}

/** An answer that goes by the maker's figure, with that figure in it. */
export function figured(choice: string, mm: number | null): string | undefined {
  if (mm === null || (choice !== 'within-figure' && choice !== 'beyond-figure')) return undefined;
  return t(`pair-${choice}`, { figure: movement(mm) });
}
