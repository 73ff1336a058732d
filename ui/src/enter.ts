// Enter in a form: on to its next field, as in a list of figures typed one after the other. Only the last field, or
// the button itself, sends: half a form is never recorded by a key pressed on the way.

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

/** What is chosen with a tap, or opens something of its own. */
const NOT_TYPED = ['button', 'submit', 'reset', 'file', 'hidden', 'image', 'checkbox', 'radio', 'range', 'color'];

/** For a form, as an attachment. In a text of several lines Enter stays a new line. */
export function onward(form: HTMLFormElement): () => void {
  const key = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' || event.isComposing || event.defaultPrevented) return;
    if (event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
    const field = event.target;
    if (!isField(field) || field instanceof HTMLTextAreaElement) return;
    const next = after(form, field);
    if (!next) return;
    event.preventDefault();
    next.focus();
    // As with Tab: what stands there is typed over.
    if (next instanceof HTMLInputElement) next.select();
  };
  // A phone's keyboard says on its key what the key does.
  const label = (event: FocusEvent): void => {
    const field = event.target;
    if (isField(field) && !(field instanceof HTMLTextAreaElement))
      field.enterKeyHint = after(form, field) ? 'next' : 'done';
  };
  form.addEventListener('keydown', key);
  form.addEventListener('focusin', label);
  return () => {
    form.removeEventListener('keydown', key);
    form.removeEventListener('focusin', label);
  };
}

function after(form: HTMLFormElement, field: Field): Field | undefined {
  const fields = [...form.elements].filter(isField).filter((one) => one === field || canBeTyped(one));
  return fields[fields.indexOf(field) + 1];
}

function isField(target: unknown): target is Field {
  if (target instanceof HTMLInputElement) return !NOT_TYPED.includes(target.type);
  return target instanceof HTMLSelectElement || target instanceof HTMLTextAreaElement;
}

/** What is folded away or switched off is passed by. */
function canBeTyped(field: Field): boolean {
  return !field.matches(':disabled') && field.closest('details:not([open]), [hidden]') === null;
}
