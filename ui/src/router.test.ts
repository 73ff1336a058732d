// What going somewhere leaves in the history. Reading and writing addresses: parts.test.ts.

import { expect, test } from 'vitest';
import { backOr, go, goInstead } from './router.ts';

test('back leads on where nothing was gone to yet', () => {
  backOr({ screen: 'result', visit: 'v0' });
  expect(location.hash).toBe('#/visit/v0/result');
});

test('going leaves a history entry for Back, going instead leaves none', () => {
  const before = history.length;
  go({ screen: 'result', visit: 'v1' });
  expect(location.hash).toBe('#/visit/v1/result');
  expect(history.length).toBe(before + 1);
  let heard = 0;
  addEventListener('hashchange', () => (heard += 1), { once: true });
  goInstead({ screen: 'note', visit: 'v1' });
  expect(location.hash).toBe('#/visit/v1/note');
  expect(history.length).toBe(before + 1);
  expect(heard).toBe(1);
});

test('going where one is leaves no second entry', () => {
  go({ screen: 'ledger', visit: 'v1' });
  const before = history.length;
  go({ screen: 'ledger', visit: 'v1' });
  expect(history.length).toBe(before);
});
