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

/** Takes the first of these languages that there are texts for. */
export function chooseLocale(wanted: readonly string[]): void {
  chosen.locale =
    wanted.map((tag) => tag.split('-')[0] ?? tag).find((tag) => bundles.has(tag)) ?? FALLBACK;
}

/** The message under a key. */
export function t(key: string, values?: Record<string, FluentVariable>): string {
  return find(key, values) ?? key;
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
  for (const tag of new Set([chosen.locale, FALLBACK])) {
    const bundle = bundles.get(tag);
    const pattern = bundle?.getMessage(key)?.value;
    if (bundle && pattern) return bundle.formatPattern(pattern, values ?? null, []);
  }
  return undefined;
}

/** A day and minute as the reader's region writes it; today, the minute alone. */
export function when(at: number): string {
  if (new Date(at).toDateString() === new Date().toDateString()) {
    return new Intl.DateTimeFormat(chosen.locale, { timeStyle: 'short' }).format(at);
  }
  return new Intl.DateTimeFormat(chosen.locale, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** A day as the reader's region writes it. */
export function day(at: number): string {
  return new Intl.DateTimeFormat(chosen.locale, { dateStyle: 'medium' }).format(at);
}

/** A share as a whole percentage; never 0 or 100, since the sorting is never certain. */
export function percent(share: number): string {
  const rounded = Math.min(99, Math.max(1, Math.round(share * 100)));
  return new Intl.NumberFormat(chosen.locale, { style: 'percent' }).format(rounded / 100);
}

/** A number with so many decimals, as the reader's region writes it. */
export function number(value: number, decimals: number): string {
  const format = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return new Intl.NumberFormat(chosen.locale, format).format(value);
}
