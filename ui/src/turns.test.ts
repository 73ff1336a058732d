import { expect, it } from 'vitest';
import { Turns } from './turns.svelte.ts';

it('drops the same tap again, and lets another wait for its turn', async () => {
  const turns = new Turns();
  const done: string[] = [];
  const waits: (() => void)[] = [];
  const work = (name: string) => async (): Promise<void> => {
    await new Promise<void>((go) => waits.push(go));
    done.push(name);
  };
  const first = turns.take(work('a'), 'a');
  expect(await turns.take(work('a'), 'a')).toBe(false);
  expect(await turns.take(work('unnamed'))).toBe(false);
  const second = turns.take(work('b'), 'b');
  waits[0]?.();
  expect(await first).toBe(true);
  await Promise.resolve();
  waits[1]?.();
  expect(await second).toBe(true);
  expect(done).toEqual(['a', 'b']);
});
