// Sentences as the core hands them over, in words. The core says the same of them on paper.

import { afterEach, expect, it } from 'vitest';
import { say, sayAll } from './sentence.ts';
import { takeUnits } from './units.svelte.ts';
import type { Arg } from './types/Arg.ts';
import type { Sentence } from './types/Sentence.ts';

const of = (text: string, args: Record<string, Arg> = {}): Sentence => ({ texts: [text], or: null, args });

afterEach(() => takeUnits({ length: null, distance: null }));

it('takes the first text that there is, and what stands in for one that is nowhere', () => {
  expect(say({ texts: ['answer-play-vertical-felt', 'answer-felt'], or: null, args: {} })).toBe('Movement felt');
  expect(say({ texts: ['answer-nowhere-felt', 'answer-felt'], or: null, args: {} })).toBe('Felt');
  expect(say({ texts: ['cause-of-the-workshop'], or: 'own cause', args: {} })).toBe('own cause');
  expect(say({ texts: ['cause-of-the-workshop-about'], or: '', args: {} })).toBe('');
});

it('fills in sentences, rows and numbers, each as the language writes them', () => {
  const at = of('answer-at-step', {
    step: { is: 'sentence', of: of('step-idle-speed') },
    answer: { is: 'sentence', of: of('reading-rpm', { value: { is: 'number', of: [1200.04, 1] } }) },
  });
  expect(say(at)).toBe(`${say(of('step-idle-speed'))}: 1,200 rpm`);
  const rests = of('reason-rests-on', {
    reason: { is: 'sentences', of: [of('answer-felt'), of('answer-none')] },
    answers: { is: 'list', of: [at, at] },
  });
  expect(say(rests)).toBe(`${sayAll([of('answer-felt'), of('answer-none')])} Rests on: ${say(at)}, ${say(at)}.`);
});

it.each([
  [{ is: 'movement', of: 0.30449 }, '0.304 mm', '11.99 thou'],
  [{ is: 'movement', of: -0.0001 }, '0 mm', '0 thou'],
  [{ is: 'fine', of: 6.54 }, '6.5 µm', '0.26 thou'],
] as const)('gives %o in the unit of the workshop', (mean, mm, thou) => {
  const text = of('gauge-limit-maker', { limit: mean });
  expect(say(text)).toContain(mm);
  takeUnits({ length: 'thou', distance: null });
  expect(say(text)).toContain(thou);
});
