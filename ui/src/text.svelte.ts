// Every sentence a person reads, from the Fluent files that the papers use too. What the first screens say in
// English is always there; another language, and the rest of each, is fetched from the app itself before what it
// says is shown. A message that a language lacks is shown in English; one that is nowhere shows its key.

import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import { english, names, others, rests, type Part } from 'virtual:texts';
import { isolated } from './isolate.ts';
import { direction, pretended } from './pseudo.ts';

/** The language that stands in for another's missing words, here and in the core. */
export const FALLBACK = 'en';
const STORE = 'steady.locale';

// `ready` counts the parts of languages that are here, so that what waits for one is drawn anew.
const chosen = $state({ locale: FALLBACK, ready: 0 });
/** Messages that take no values, as they were put together once. Emptied when a part arrives. */
const formatted = new Map<string, string>();
let wish = 0;
/** Whether screens beyond the first were asked for: from then on a language is here whole before it is shown. */
let whole = false;

const bundles = new Map<string, FluentBundle>();
/** Parts of languages that are here or on their way. */
const parts = new Map<string, Promise<void>>();
take(FALLBACK, english);

/** Languages there are texts for. */
export const locales: string[] = Object.keys(names).sort();

/** The language the screens are shown in. */
export function locale(): string {
  return chosen.locale;
}

/** What a language calls itself. */
export function nameOf(tag: string): string {
  return names[tag] ?? tag;
}

/** The direction a language is read in, by its own texts. */
export function directionOf(tag: string): 'ltr' | 'rtl' {
  return direction() ?? (findIn([tag, FALLBACK], 'language-direction') === 'rtl' ? 'rtl' : 'ltr');
}

/** Whether a native speaker has not read a language's texts yet. */
export function awaitsReader(tag: string): boolean {
  return findIn([tag, FALLBACK], 'language-read') === 'awaited';
}

/** The languages to start with: the one shown last on this device, then the system's. */
export function firstWish(): readonly string[] {
  const stored = localStorage.getItem(STORE);
  return stored === null ? navigator.languages : [stored, ...navigator.languages];
}

/**
 * Takes the first of these languages that there are texts for, and says on the page which it is. Until its
 * texts are here, the language before stays; a later wish overtakes an earlier one.
 */
export async function chooseLocale(wanted: readonly string[]): Promise<void> {
  const own = ++wish;
  // A region's own way of writing comes before its language's.
  const tag = wanted.flatMap((each) => [each, each.split('-')[0] ?? each]).find((each) => each in names) ?? FALLBACK;
  await fetchPart(`first ${tag}`, tag, others[tag]);
  if (whole) await fetchTexts(tag);
  if (own !== wish) return;
  chosen.locale = tag;
  document.documentElement.lang = tag;
  document.documentElement.dir = directionOf(tag);
  try {
    localStorage.setItem(STORE, tag);
  } catch {
    return;
  }
}

/** Sees to it that all of a language's texts are here. Without them English stands in. */
export async function fetchTexts(tag: string): Promise<void> {
  await Promise.all([fetchPart(`first ${tag}`, tag, others[tag]), fetchPart(`rest ${tag}`, tag, rests[tag])]);
}

/** Sees to it that everything can be said, in the language that is shown and in English, which stands in for it. */
export async function wholeTexts(): Promise<void> {
  whole = true;
  await Promise.all([fetchTexts(FALLBACK), fetchTexts(chosen.locale)]);
}

/** Fetches a part of a language once, and again only if it did not come. */
function fetchPart(name: string, tag: string, source: Part | undefined): Promise<void> {
  if (!source) return Promise.resolve();
  const before = parts.get(name);
  if (before) return before;
  const coming = source().then(({ default: text }) => take(tag, text));
  parts.set(name, coming);
  coming.catch(() => parts.delete(name));
  return coming;
}

function take(tag: string, text: string): void {
  const bundle = bundles.get(tag) ?? new FluentBundle(tag, { useIsolating: false });
  bundle.addResource(new FluentResource(text));
  bundles.set(tag, bundle);
  formatted.clear();
  chosen.ready += 1;
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
  // Read, so that what was drawn without a language is drawn anew once it is here.
  void chosen.ready;
  const name = `${tags[0]} ${key}`;
  const before = values ? undefined : formatted.get(name);
  if (before !== undefined) return before;
  for (const tag of new Set(tags)) {
    const bundle = bundles.get(tag);
    const pattern = bundle?.getMessage(key)?.value;
    if (!bundle || !pattern) continue;
    const said = pretended(bundle.formatPattern(pattern, values ? apart(bundle, values) : null, []));
    if (!values) formatted.set(name, said);
    return said;
  }
  return undefined;
}

/** The values as they stand in a sentence of this language. */
function apart(bundle: FluentBundle, values: Record<string, FluentVariable>): Record<string, FluentVariable> {
  if (bundle.getMessage('language-direction')?.value !== 'rtl') return values;
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, isolated(value)]));
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

/** A number with at most so many decimals, as the papers write it. */
export function rounded(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const size = Math.round(Math.abs(value) * scale) / scale;
  // Nought has no sign.
  const plain = value < 0 && size > 0 ? -size : size;
  return new Intl.NumberFormat(region(), { maximumFractionDigits: decimals }).format(plain);
}

/** The mark before decimals, as the reader's language writes it. */
export function decimalMark(): string {
  const parts = new Intl.NumberFormat(region()).formatToParts(0.5);
  return parts.find((part) => part.type === 'decimal')?.value ?? '.';
}

/** A number that stands in a field, with the mark that the language's own pad types. */
export function inField(value: number | string): string {
  return String(value).replace('.', decimalMark());
}

/** A number with so many decimals, as the reader's region writes it. */
export function number(value: number, decimals: number): string {
  const format = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  return new Intl.NumberFormat(chosen.locale, format).format(value);
}
