// The phone as the screens ask it: asked in bounded text, silent in a browser, never in the way.

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ask } from './client.ts';
import { adopt, back, feel, listen, releaseShot, shots, stayAwake } from './device.ts';
import { canShare, ready, share } from './outgoing.ts';
import { upload } from './photos.ts';

interface Asked {
  command: string;
  args: Record<string, unknown>;
}

const PHONE = 'Mozilla/5.0 (Linux; Android 8.0.0) AppleWebKit/537.36';
const INSETS = { top: 24, right: 0, bottom: 48, left: 0 };

let asked: Asked[] = [];
let heard: ((message: unknown) => void)[] = [];

/** A phone that writes down what it was asked and, where told to, refuses all of it. */
function phone(refuses = false, inFolder: string[] = []): void {
  vi.stubGlobal('__TAURI_INTERNALS__', {
    invoke(command: string, args: Record<string, unknown>): Promise<unknown> {
      asked.push({ command, args });
      if (refuses) return Promise.reject(new Error('absent'));
      if (command === 'plugin:device|insets') return Promise.resolve(INSETS);
      if (command === 'adopt_shot') return Promise.resolve(inFolder.includes(String(args.name)));
      if (command === 'shots') return Promise.resolve(inFolder.map((name) => ({ name, bytes: 9, at: 1 })));
      if (command === 'ask') return Promise.resolve({ is: 'uploaded', bytes: 1 });
      return Promise.resolve(null);
    },
    transformCallback(callback: (message: unknown) => void): number {
      heard.push(callback);
      return heard.length;
    },
  });
  vi.spyOn(navigator, 'userAgent', 'get').mockReturnValue(PHONE);
}

const commands = (): string[] => asked.map((each) => each.command);
const flushed = (): Promise<void> => new Promise((done) => setTimeout(done, 20));

beforeEach(() => {
  asked = [];
  heard = [];
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  location.hash = '';
});

test('a browser is asked for nothing', async () => {
  feel('danger');
  await stayAwake(true);
  back();
  await flushed();
  expect(asked).toEqual([]);
  const got = new File(['x'], 'note.pdf');
  expect(canShare({ file: 'f', name: 'note.pdf', mime: '', bytes: 1, got, address: '' })).toBe(false);
});

test('a window on a desktop is no phone', async () => {
  phone();
  vi.spyOn(navigator, 'userAgent', 'get').mockReturnValue('Mozilla/5.0 (X11; Linux x86_64)');
  feel('tick');
  await flushed();
  expect(asked).toEqual([]);
});

test('an answer is felt, DANGER longer', async () => {
  phone();
  feel('tick');
  feel('danger');
  await flushed();
  expect(asked.map((each) => each.args.feel)).toEqual(['tick', 'danger']);
});

test('a phone that refuses stops no screen', async () => {
  phone(true);
  feel('tick');
  await stayAwake(true);
  listen();
  back();
  await flushed();
  expect(commands()).toContain('plugin:device|stay_awake');
});

test('a file goes to the sheet by its id, and none of its bytes to the page', async () => {
  phone();
  const made = await ready({ file: 'f', name: 'finding.pdf', mime: 'application/pdf', bytes: 300e6 });
  expect([made.got, made.address, canShare(made)]).toEqual([null, '', true]);
  await share(made);
  expect(asked).toEqual([{ command: 'share_file', args: { file: 'f', name: 'finding.pdf', mime: 'application/pdf' } }]);
});

test('the page keeps clear of what the phone says is covered', async () => {
  phone();
  listen();
  await flushed();
  const style = document.documentElement.style;
  expect(style.getPropertyValue('--device-top')).toBe('24px');
  expect(style.getPropertyValue('--device-bottom')).toBe('48px');
});

test('Back is one step back, and leaves from the first screen alone', async () => {
  phone();
  listen();
  await flushed();
  const listened = asked.find((each) => each.command === 'plugin:app|register_listener');
  expect(listened?.args).toEqual({ event: 'back-button', handler: '__CHANNEL__:1' });
  const stepped = vi.spyOn(history, 'back').mockReturnValue();
  location.hash = '#/visit/1/step/play';
  heard[0]?.({});
  expect(stepped).toHaveBeenCalledOnce();
  expect(commands()).not.toContain('plugin:device|leave');
  location.hash = '#/';
  heard[0]?.({});
  await flushed();
  expect(stepped).toHaveBeenCalledOnce();
  expect(commands()).toContain('plugin:device|leave');
});

test("the page's own lock is asked for before the phone's, and again when the page comes back", async () => {
  phone();
  const request = vi.fn(() => Promise.resolve({ released: true, release: () => Promise.resolve() }));
  vi.stubGlobal('navigator', { userAgent: PHONE, maxTouchPoints: 5, wakeLock: { request } });
  listen();
  await stayAwake(true);
  expect(request).toHaveBeenCalledTimes(1);
  document.dispatchEvent(new Event('visibilitychange'));
  await flushed();
  expect(request.mock.calls.length).toBeGreaterThan(1);
  await stayAwake(false);
  expect(commands()).not.toContain('plugin:device|stay_awake');
});

test("a photo in the camera's folder is taken over by name, and its file goes once it is kept", async () => {
  phone(false, ['JPEG_1_a.jpg']);
  expect((await shots()).map((shot) => shot.name)).toEqual(['JPEG_1_a.jpg']);
  const name = await upload(new File(['x'], 'JPEG_1_a.jpg'));
  expect(commands()).not.toContain('ask');
  expect(commands()).not.toContain('forget_shot');
  await ask({ ask: 'keep-photo', visit: '1', step: 'play', upload: name });
  await releaseShot(name);
  expect(asked.filter((each) => each.command === 'forget_shot').map((each) => each.args)).toEqual([
    { name: 'JPEG_1_a.jpg' },
  ]);
});

test('a photo from elsewhere crosses in pieces of text, never as numbers', async () => {
  phone();
  const name = await upload(new File([new Uint8Array(300 * 1024)], 'picture.heic'));
  const sent = asked.filter((each) => each.command === 'ask').map((each) => each.args.request);
  expect(sent.map((each) => (each as { index: number }).index)).toEqual([0, 1]);
  for (const { base64 } of sent as { base64: unknown }[]) expect(typeof base64).toBe('string');
  await releaseShot(name);
  expect(commands()).not.toContain('forget_shot');
  expect(await adopt('picture.heic', name)).toBe(false);
});
