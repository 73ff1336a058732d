// What earlier visits of a car found, as the core tells it. Asked for anew whenever a visit is opened or another car is
// written down: what was erased meanwhile is not shown from memory, nor one car's history beside another.

import { ask, failureOf } from './client.ts';
import type { Failure } from './types/Failure.ts';
import type { StillOpen } from './types/StillOpen.ts';
import type { VinHint } from './types/VinHint.ts';
import type { VisitBefore } from './types/VisitBefore.ts';

class Before {
  /** Newest first. */
  visits = $state.raw<VisitBefore[]>([]);
  /** The DANGER or WARNING among them that nothing lifted. */
  stillOpen = $state.raw<StillOpen | null>(null);
  /** Why it is not known whether there are any. */
  problem = $state.raw<Failure | null>(null);
  /** The VIN that was asked for, and what its check digit says. */
  vin = $state.raw<{ typed: string; hint: VinHint | null } | null>(null);
  #of = '';
  #turn = 0;

  /** What a step was answered on the last visit that answered it, and when that was. */
  said(step: string): (VisitBefore['answers'][number] & { at: number }) | null {
    for (const earlier of this.visits) {
      const found =
        earlier.broken || earlier.corrected_to !== null
          ? undefined
          : earlier.answers.find((answer) => answer.step === step);
      if (found) return { ...found, at: earlier.opened_at };
    }
    return null;
  }

  /** Looks for a car's visits; nothing waits for it, and a later look overtakes an earlier one. */
  async look(plate: string, vin: string, visit: string | null): Promise<void> {
    const turn = (this.#turn += 1);
    const car = JSON.stringify([plate, vin, visit]);
    if (car !== this.#of) [this.visits, this.stillOpen, this.vin] = [[], null, null];
    this.#of = car;
    this.problem = null;
    if (plate.trim() + vin.trim() === '') return;
    try {
      const { visits, still_open, vin_hint } = await ask({ ask: 'visits-before', plate, vin, visit });
      if (turn !== this.#turn) return;
      [this.visits, this.stillOpen] = [visits, still_open];
      this.vin = { typed: vin, hint: vin_hint };
    } catch (problem) {
      if (turn === this.#turn) [this.visits, this.stillOpen, this.problem] = [[], null, failureOf(problem)];
    }
  }
}

export const before = new Before();
