// A handover file goes out whole, and comes in piece by piece and in order.

import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { toBase64 } from './bytes.ts';
import { eraseWord, lookAt, makeHandover } from './handover.ts';

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

it('turns bytes into text', async () => {
  const bytes = Uint8Array.from({ length: 256 }, (_, index) => index);
  expect(await toBase64(new Blob([bytes]))).toBe(Buffer.from(bytes).toString('base64'));
});

it('fetches an export by its id, with the key in a header alone', async () => {
  sessionStorage.setItem('steady.key', 'k');
  const asked: [string, RequestInit][] = [];
  vi.stubGlobal('fetch', (address: string, how: RequestInit) => {
    asked.push([address, how]);
    const made = { is: 'handover', file: 'f', name: 'visit-1.steady', bytes: 6, left_out: [] };
    return Promise.resolve(
      address === '/api' ? new Response(JSON.stringify(made)) : new Response(new Uint8Array([0, 1, 2])),
    );
  });
  const made = await makeHandover(['v']);
  expect([made.name, made.got?.name, made.got?.type]).toEqual(['visit-1.steady', 'visit-1.steady', 'application/zip']);
  expect([...new Uint8Array(await (made.got as File).arrayBuffer())]).toEqual([0, 1, 2]);
  expect(asked.map(([address]) => address)).toEqual(['/api', '/file/f']);
  for (const [, how] of asked) expect(how.headers).toMatchObject({ 'X-Steady-Key': 'k' });
});

it('sends a file in pieces that the desk lets through', async () => {
  const heard = core((asked) =>
    asked.ask === 'preview-import' ? { is: 'preview', visits: [] } : { is: 'uploaded', bytes: 1 },
  );
  const shares: number[] = [];
  const looked = await lookAt(new Blob([new Uint8Array(1_200_000)]), (share) => shares.push(share));
  expect(looked.preview.visits).toEqual([]);
  expect(heard.at(-1)).toEqual({ ask: 'preview-import', upload: looked.upload });
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
