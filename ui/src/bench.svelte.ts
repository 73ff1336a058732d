// The bench of a visit as its screens show it: where it stands, and why a request was not taken.

import { ask } from './client.ts';
import { upload } from './photos.ts';
import { failureOf } from './state.svelte.ts';
import type { BenchStand } from './types/BenchStand.ts';
import type { Failure } from './types/Failure.ts';
import type { Request } from './types/Request.ts';

export type BenchRequest = Extract<Request, { ask: `bench${string}` }>;

export class BenchAtHand {
  stand = $state.raw<BenchStand | null>(null);
  problem = $state.raw<Failure | null>(null);
  busy = $state(false);

  /** Sends one request and takes what it answers. True if it was taken; one on its way at a time. */
  send(request: BenchRequest): Promise<boolean> {
    return this.take(async () => request);
  }

  /** Sends a photo and keeps it; nothing else is sent meanwhile. */
  photo(visit: string, of: string, file: File): Promise<boolean> {
    return this.take(async () => ({ ask: 'bench-photo', visit, of, upload: await upload(file) }));
  }

  private async take(made: () => Promise<BenchRequest>): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    this.problem = null;
    try {
      this.stand = await ask(await made());
      return true;
    } catch (caught) {
      this.problem = failureOf(caught);
      return false;
    } finally {
      this.busy = false;
    }
  }
}
