import { afterEach, expect, it, vi } from 'vitest';
import { cutShort, keptSize, upload } from './photos.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

it.each([
  { from: [4000, 3000], to: [2560, 1920] },
  { from: [3000, 4000], to: [1920, 2560] },
  { from: [2560, 100], to: [2560, 100] },
  { from: [640, 480], to: [640, 480] },
  { from: [12000, 1], to: [2560, 1] },
])('keeps $from as $to', ({ from, to }) => {
  const size = keptSize(from[0] ?? 0, from[1] ?? 0);
  expect([size.width, size.height]).toEqual(to);
});

it('sends what the page cannot decode as it is, in pieces that arrive in order', async () => {
  const sent: { upload: string; index: number; base64: string }[] = [];
  vi.stubGlobal('createImageBitmap', () => Promise.reject(new Error('no picture')));
  vi.stubGlobal('fetch', (_: string, init: { body: string }) => {
    sent.push(JSON.parse(init.body));
    return Promise.resolve(new Response(JSON.stringify({ is: 'uploaded', bytes: 1 })));
  });
  const bytes = Uint8Array.from({ length: 600 * 1024 }, (_, at) => (at * 7) % 251);
  const name = await upload(new Blob([bytes]));
  expect(sent.map((piece) => piece.index)).toEqual([0, 1, 2]);
  expect(new Set(sent.map((piece) => piece.upload))).toEqual(new Set([name]));
  const whole = Buffer.concat(sent.map((piece) => Buffer.from(piece.base64, 'base64')));
  expect(whole.equals(Buffer.from(bytes))).toBe(true);
});

it.each([
  { name: 'whole', bytes: [0xff, 0xd8, 0xff, 0xda, 1, 2, 0xff, 0xd9], short: false },
  { name: 'whole, with something behind it', bytes: [0xff, 0xd8, 0xff, 0xda, 1, 0xff, 0xd9, 7, 7], short: false },
  { name: 'broken off in its scan', bytes: [0xff, 0xd8, 0xff, 0xda, 1, 2], short: true },
  { name: 'with a whole thumbnail, broken off', bytes: [0xff, 0xd8, 0xff, 0xda, 1, 0xff, 0xd9, 0xff, 0xda, 1], short: true },
  { name: 'no JPEG', bytes: [0x89, 0x50, 0x4e, 0x47], short: false },
])('knows a JPEG that ends too early: $name', ({ bytes, short }) => {
  expect(cutShort(Uint8Array.from(bytes))).toBe(short);
});
