// A file that is made for a person at a tap: while it is made, what came of it, and why nothing did. What was made
// before is let go of.

import { failureOf } from './client.ts';
import { canShare, release, share, type Ready } from './outgoing.ts';
import type { Failure } from './types/Failure.ts';

/** To be made where a component begins: what it holds goes with the component. */
export class Making {
  made = $state.raw<Ready | null>(null);
  busy = $state(false);
  problem = $state.raw<Failure | null>(null);
  readonly sendable = $derived(this.made !== null && canShare(this.made));

  constructor() {
    $effect(() => {
      const held = this.made;
      return () => release(held);
    });
  }

  async make(work: () => Promise<Ready>): Promise<void> {
    this.busy = true;
    this.problem = null;
    try {
      this.made = await work();
    } catch (caught) {
      this.problem = failureOf(caught);
    } finally {
      this.busy = false;
    }
  }

  /** Whoever closes the system's sheet without sending has changed their mind; that is no problem. */
  async send(): Promise<void> {
    if (this.made) await share(this.made).catch(() => undefined);
  }
}
