// What was taken back last, so that the screen says so and offers it again until something else is done.

import type { RequestFor } from './client.ts';

export interface Undone {
  visit: string;
  /** In words. */
  what: string;
  /** What would write it anew; none where that is not for a key at the foot of a screen. */
  again: RequestFor<'visit'> | null;
  /** Text id of why there is none. */
  not: string | null;
}

class Latest {
  last = $state.raw<Undone | null>(null);

  tell(undone: Undone): void {
    this.last = undone;
  }

  forget(): void {
    this.last = null;
  }
}

export const undone = new Latest();
