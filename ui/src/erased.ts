// What this device still remembers of visits that were erased elsewhere: at the command line, or in another tab.

import { ask, Refusal } from './client.ts';
import { draftedVisits, dropDraftsOf } from './drafts.ts';

/** Drops what is kept of visits that the core knows no longer. */
export async function dropErased(): Promise<void> {
  for (const visit of draftedVisits()) {
    if (await isGone(visit)) dropDraftsOf(visit);
  }
}

async function isGone(visit: string): Promise<boolean> {
  try {
    await ask({ ask: 'look', visit });
    return false;
  } catch (caught) {
    return caught instanceof Refusal && caught.failure.code === 'unknown-visit';
  }
}
