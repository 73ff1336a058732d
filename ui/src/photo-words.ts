// A photo in words, for those who cannot see it: what it was taken at, and what is marked on it. The papers say
// it in the same sentences.

import { t } from './text.svelte.ts';
import type { Mark } from './types/Mark.ts';

/** What a photo of a step shows, with what its marks say. */
export function photoWords(title: string, marks: readonly Mark[]): string {
  const alt = t('ui-photo-of', { title });
  const labels = marks.flatMap((mark) => (mark.shape === 'label' ? [mark.text] : []));
  if (labels.length > 0) return t('photo-alt-labelled', { alt: `${alt}.`, labels: labels.join(t('list-joint')) });
  return marks.length > 0 ? t('photo-alt-marked', { alt: `${alt}.` }) : alt;
}
