// Every sentence a person reads, from the Fluent files that the papers use too. A message that a
// language lacks is shown in English; one that is nowhere shows its key.

import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';

const FALLBACK = 'en';

const files = import.meta.glob<string>('../../src-tauri/core/text/*/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const bundles = new Map<string, FluentBundle>();
for (const [path, source] of Object.entries(files)) {
  const locale = path.split('/').at(-2) ?? FALLBACK;
  const bundle = bundles.get(locale) ?? new FluentBundle(locale, { useIsolating: false });
  bundle.addResource(new FluentResource(source));
  bundles.set(locale, bundle);
}

/** Languages there are texts for. */
export const locales: string[] = [...bundles.keys()].sort();

const chosen = $state({ locale: FALLBACK });

/** The language the screens are shown in. */
export function locale(): string {
  return chosen.locale;
}

/** Takes the first of these languages that there are texts for, and says on the page which it is. */
export function chooseLocale(wanted: readonly string[]): void {
  chosen.locale =
    wanted.map((tag) => tag.split('-')[0] ?? tag).find((tag) => bundles.has(tag)) ?? FALLBACK;
  document.documentElement.lang = chosen.locale;
}

/** The message under a key. */
export function t(key: string, values?: Record<string, FluentVariable>): string {
  return find(key, values) ?? key;
}

/** The message under a key in a language of its own: what an owner reads beside a technician's screens. */
export function tIn(tag: string, key: string, values?: Record<string, FluentVariable>): string {
  return findIn([tag, FALLBACK], key, values) ?? key;
}

/** The message under the first of these keys that there is one for. */
export function tFirst(keys: readonly string[], values?: Record<string, FluentVariable>): string {
  for (const key of keys) {
    const found = find(key, values);
    if (found !== undefined) return found;
  }
  return keys[0] ?? '';
}

/** The message under a key, if there is one. */
export function find(key: string, values?: Record<string, FluentVariable>): string | undefined {
  return findIn([chosen.locale, FALLBACK], key, values);
}

function findIn(tags: string[], key: string, values?: Record<string, FluentVariable>): string | undefined {
  for (const tag of new Set(tags)) {
    const bundle = bundles.get(tag);
    const pattern = bundle?.getMessage(key)?.value;
    if (bundle && pattern) return bundle.formatPattern(pattern, values ?? null, []);
  }
  return undefined;
}

/** A day and minute as the language writes it; today, the minute alone. */
export function when(at: number): string {
  if (new Date(at).toDateString() === new Date().toDateString()) {
    return new Intl.DateTimeFormat(region(), { timeStyle: 'short' }).format(at);
  }
  return new Intl.DateTimeFormat(region(), { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** A day as the papers write it. */
export function day(at: number): string {
  return new Intl.DateTimeFormat(region(), { dateStyle: 'long' }).format(at);
}

/** A share as a whole percentage, in the papers' words: never 0 or 100, since the sorting is never certain. */
export function percent(share: number): string {
  const rounded = Math.round(share * 100);
  if (rounded < 1) return t('percent-below', { number: '1' });
  if (rounded > 99) return t('percent-above', { number: '99' });
  return t('percent', { number: String(rounded) });
}

/** The papers write English dates day first. */
function region(): string {
  return chosen.locale === 'en' ? 'en-GB' : chosen.locale;
}

/** A number with so many decimals, as the reader's region writes it. */
export function number(value: number, decimals: number): string {
  const format = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return new Intl.NumberFormat(chosen.locale, format).format(value);
}
