// The bench of a visit as its screens show it: where it stands, and why a request was not taken.

import { ask } from './client.ts';
import { upload } from './photos.ts';
import { open } from './state.svelte.ts';
import { Turns } from './turns.svelte.ts';
import type { BenchAct } from './types/BenchAct.ts';
import type { BenchShown } from './types/BenchShown.ts';
import type { BenchStand } from './types/BenchStand.ts';
import type { HousingLook } from './types/HousingLook.ts';
import type { WorkPlace } from './types/WorkPlace.ts';

/** Nobody looked yet. */
const NOT_LOOKED: HousingLook = { cracked: null, ring_turned: null, wall_least_mm: null };

export class BenchAtHand extends Turns {
  readonly #visit: string;
  stand = $state.raw<BenchStand | null>(null);
  /** Where the button is that was pressed last: what came of it is said there. */
  at = $state<string | null>(null);
  /** What it asked for was taken. */
  recorded = $state(false);
  /** How many entries the visit has, as the bench knows it. */
  #entries = 0;

  constructor(visit: string) {
    super();
    this.#visit = visit;
  }

  open(): Promise<boolean> {
    return this.take(async () => this.#show(await ask({ ask: 'look-at-bench', visit: this.#visit })));
  }

  /** Looks again where something was recorded elsewhere. */
  follow(entries: number): void {
    if (this.stand && entries > this.#entries) void this.open();
  }

  /** What was said of the last button is of no use any more. */
  forget(): void {
    this.problem = null;
    this.recorded = false;
  }

  /** Does something at the bench. True if it was taken; one on its way at a time, the next waits. */
  act(act: BenchAct, at: string): Promise<boolean> {
    return this.#act(() => act, JSON.stringify(act), at);
  }

  /** Changes what was seen of the housing; what is not named stays as it stands once it is this one's turn. */
  look(change: Partial<HousingLook>, wall: string | null, at: string): Promise<boolean> {
    const look = (): HousingLook => ({ ...(this.stand?.look ?? NOT_LOOKED), ...change });
    return this.#act(() => ({ look: look(), wall }), JSON.stringify({ change, wall }), at);
  }

  #act(act: () => BenchAct, what: string, at: string): Promise<boolean> {
    const work = async (): Promise<void> => {
      [this.at, this.recorded] = [at, false];
      this.#show(await ask({ ask: 'bench', visit: this.#visit, act: act() }));
      this.recorded = true;
    };
    return this.take(work, what);
  }

  /** Sends a photo and keeps it; nothing else is sent meanwhile. */
  photo(of: WorkPlace, file: File): Promise<boolean> {
    return this.take(async () => {
      [this.at, this.recorded] = [of, false];
      const act = { of, upload: await upload(file) };
      this.#show(await ask({ ask: 'bench', visit: this.#visit, act }));
    });
  }

  /** What is done at the bench changes the visit too, which every other screen shows. */
  #show({ bench, standing }: BenchShown): void {
    this.stand = bench;
    this.#entries = standing.ledger.entries;
    if (open.standing?.visit === standing.visit) open.standing = standing;
  }
}
