import { afterEach, expect, it, vi } from 'vitest';
import { storedSize, upload } from './photos.ts';

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const JPEG = [0xff, 0xd8, 0xff, 0xe0];
const PNG = [0x89, 0x50, 0x4e, 0x47];
const HEIC = [0, 0, 0, 24, ...new TextEncoder().encode('ftypheic')];

it.each([
  { from: [4000, 3000], to: [2560, 1920] },
  { from: [3000, 4000], to: [1920, 2560] },
  { from: [2560, 100], to: [2560, 100] },
  { from: [640, 480], to: [640, 480] },
  { from: [12000, 1], to: [2560, 1] },
])('keeps $from as $to', ({ from, to }) => {
  const size = storedSize(from[0] ?? 0, from[1] ?? 0);
  expect([size.width, size.height]).toEqual(to);
});

/** Sends a file through an engine that decodes everything or nothing; gives what arrived. */
async function arrived(
  bytes: Uint8Array<ArrayBuffer>,
  decodes: boolean,
): Promise<{ indices: number[]; names: Set<string>; whole: Buffer }> {
  const sent: { upload: string; index: number; base64: string }[] = [];
  const bitmap = { width: 4, height: 3, close: () => undefined };
  vi.stubGlobal('createImageBitmap', () =>
    decodes ? Promise.resolve(bitmap) : Promise.reject(new Error('no picture')),
  );
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue({
    drawImage: () => undefined,
  } as unknown as RenderingContext);
  vi.spyOn(HTMLCanvasElement.prototype, 'toBlob').mockImplementation((done, kind) => done(new Blob([`made ${kind}`])));
  vi.stubGlobal('fetch', (_: string, init: { body: string }) => {
    sent.push(JSON.parse(init.body));
    return Promise.resolve(new Response(JSON.stringify({ is: 'uploaded', bytes: 1 })));
  });
  const name = await upload(new Blob([bytes]));
  const names = new Set([name, ...sent.map((piece) => piece.upload)]);
  const whole = Buffer.concat(sent.map((piece) => Buffer.from(piece.base64, 'base64')));
  return { indices: sent.map((piece) => piece.index), names, whole };
}

it('sends pieces that arrive in order', async () => {
  const bytes = Uint8Array.from({ length: 600 * 1024 }, (_, at) => JPEG[at] ?? (at * 7) % 251);
  const { indices, names, whole } = await arrived(bytes, false);
  expect(indices).toEqual([0, 1, 2]);
  expect(names.size).toBe(1);
  expect(whole.equals(Buffer.from(bytes))).toBe(true);
});

it.each([
  { name: 'a JPEG', head: JPEG, decodes: true, made: false },
  { name: 'a PNG', head: PNG, decodes: true, made: false },
  { name: 'a HEIC where the engine reads it', head: HEIC, decodes: true, made: true },
  { name: 'a HEIC where it does not', head: HEIC, decodes: false, made: false },
  { name: 'no picture', head: [1, 2, 3], decodes: false, made: false },
  { name: 'nothing', head: [], decodes: false, made: false },
])('sends $name as it is or as a JPEG: made anew $made', async ({ head, decodes, made }) => {
  const bytes = Uint8Array.from(head);
  const { whole } = await arrived(bytes, decodes);
  expect(whole.toString('latin1')).toBe(made ? 'made image/jpeg' : Buffer.from(bytes).toString('latin1'));
});
