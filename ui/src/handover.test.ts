// A handover file goes out and comes in piece by piece, whole and in order.

import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { fromBase64, toBase64 } from './bytes.ts';
import { eraseWord, fetchHandover, takeIn } from './handover.ts';

type Asked = { ask: string; index?: number; base64?: string };

function core(answer: (asked: Asked) => unknown): Asked[] {
  const heard: Asked[] = [];
  vi.stubGlobal('fetch', (_: string, { body }: { body: string }) => {
    const asked = JSON.parse(body) as Asked;
    heard.push(asked);
    return Promise.resolve(new Response(JSON.stringify(answer(asked))));
  });
  return heard;
}

beforeEach(() => {
  sessionStorage.clear();
});

afterEach(() => {
  vi.unstubAllGlobals();
});

it('turns bytes into text and back', async () => {
  const bytes = Uint8Array.from({ length: 256 }, (_, index) => index);
  expect(fromBase64(await toBase64(new Blob([bytes])))).toEqual(bytes);
});

it('puts the pieces of an export together in order', async () => {
  const pieces = ['AAEC', 'AwQ=', 'BQ=='];
  const heard = core((asked) =>
    asked.ask === 'export'
      ? { is: 'handover', export: 'e', name: 'visit-1.steady', bytes: 6, pieces: 3, left_out: [] }
      : { is: 'piece', base64: pieces[asked.index ?? 0] },
  );
  const file = await fetchHandover(['v']);
  expect(file.name).toBe('visit-1.steady');
  expect([...new Uint8Array(await file.arrayBuffer())]).toEqual([0, 1, 2, 3, 4, 5]);
  expect(heard.map((asked) => asked.index)).toEqual([undefined, 0, 1, 2]);
});

it('sends a file in pieces that the desk lets through', async () => {
  const heard = core((asked) =>
    asked.ask === 'import'
      ? { is: 'imported', taken: ['v'], unchanged: 0, erased: 0, entries: 1, photos: 0 }
      : { is: 'uploaded', bytes: 1 },
  );
  const shares: number[] = [];
  const done = await takeIn(new Blob([new Uint8Array(1_200_000)]), (share) => shares.push(share));
  expect(done.taken).toEqual(['v']);
  expect(heard.map((asked) => asked.index)).toEqual([0, 1, 2, undefined]);
  expect(shares.at(-1)).toBe(1);
  for (const asked of heard) expect(JSON.stringify(asked).length).toBeLessThan(1024 * 1024);
});

it.each([
  ['0191d2f0-0000-7000-8000-0000000000ff', ' TR 4417 ', 'TR 4417'],
  ['0191d2f0-0000-7000-8000-0000000000ff', ' ', '0000000000ff'],
])('asks for a word that whoever erases can see', (visit, plate, word) => {
  expect(eraseWord(visit, plate)).toBe(word);
});
