// What a noise is heard under, said in one line.

import { inField, t } from './text.svelte.ts';
import type { Conditions } from './types/Conditions.ts';

/** Nothing written down. */
export const NO_CONDITIONS: Conditions = { speed: null, gear: '', engine: null };

/** The line; empty where nothing is written down. */
export function saidOf(conditions: Conditions | undefined): string {
  if (!conditions) return '';
  const { speed, gear, engine } = conditions;
  const said: string[] = [];
  if (speed) said.push(t(`speed-${speed.unit}`, { value: inField(speed.value) }));
  if (gear.trim() !== '') said.push(t('conditions-gear-said', { gear }));
  if (engine) said.push(t(`conditions-engine-${engine}`));
  return said.join(t('list-joint'));
}
