// A sentence that the core chose, in the reader's language: which text, and what goes into it. The core says the same
// on paper, `core/src/words/sentence.rs`.

import type { FluentVariable } from '@fluent/bundle';
import { find, percent, rounded, t } from './text.svelte.ts';
import { fine, movement } from './units.svelte.ts';
import type { Arg } from './types/Arg.ts';
import type { Sentence } from './types/Sentence.ts';

/** A sentence in the language of the screens. */
export function say(sentence: Sentence): string {
  const values = Object.fromEntries(Object.entries(sentence.args).map(([name, arg]) => [name, filled(arg)]));
  for (const text of sentence.texts) {
    const found = find(text, values);
    if (found !== undefined) return found;
  }
  return sentence.or ?? sentence.texts.at(-1) ?? '';
}

/** Sentences one after the other. */
export function sayAll(sentences: readonly Sentence[]): string {
  return sentences.map(say).join(' ');
}

function filled(arg: Arg): FluentVariable {
  switch (arg.is) {
    case 'verbatim':
    case 'count':
      return arg.of;
    case 'sentence':
      return say(arg.of);
    case 'sentences':
      return sayAll(arg.of);
    case 'list':
      return arg.of.map(say).join(t('list-joint'));
    case 'number':
      return rounded(...arg.of);
    case 'movement':
      return movement(arg.of);
    case 'fine':
      return fine(arg.of);
    case 'percent':
      return percent(arg.of);
  }
}
