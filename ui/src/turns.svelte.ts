// One request to the core at a time, and what the screens show of it meanwhile and afterwards.

import { failureOf } from './client.ts';
import type { Failure } from './types/Failure.ts';

/** A request that is back within so many milliseconds is not shown as on its way: that would only flicker. */
const SOON = 100;

export class Turns {
  /** Why the last one was not taken. */
  problem = $state.raw<Failure | null>(null);
  /** One takes so long that it shows. */
  busy = $state(false);
  private taken = false;

  /** Does the work and says whether it was taken. While one is on its way another is dropped: gloves tap twice. */
  async take(work: () => Promise<void>): Promise<boolean> {
    if (this.taken) return false;
    this.taken = true;
    this.problem = null;
    const late = setTimeout(() => (this.busy = true), SOON);
    try {
      await work();
      return true;
    } catch (caught) {
      this.problem = failureOf(caught);
      return false;
    } finally {
      clearTimeout(late);
      this.taken = false;
      this.busy = false;
    }
  }
}
