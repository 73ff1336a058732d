// What is being written, kept on this device on every keystroke until the core has it, so that a killed app loses
// nothing. The one store of it: each form by its name.

const STORE = 'steady.draft.';
/** A visit's id in a name. */
const VISIT = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/;

/** What was kept under a name, if it is still there and can be read. */
export function readDraft<T>(name: string): T | null {
  try {
    return JSON.parse(localStorage.getItem(STORE + name) ?? 'null') as T | null;
  } catch {
    return null;
  }
}

/** Keeps what is written. A full or refused store is no reason to stop the person writing. */
export function saveDraft(name: string, written: unknown): void {
  try {
    localStorage.setItem(STORE + name, JSON.stringify(written));
  } catch {
    return;
  }
}

/** Drops what was kept. */
export function dropDraft(name: string): void {
  localStorage.removeItem(STORE + name);
}

/** Drops everything that was kept of a visit. */
export function dropDraftsOf(visit: string): void {
  for (const name of Object.keys(localStorage)) {
    if (name.startsWith(STORE) && name.includes(visit)) localStorage.removeItem(name);
  }
}

/** Visits of which something half written is kept. */
export function draftedVisits(): string[] {
  const named = Object.keys(localStorage).map((name) => (name.startsWith(STORE) ? VISIT.exec(name)?.[0] : undefined));
  return [...new Set(named.filter((visit) => visit !== undefined))];
}

/** What was written into a form and not saved: the fields that are still the kind they are in `known`. */
export function readForm<Form extends object>(name: string, known: Form): Form | null {
  const stored = readDraft<unknown>(name);
  if (typeof stored !== 'object' || stored === null || Array.isArray(stored)) return null;
  const same = Object.entries(stored).filter(
    ([field, value]) => field in known && fits(known[field as keyof Form], value),
  );
  return same.length === 0 ? null : { ...known, ...Object.fromEntries(same) };
}

/** Whether a stored value is of the kind a field holds; rows of a list one by one. */
function fits(known: unknown, stored: unknown): boolean {
  if (Array.isArray(known)) {
    // A list that grows while it is written has rows like its own, or none to be like yet.
    const like = (at: number): unknown => known[Math.min(at, known.length - 1)];
    if (!Array.isArray(stored) || stored.length < known.length) return false;
    return stored.every((row, at) => (known.length === 0 ? typeof row === 'object' : fits(like(at), row)));
  }
  if (known === null) return typeof stored !== 'object' || stored === null;
  if (typeof known !== 'object') return typeof stored === typeof known;
  if (typeof stored !== 'object' || stored === null) return false;
  return Object.entries(known).every(([field, value]) => fits(value, (stored as Record<string, unknown>)[field]));
}
