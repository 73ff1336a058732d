// What a cause is called: a workshop's own by its own name, a shipped one by its text.
import { t } from './text.svelte.ts';
import type { Standing } from './types/Standing.ts';

/** The name of a cause of this visit. */
export function causeName(standing: Standing, id: string): string {
  return standing.sorting.causes.find((cause) => cause.id === id)?.own_name ?? t(`cause-${id}`);
}
