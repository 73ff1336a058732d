// Keeps values in order within a sentence read from right to left: a plate, a signed number or a Latin name is set
// apart by marks that do not show (Unicode Standard Annex 9, first strong isolate). The core does the same for the
// papers (`words/isolate.rs`), and `tests/published/isolates.toml` holds both.

import type { FluentVariable } from '@fluent/bundle';

/** Letters read from right to left, blanks, numbers and rows of them keep their order; a number in groups does not. */
const KEEPS_ORDER = /^(?!.*\d[ \u00A0]\d)(?:[\u0591-\u05F4\u0620-\u064A \u00A0;]|\d+(?:[.,:]\d+)*)*$/;

/** The value as it stands within a sentence read from right to left. */
export function isolated(value: FluentVariable): FluentVariable {
  return typeof value !== 'string' || KEEPS_ORDER.test(value) ? value : `\u2068${value}\u2069`;
}
