// What would lose its order in a sentence read from right to left is set apart, by the core's own list.
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { isolated } from './isolate.ts';

const rows = readFileSync('../tests/published/isolates.toml', 'utf8').split('[[value]]').slice(1);

it('sets apart what the core sets apart', () => {
  expect(rows.length).toBe(16);
  for (const row of rows) {
    const text = JSON.parse(/^text = (.+)$/m.exec(row)?.[1] ?? '') as string;
    const apart = /^apart = true$/m.test(row);
    expect(isolated(text)).toBe(apart ? `\u2068${text}\u2069` : text);
  }
  expect(isolated(5)).toBe(5);
});
