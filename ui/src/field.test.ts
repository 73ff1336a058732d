import { afterEach, expect, it } from 'vitest';
import { marked } from './field.ts';

afterEach(() => document.body.replaceChildren());

it.each([
  ['<label><span>Housing bore</span><input data-field="bore" /></label>', 'Housing bore'],
  ['<button data-field="bore bore-u"> As measured here: 66.0161 mm </button>', 'As measured here: 66.0161 mm'],
])('calls a field what the screen calls it, a button that takes a value too', (field, label) => {
  document.body.innerHTML = `<form>${field}<p></p></form>`;
  const [said, about] = [document.querySelector('p'), document.querySelector('[data-field]')];
  if (!said) throw new Error('nothing is said');
  const found = marked(said, 'bore');
  expect([found?.label, about?.getAttribute('aria-invalid')]).toEqual([label, 'true']);
  found?.unmark();
  expect(about?.getAttribute('aria-invalid')).toBeNull();
});
