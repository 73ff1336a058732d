// How a tap changes the choices of an any-of step. A lone choice ("none", "sound") excludes all others,
// and any other choice drops a lone one. Which choices are lone comes from the core.

import type { Choice } from './types/Choice.ts';

/** The choices after a tap on `tapped`, in the order the step lists them. */
export function toggle(choices: readonly Choice[], chosen: readonly string[], tapped: string): string[] {
  if (chosen.includes(tapped)) return chosen.filter((id) => id !== tapped);
  const lone = new Set(choices.filter((choice) => choice.lone).map((choice) => choice.id));
  if (lone.has(tapped)) return [tapped];
  const remaining = new Set([...chosen.filter((id) => !lone.has(id)), tapped]);
  return choices.map((choice) => choice.id).filter((id) => remaining.has(id));
}
