// Every text that the screens name by a literal key is there.

import { expect, test } from 'vitest';
import { chooseLocale, find, locale, t } from './text.svelte.ts';

const sources = import.meta.glob<string>(['./**/*.svelte', './**/*.ts', '!./**/*.test.ts', '!./types/**'], {
  query: '?raw',
  import: 'default',
  eager: true,
});

test('no literal key is without its text', () => {
  const keys = new Set<string>();
  for (const source of Object.values(sources)) {
    for (const [, key = ''] of source.matchAll(/\b(?:t|find)\(\s*['"]([a-z0-9-]+)['"]/g)) keys.add(key);
    for (const [, key = ''] of source.matchAll(/['"](ui-[a-z0-9-]*[a-z0-9])['"]/g)) keys.add(key);
  }
  expect(keys.size).toBeGreaterThan(60);
  expect([...keys].filter((key) => find(key) === undefined)).toEqual([]);
});

test("a region's own way of writing comes before its language, which says the rest", async () => {
  await chooseLocale(['en-US']);
  expect([locale(), t('ui-gearbox'), t('word-danger')]).toEqual(['en-US', 'Transmission', 'DANGER']);
  await chooseLocale(['en-ZA']);
  expect([locale(), t('ui-gearbox')]).toEqual(['en', 'Gearbox']);
});
