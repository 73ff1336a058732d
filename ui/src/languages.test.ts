// Every language says what English says, with the same variables; numbers, shares and dates read as on paper;
// a language is chosen without a restart, and a paper's apart from the screens'.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, test } from 'vitest';
import { choosePaperLocale, paperLocale } from './paper.svelte.ts';
import { chooseLocale, day, fetchTexts, locale, locales, nameOf, percent, t, tIn } from './text.svelte.ts';

const TEXT = '../src-tauri/core/text';

/** Each message of a file with its variables, as `id: a, b`. */
function messages(tag: string, file: string): string[] {
  const entries = readFileSync(join(TEXT, tag, file), 'utf8')
    .split(/^(?=[a-z][A-Za-z0-9-]* =)/m)
    .slice(1);
  return entries
    .map((entry) => {
      const id = /^[A-Za-z0-9-]+/.exec(entry)?.[0] ?? '';
      const said = entry.split('\n').filter((line) => !line.startsWith('#'));
      const variables = [...new Set([...said.join('\n').matchAll(/\$([a-z0-9-]+)/g)].map(([, name]) => name))];
      return `${id}: ${variables.sort().join(', ')}`;
    })
    .sort();
}

/** Rows of a table of the published formats. */
function published(table: string): { locale: string; value: number; at: string; text: string }[] {
  const rows = readFileSync('../tests/published/formats.toml', 'utf8').split(/^(?=\[\[)/m);
  return rows
    .filter((row) => row.startsWith(`[[${table}]]`))
    .map((row) => {
      const field = (name: string) => new RegExp(`^${name} = (.+)$`, 'm').exec(row)?.[1] ?? '""';
      const text = (name: string) => JSON.parse(field(name)) as string;
      return { locale: text('locale'), value: Number(field('value')), at: text('at'), text: text('text') };
    });
}

afterEach(() => chooseLocale(['en']));

it('has four languages', () => {
  expect(locales).toEqual(['de', 'en', 'es', 'fr']);
});

describe.each(readdirSync(join(TEXT, 'en')))('%s', (file) => {
  test.each(['de', 'es', 'fr'])('says in %s what it says in English, with the same variables', (tag) => {
    expect(messages('en', file).length).toBeGreaterThan(2);
    expect(messages(tag, file)).toEqual(messages('en', file));
  });
});

it('writes numbers, shares and dates as the papers do', async () => {
  for (const tag of locales) await fetchTexts(tag);
  const numbers = published('number');
  const shares = published('percent');
  const dates = published('date').filter((row) => row.at.includes('T12:'));
  expect([numbers.length, shares.length, dates.length]).toEqual([36, 8, 12]);
  for (const row of numbers) {
    expect(tIn(row.locale, 'length-mm', { mm: row.value })).toMatch(
      new RegExp(`^${row.text.replaceAll('.', '\\.')}\\smm$`),
    );
  }
  for (const row of shares) {
    await chooseLocale([row.locale]);
    expect(percent(row.value)).toBe(row.text);
  }
  for (const row of dates) {
    await chooseLocale([row.locale]);
    expect(day(Date.parse(row.at))).toBe(row.text);
  }
});

it('switches without a restart and says on the page which language it is', async () => {
  await chooseLocale(['pt-BR', 'de-AT', 'en']);
  expect([locale(), document.documentElement.lang, t('word-danger')]).toEqual(['de', 'de', 'GEFAHR']);
  await chooseLocale(['pt-BR']);
  expect([locale(), t('word-danger')]).toEqual(['en', 'DANGER']);
});

it('names each language in that language', () => {
  expect(locales.map(nameOf)).toEqual(['Deutsch', 'English', 'Español', 'Français']);
});

it("makes a visit's papers in the screens' language until another is chosen", async () => {
  await chooseLocale(['de']);
  expect(paperLocale('a-1')).toBe('de');
  choosePaperLocale('a-1', 'es');
  expect([paperLocale('a-1'), paperLocale('a-2'), locale()]).toEqual(['es', 'de', 'de']);
});

it('keeps the language before until the next is whole, and the latest wish wins', async () => {
  const slow = chooseLocale(['fr']);
  const late = chooseLocale(['es']);
  expect(locale()).toBe('en');
  await Promise.all([slow, late]);
  expect(locale()).toBe('es');
});
