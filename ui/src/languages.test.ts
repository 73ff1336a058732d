// Every language says what English says, with the same variables; numbers, shares and dates read as on paper;
// a language is chosen without a restart, and a paper's apart from the screens'.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, test } from 'vitest';
import { choosePaperLocale, paperLocale } from './paper.svelte.ts';
import {
  awaitsReader,
  chooseLocale,
  day,
  decimalMark,
  directionOf,
  fetchTexts,
  inField,
  locale,
  locales,
  nameOf,
  percent,
  t,
  tIn,
} from './text.svelte.ts';

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
  const rows = (tag: string) => readFileSync(join(TEXT, tag, 'formats.toml'), 'utf8').split(/^(?=\[\[)/m);
  return locales
    .flatMap((tag) => rows(tag).map((row) => `${row}\nlocale = "${tag}"`))
    .filter((row) => row.startsWith(`[[${table}]]`))
    .map((row) => {
      const field = (name: string) => new RegExp(`^${name} = (.+)$`, 'm').exec(row)?.[1] ?? '""';
      const text = (name: string) => JSON.parse(field(name)) as string;
      return { locale: text('locale'), value: Number(field('value')), at: text('at'), text: text('text') };
    });
}

afterEach(() => chooseLocale(['en']));

it('has a language for each folder of texts', () => {
  const folders = readdirSync(TEXT, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(locales).toEqual(folders.map((entry) => entry.name).sort());
  expect(locales.length).toBeGreaterThan(3);
});

const texts = (tag: string): string[] => readdirSync(join(TEXT, tag)).filter((name) => name.endsWith('.ftl'));
/** Languages that say everything themselves; a way of writing, such as en-US, says what differs. */
const whole = locales.filter((tag) => texts(tag).includes('papers.ftl'));

describe.each(texts('en'))('%s', (file) => {
  test.each(whole.filter((tag) => tag !== 'en'))(
    'says in %s what it says in English, with the same variables',
    (tag) => {
      expect(messages('en', file).length).toBeGreaterThan(2);
      expect(messages(tag, file)).toEqual(messages('en', file));
    },
  );
});

test.each(locales.filter((tag) => !whole.includes(tag)))(
  'says in %s only what its language says, with the same variables',
  (tag) => {
    const said = new Set(texts('en').flatMap((file) => messages('en', file)));
    const own = texts(tag).flatMap((file) => messages(tag, file));
    expect(own.length).toBeGreaterThan(2);
    expect(own.filter((message) => !said.has(message))).toEqual([]);
  },
);

it('writes numbers, shares and dates as the papers do', async () => {
  for (const tag of locales) await fetchTexts(tag);
  const numbers = published('number');
  const shares = published('percent');
  const dates = published('date').filter((row) => row.at.includes('T12:'));
  expect([numbers, shares, dates].map((rows) => rows.length / locales.length)).toEqual([9, 2, 3]);
  for (const row of numbers) {
    expect(tIn(row.locale, 'length-mm', { mm: row.value })).toMatch(
      new RegExp(`^${row.text.replaceAll('.', '\\.')}\\s\\D+$`),
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

it('fills fields in with the mark that the language types', async () => {
  const filled = async (tag: string) => {
    await chooseLocale([tag]);
    return [decimalMark(), inField(0.004), inField('0.02'), inField(4), inField('')];
  };
  for (const tag of ['de', 'es']) expect(await filled(tag)).toEqual([',', '0,004', '0,02', '4', '']);
  expect(await filled('en')).toEqual(['.', '0.004', '0.02', '4', '']);
});

it('switches without a restart and says on the page which language it is', async () => {
  await chooseLocale(['pt-BR', 'de-AT', 'en']);
  expect([locale(), document.documentElement.lang, t('word-danger')]).toEqual(['de', 'de', 'GEFAHR']);
  await chooseLocale(['pt-BR']);
  expect([locale(), t('word-danger')]).toEqual(['en', 'DANGER']);
});

it('names each language in that language, and says which awaits its reader', async () => {
  for (const tag of locales) await fetchTexts(tag);
  const own = locales.map((tag) => [tag, tIn(tag, 'language-name')]);
  expect(locales.map((tag) => [tag, nameOf(tag)])).toEqual(own);
  expect(new Set(own.map(([, name]) => name)).size).toBe(locales.length);
  expect(['en', 'de'].map(awaitsReader)).toEqual([false, true]);
});

it('reads each language in its own direction', async () => {
  for (const tag of locales) await fetchTexts(tag);
  expect(locales.map(directionOf)).toEqual(locales.map((tag) => tIn(tag, 'language-direction')));
  expect(new Set(locales.map(directionOf))).toEqual(new Set(['ltr', 'rtl']));
  expect(directionOf('nowhere')).toBe('ltr');
});

it("makes a visit's papers in the screens' language until another is chosen", async () => {
  await chooseLocale(['de']);
  expect(paperLocale('a-1')).toBe('de');
  choosePaperLocale('a-1', 'es');
  expect([paperLocale('a-1'), paperLocale('a-2'), locale()]).toEqual(['es', 'de', 'de']);
});

it('keeps the language before until the next is whole, and the latest wish wins', async () => {
  const slow = chooseLocale(['de']);
  const late = chooseLocale(['es']);
  expect(locale()).toBe('en');
  await Promise.all([slow, late]);
  expect(locale()).toBe('es');
});
