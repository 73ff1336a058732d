// Something being written on a screen, kept on this device on every keystroke until the core has it.

/** What was kept under a name, if it is still there and can be read. */
export function readKept<T>(name: string): T | null {
  try {
    return JSON.parse(localStorage.getItem(`steady.kept.${name}`) ?? 'null') as T | null;
  } catch {
    return null;
  }
}

/** Keeps a value. A full or refused store is no reason to stop the person writing. */
export function keep(name: string, value: unknown): void {
  try {
    localStorage.setItem(`steady.kept.${name}`, JSON.stringify(value));
  } catch {
    return;
  }
}

/** Drops everything that was kept of a visit. */
export function dropAllOf(visit: string): void {
  for (const name of Object.keys(localStorage)) {
    if (name.startsWith('steady.kept.') && name.includes(visit)) localStorage.removeItem(name);
  }
}

/** Drops what was kept. */
export function drop(name: string): void {
  localStorage.removeItem(`steady.kept.${name}`);
}
