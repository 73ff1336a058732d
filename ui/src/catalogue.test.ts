// Every key that is put together from what the core names is in the texts, every step has its drawing,
// and no text of the screens is left over. Keys written out in the code: text.test.ts.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { drawn } from './drawings/index.ts';
import { THEMES, THUMBS } from './look.svelte.ts';
import { find, locales, percent, t, tFirst } from './text.svelte.ts';

const DATA = '../src-tauri/core/data';

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return /\.(svelte|ts)$/.test(entry.name) && !entry.name.includes('.test.') ? [readFileSync(path, 'utf8')] : [];
  });
}

const code = [...sources('src'), readFileSync('texts.plugin.ts', 'utf8')];

/** The files that the screens alone read. */
const OWN = ['screens.ftl', 'bay.ftl'];

/** Ids of a data file's rows, by the name of the table. */
function ids(file: string, table: string): string[] {
  const rows = readFileSync(join(DATA, file), 'utf8').split(`[[${table}]]`).slice(1);
  return [...new Set(rows.map((row) => /^id = "([^"]+)"/m.exec(row)?.[1] ?? ''))];
}

/** Every word that a type of the core's takes, as its file writes them. */
function words(type: string): string[] {
  const text = readFileSync(join('src/types', `${type}.ts`), 'utf8').replace(/\/\*[^]*?\*\//g, '');
  const found = [...text.matchAll(/[|=]\s*(?:\{ "why": )?"([a-z0-9-]+)"/gi)].map(([, word]) => word ?? '');
  expect(found.length, type).toBeGreaterThan(1);
  return found;
}

function missing(keys: Iterable<string>): string[] {
  return [...new Set(keys)].filter((key) => find(key, {}) === undefined).sort();
}

it('uses every key of its own', () => {
  const texts = OWN.map((name) => readFileSync(join('../src-tauri/core/text/en', name), 'utf8')).join('\n');
  const own = texts.matchAll(/^(ui-[a-z0-9-]+) =/gm);
  const whole = code.join('\n');
  const patterns = [...whole.matchAll(/`(ui-[a-z-]*)\$\{[^}]*\}((?:[a-z-]*(?:\$\{[^}]*\})?)*)`/g)].map(
    ([, start, end]) => new RegExp(`^${start}[a-z0-9-]+${end?.replace(/\$\{[^}]*\}/g, '[a-z0-9-]+')}$`),
  );
  const unused = [...own]
    .map(([, key]) => key ?? '')
    .filter((key) => !whole.includes(`'${key}'`) && !patterns.some((pattern) => pattern.test(key)));
  expect(unused).toEqual([]);
});

it('has the keys that are put together from what the core names', () => {
  const ratings = [...words('Word').map((word) => word.toLowerCase()), 'unrated'];
  const sets = new Set(readFileSync(join(DATA, 'gates.toml'), 'utf8').match(/(?<=^set = ")[^"]+/gm));
  expect(
    missing([
      ...ratings.flatMap((word) => [`word-${word}`, `headline-${word}`]),
      ...[...sets].flatMap((set) => [
        `gates-${set}`,
        `gates-${set}-why`,
        `part-leave-${set}`,
        `ui-leave-${set}`,
        `ui-leave-${set}-done`,
      ]),
      ...words('Lock').map((why) => `lock-${why}`),
      ...['running-first', 'under-car-first'].flatMap((order) => [`order-${order}`, `ui-order-${order}-about`]),
      ...THEMES.map((theme) => `ui-theme-${theme}`),
      ...THUMBS.map((thumb) => `ui-thumb-${thumb}`),
      ...['running', 'creep'].flatMap((set) => [
        `ui-driver-stop-${set}`,
        ...[1, 2, 3].map((at) => `ui-driver-${set}-${at}`),
      ]),
      ...words('Warmth').map((warmth) => `ui-temperature-${warmth}`),
      ...words('EngineWarmth').map((warmth) => `ui-engine-${warmth}`),
      ...words('Sheet').map((sheet) => `ui-sheet-${sheet}`),
      ...words('VinHint').map((hint) => `ui-vin-${hint}`),
      ...words('Support').map((support) => `ui-support-${support}`),
      ...ids('gates.toml', 'gate').map((gate) => `gate-${gate}`),
      ...ids('complaints.toml', 'sound').map((sound) => `sound-${sound}`),
      ...ids('waivers.toml', 'waiver').map((waiver) => `waiver-${waiver}`),
      ...words('Why').map((why) => `set-aside-${why}`),
      ...words('Trust').map((trust) => `ui-trust-${trust}`),
      ...['confirmed', 'not-confirmed', 'retired', 'before-signatures'].map((trust) => `ui-from-${trust}`),
      ...['confirmed', 'named', 'retired', 'reset'].map((what) => `ui-decided-${what}`),
      'reading-rpm',
    ]),
  ).toEqual([]);
});

it('has title, manner, words of the drawing, and a drawing for every step', () => {
  const steps = [...new Set(ids('steps.toml', 'step'))];
  expect(
    missing(steps.flatMap((step) => [`step-${step}`, `step-${step}-do`, `step-${step}-watch`, `drawing-${step}`])),
  ).toEqual([]);
  expect([...drawn].sort()).toEqual([...steps].sort());
});

it('has a wording for every answer', () => {
  const rows = readFileSync(join(DATA, 'steps.toml'), 'utf8').split('[[step]]').slice(1);
  const without = rows.flatMap((row) => {
    const step = /^id = "([^"]+)"/m.exec(row)?.[1] ?? '';
    const answers = [...row.matchAll(/\{ id = "([^"]+)"/g)].map(([, id]) => id ?? '');
    return answers
      .filter((id) => find(`answer-${step}-${id}`) === undefined && find(`answer-${id}`) === undefined)
      .map((id) => `${step}: ${id}`);
  });
  expect(without).toEqual([]);
});

it('shows the key where there is no message', () => {
  expect(t('no-such-message')).toBe('no-such-message');
  expect(tFirst(['no-such-message', 'word-danger'])).toBe('DANGER');
});

it('is never certain', () => {
  expect([percent(0), percent(0.004), percent(0.5), percent(0.999), percent(1)]).toEqual([
    'under 1%',
    'under 1%',
    '50%',
    'over 99%',
    'over 99%',
  ]);
});

it('has English at least', () => {
  expect(locales).toContain('en');
});
