// What is being written, kept on every keystroke so that a killed app loses nothing: an intake, or another form
// by its name. Dropped once the core has it.

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

/** What was written into a form and not saved: the fields that are still the kind they are in `known`. */
export function readForm<Form extends object>(form: string, known: Form): Form | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(formName(form)) ?? 'null');
    if (typeof kept !== 'object' || kept === null || Array.isArray(kept)) return null;
    const same = Object.entries(kept).filter(([field, value]) => field in known && fits(known[field as keyof Form], value));
    return same.length === 0 ? null : { ...known, ...Object.fromEntries(same) };
  } catch {
    return null;
  }
}

/** Keeps what is written into a form. */
export function keepForm(form: string, written: object): void {
  try {
    localStorage.setItem(formName(form), JSON.stringify(written));
  } catch {
    return;
  }
}

/** Drops what was written into a form. */
export function dropForm(form: string): void {
  localStorage.removeItem(formName(form));
}

/** Whether a kept value is of the kind a field holds; rows of a list one by one. */
function fits(known: unknown, kept: unknown): boolean {
  if (Array.isArray(known)) return Array.isArray(kept) && kept.length === known.length && known.every((row, at) => fits(row, kept[at]));
  if (known === null || kept === null) return typeof known !== 'object' || known === null ? typeof kept !== 'object' || kept === null : false;
  if (typeof known !== 'object') return typeof kept === typeof known;
  return typeof kept === 'object' && Object.entries(known).every(([field, value]) => fits(value, (kept as Record<string, unknown>)[field]));
}

function name(visit: string | null): string {
  return `steady.draft.${visit ?? 'new'}`;
}

function formName(form: string): string {
  return `steady.form.${form}`;
}
