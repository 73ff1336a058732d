import { beforeEach, describe, expect, it } from 'vitest';
import { onward } from './enter.ts';

let sent = 0;

/** A form with these fields, the field named focused, and Enter pressed in it; gives the one that is focused then. */
function enter(inner: string, at: string, how: Partial<KeyboardEventInit> = {}): { on: string; stopped: boolean } {
  const form = document.createElement('form');
  form.innerHTML = inner;
  document.body.replaceChildren(form);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    sent += 1;
  });
  onward(form);
  const field = form.querySelector<HTMLElement>(`[name=${at}]`);
  field?.focus();
  const press = new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true, ...how });
  field?.dispatchEvent(press);
  return { on: document.activeElement?.getAttribute('name') ?? '', stopped: press.defaultPrevented };
}

beforeEach(() => {
  sent = 0;
});

const TWO = '<input name="one"><input name="two"><button>Send</button>';

describe('Enter in a form', () => {
  it.each([
    ['to the next field', TWO, 'one', 'two'],
    ['past a button', '<input name="one"><button type="button">x</button><input name="two">', 'one', 'two'],
    ['past a file to choose', '<input name="one"><input type="file"><input name="two">', 'one', 'two'],
    ['past what is switched off', '<input name="one"><input disabled><input name="two">', 'one', 'two'],
    [
      'past what is folded away',
      '<input name="one"><details><textarea></textarea></details><input name="two">',
      'one',
      'two',
    ],
    ['into what is unfolded', '<input name="one"><details open><input name="two"></details>', 'one', 'two'],
    ['to a list to choose from', '<input name="one"><select name="two"></select>', 'one', 'two'],
    ['from a list to choose from', '<select name="one"></select><input name="two">', 'one', 'two'],
  ])('leads %s and does not send', (_, inner, from, to) => {
    expect(enter(inner, from)).toEqual({ on: to, stopped: true });
    expect(sent).toBe(0);
  });

  it('is left to the form in its last field, which sends', () => {
    expect(enter(TWO, 'two')).toEqual({ on: 'two', stopped: false });
  });

  it('stays a new line in a text of several lines', () => {
    expect(enter('<textarea name="one"></textarea><input name="two">', 'one')).toEqual({ on: 'one', stopped: false });
  });

  it.each([{ isComposing: true }, { ctrlKey: true }, { shiftKey: true }])('is not its own with %j', (how) => {
    expect(enter(TWO, 'one', how).on).toBe('one');
  });

  it('says on the key of a phone what it does', () => {
    enter(TWO, 'one');
    const [one, two] = document.querySelectorAll('input');
    expect([one?.enterKeyHint, two?.enterKeyHint]).toEqual(['next', 'done']);
  });
});
