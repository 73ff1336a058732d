// Every text that the screens name by a literal key is there.

import { expect, test } from 'vitest';
import { find } from './text.svelte.ts';

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
