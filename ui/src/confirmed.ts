// Who confirmed last of some gates: said once beneath them, so that no row grows under the finger.

import type { Confirmed } from './types/Confirmed.ts';
import type { GateStand } from './types/GateStand.ts';

/** The latest of the confirmations, none where nothing is confirmed. */
export function lastConfirmed(gates: readonly GateStand[]): Confirmed | null {
  return gates.reduce<Confirmed | null>(
    (latest, { confirmed }) => (confirmed && confirmed.at >= (latest?.at ?? 0) ? confirmed : latest),
    null,
  );
}
