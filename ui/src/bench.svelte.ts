// The bench of a visit as its screens show it: where it stands, and why a request was not taken.

import { ask } from './client.ts';
import { upload } from './photos.ts';
import { Turns } from './turns.svelte.ts';
import type { BenchStand } from './types/BenchStand.ts';
import type { Request } from './types/Request.ts';

export type BenchRequest = Extract<Request, { ask: `bench${string}` }>;

export class BenchAtHand extends Turns {
  stand = $state.raw<BenchStand | null>(null);

  /** Sends one request and takes what it answers. True if it was taken; one on its way at a time. */
  send(request: BenchRequest): Promise<boolean> {
    return this.take(async () => {
      this.stand = await ask(request);
    });
  }

  /** Sends a photo and keeps it; nothing else is sent meanwhile. */
  photo(visit: string, of: string, file: File): Promise<boolean> {
    return this.take(async () => {
      this.stand = await ask({ ask: 'bench-photo', visit, of, upload: await upload(file) });
    });
  }
}
