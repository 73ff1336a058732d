// The signal words as screens name them. `unrated` is no word of the core's: it is the absence of one.

import type { Word } from './types/Word.ts';

export type Signal = 'danger' | 'warning' | 'caution' | 'notice' | 'unrated';

/** The signal for a rating, or for none. */
export function signalOf(word: Word | null): Signal {
  return word === null ? 'unrated' : (word.toLowerCase() as Signal);
}

/** The signal named by a paper's band; anything it does not know reads as not rated. */
export function signalNamed(name: string | null): Signal {
  return name === 'danger' || name === 'warning' || name === 'caution' || name === 'notice' ? name : 'unrated';
}
