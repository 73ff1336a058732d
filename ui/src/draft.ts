// An intake being written, kept on every keystroke so that a killed app loses nothing. Dropped once the
// core has the intake.

import type { Intake } from './types/Intake.ts';

/** An intake in which nothing is filled in. */
export function blank(): Intake {
  return {
    vehicle: {
      layout: '',
      label: '',
      plate: '',
      vin: '',
      seat: null,
      cylinders: null,
      gearbox: null,
      idle_rpm: null,
      odometer: null,
      maker_play_mm: null,
    },
    complaint: '',
    complaint_sounds: [],
    when: '',
    owner: { name: '', contact: '' },
  };
}

/** The draft for a visit (none: the visit yet to be opened), if one was left. */
export function readDraft(visit: string | null): Intake | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(name(visit)) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('vehicle' in kept)) return null;
    const draft = kept as Partial<Intake>;
    const empty = blank();
    return {
      ...empty,
      ...draft,
      vehicle: { ...empty.vehicle, ...draft.vehicle },
      owner: { ...empty.owner, ...draft.owner },
    };
  } catch {
    return null;
  }
}

/** Keeps a draft. A full or refused store is no reason to stop the person writing. */
export function keepDraft(visit: string | null, intake: Intake): void {
  try {
    localStorage.setItem(name(visit), JSON.stringify(intake));
  } catch {
    return;
  }
}

/** Drops a draft. */
export function dropDraft(visit: string | null): void {
  localStorage.removeItem(name(visit));
}

function name(visit: string | null): string {
  return `steady.draft.${visit ?? 'new'}`;
}
