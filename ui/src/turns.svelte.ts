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
  /** How many are under way, of whatever screen. */
  private static underWay = 0;
  private going: Promise<unknown> | null = null;
  /** How many were begun. */
  private begun = 0;
  private what: string | undefined;

  /**
   * Does the work and says whether it was taken. While one is on its way the same again is dropped: gloves tap twice.
   * Something else, told apart by `what`, waits for its turn; without a name nothing can be told apart.
   */
  async take(work: () => Promise<void>, what?: string): Promise<boolean> {
    while (this.going) {
      if (what === undefined || what === this.what) return false;
      await this.going;
    }
    this.what = what;
    const turn = this.turn(work);
    this.going = turn;
    return turn;
  }

  /** A request out of turn: not while one is under way, and dropped where one was begun meanwhile. */
  async outOfTurn(work: () => Promise<() => void>): Promise<void> {
    if (Turns.underWay > 0) return;
    const { begun } = this;
    const take = await work().catch(() => null);
    if (begun === this.begun) take?.();
  }

  private async turn(work: () => Promise<void>): Promise<boolean> {
    this.begun += 1;
    Turns.underWay += 1;
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
      this.going = null;
      Turns.underWay -= 1;
      this.busy = false;
    }
  }
}
