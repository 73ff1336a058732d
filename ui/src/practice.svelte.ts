// The visit to practise on. The core keeps it in a place of its own, apart from every real visit; here is
// only known which it is, so that its requests go there and every screen of it says so.

import { ask, practiseOn } from './client.ts';
import { dropDraftsOf } from './drafts.ts';
import { blank } from './intake.ts';
import { t } from './text.svelte.ts';

const STORE = 'steady.practice';

const practice = $state<{ visit: string | null }>({ visit: localStorage.getItem(STORE) });
practiseOn(practice.visit);

/** Whether this is the visit to practise on. */
export function isPractice(visit: string): boolean {
  return practice.visit === visit;
}

/** Opens a visit to practise on, in place of any before; gives its id. */
export async function startPractice(layout: string): Promise<string> {
  const intake = blank();
  intake.vehicle.layout = layout;
  intake.vehicle.label = t('ui-practice-car');
  const { visit } = await ask({ ask: 'start-practice', intake });
  remember(visit);
  return visit;
}

/** Throws the visit to practise on away. */
export async function endPractice(): Promise<void> {
  await ask({ ask: 'end-practice' });
  if (practice.visit !== null) dropDraftsOf(practice.visit);
  remember(null);
}

function remember(visit: string | null): void {
  practice.visit = visit;
  practiseOn(visit);
  if (visit === null) localStorage.removeItem(STORE);
  else localStorage.setItem(STORE, visit);
}
