// An intake that is being written down: blank, or as it was left half filled in.

import { NO_CONDITIONS } from './conditions.ts';
import { readDraft } from './drafts.ts';
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
      warm_from_c: null,
    },
    complaint: '',
    complaint_sounds: [],
    when: '',
    owner: { name: '', contact: '' },
    occasion: 'complaint',
    conditions: { ...NO_CONDITIONS },
  };
}

/** What the draft of a visit's intake is kept under; none is the visit yet to be opened. */
export function intakeDraft(visit: string | null): string {
  return visit ?? 'new';
}

/** The draft of a visit's intake, if one was left; what an older one did not know is blank. */
export function readIntake(visit: string | null): Intake | null {
  const draft = readDraft<Partial<Intake> | null>(intakeDraft(visit));
  if (typeof draft !== 'object' || draft === null || !('vehicle' in draft)) return null;
  const empty = blank();
  return {
    ...empty,
    ...draft,
    vehicle: { ...empty.vehicle, ...draft.vehicle },
    owner: { ...empty.owner, ...draft.owner },
  };
}
