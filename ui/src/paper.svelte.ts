// The language of the papers of the visit at hand: the screens' own until one is chosen, and again at the next
// visit, so that no owner gets the language of the one before.

import { locale } from './text.svelte.ts';

const chosen = $state({ visit: '', tag: '' });

/** The language a visit's papers are made in. */
export function paperLocale(visit: string): string {
  return chosen.visit === visit ? chosen.tag : locale();
}

/** Makes a visit's papers in this language from now on. */
export function choosePaperLocale(visit: string, tag: string): void {
  chosen.visit = visit;
  chosen.tag = tag;
}
