// What was taken back last, so that the screen says so and offers it again until something else is done.

import type { Answered } from './types/Answered.ts';

export interface Undone {
  visit: string;
  /** In words. */
  what: string;
  step: string | null;
  /** The answer, to be given again; none where it was something else. */
  said: Answered | null;
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
