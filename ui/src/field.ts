// The field that a refusal is about: marked where it stands, and called what the screen calls it.

/** Marks the field beside `said` that goes by this name, until what comes back is called. */
export function marked(said: HTMLElement, name: string | null): { label: string; unmark: () => void } | null {
  if (name === null) return null;
  const around = said.closest('form') ?? said.closest('details') ?? said.closest('main');
  // One field may stand for several of the request: a distance between two places is an end of each.
  const field = around?.querySelector(`[data-field~="${CSS.escape(name)}"]`);
  if (!field) return null;
  const before = field.getAttribute('aria-invalid');
  field.setAttribute('aria-invalid', 'true');
  const unmark = (): void => {
    if (before === null) field.removeAttribute('aria-invalid');
    else field.setAttribute('aria-invalid', before);
  };
  // A value that is taken by a button instead of typed is called what the button says.
  const called = field.closest('label')?.querySelector('span') ?? field.closest('button');
  return { label: called?.textContent.trim() ?? '', unmark };
}
