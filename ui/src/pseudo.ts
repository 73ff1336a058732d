// Pretended languages, for tests alone: `long` makes every sentence 40 % longer, `rtl` sets the page from
// right to left. Chosen by an entry of this device's store that no screen writes.

type Pretence = 'long' | 'rtl' | null;

/** How much longer than English a translation may well be. */
const LONGER = 0.4;
const FILLER = 'lorem ipsum dolor sit amet consectetur adipiscing elit sed do eiusmod tempor ';

const pretence = read();

/** A sentence as the pretended language says it; as it is where none is pretended. */
export function pretended(sentence: string): string {
  return pretence === 'long' ? stretched(sentence) : sentence;
}

/** The direction the page is read in, where one is pretended. */
export function direction(): 'rtl' | null {
  return pretence === 'rtl' ? 'rtl' : null;
}

/** A sentence made 40 % longer with words, so that lines break as they would. */
export function stretched(sentence: string): string {
  const more = Math.ceil(sentence.length * LONGER);
  return `${sentence} ${FILLER.repeat(Math.ceil(more / FILLER.length)).slice(0, Math.max(1, more - 1))}`.trimEnd();
}

function read(): Pretence {
  const stored = globalThis.localStorage?.getItem('steady.pretend') ?? null;
  return stored === 'long' || stored === 'rtl' ? stored : null;
}
