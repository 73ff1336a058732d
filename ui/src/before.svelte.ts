// What earlier visits of a car found, as the core tells it. Asked for anew when the car or the visit at hand changes.

import { ask } from './client.ts';
import type { VisitBefore } from './types/VisitBefore.ts';

class Before {
  /** Newest first. */
  visits = $state.raw<VisitBefore[]>([]);
  #of = '';

  /** Looks for a car's visits; what cannot be asked for is not there, and nothing waits for it. */
  async look(plate: string, vin: string, visit: string | null): Promise<void> {
    const car = JSON.stringify([plate.trim(), vin.trim(), visit]);
    if (this.#of === car) return;
    this.#of = car;
    const known = plate.trim() + vin.trim() === '' ? null : await this.#asked(plate, vin, visit);
    if (this.#of === car) this.visits = known ?? [];
  }

  #asked(plate: string, vin: string, visit: string | null): Promise<VisitBefore[] | null> {
    return ask({ ask: 'visits-before', plate, vin, visit }).then(
      (reply) => reply.visits,
      () => null,
    );
  }
}

export const before = new Before();
