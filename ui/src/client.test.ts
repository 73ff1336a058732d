import { createHmac } from 'node:crypto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { adoptKey, ask, hasCode, photoUrl, practiseOn, Refusal } from './client.ts';
import type { Request } from './types/Request.ts';

beforeEach(() => {
  sessionStorage.clear();
});

afterEach(() => {
  vi.unstubAllGlobals();
});

it('takes the secret out of the address and sends it as a header', async () => {
  history.replaceState(null, '', '#key=s3cret');
  adoptKey();
  expect(location.href).not.toContain('s3cret');
  const call = vi.fn(() => Promise.resolve(new Response('{"is":"home"}')));
  vi.stubGlobal('fetch', call);
  await ask({ ask: 'home' });
  expect(call).toHaveBeenCalledWith(
    '/api',
    expect.objectContaining({
      method: 'POST',
      headers: expect.objectContaining({ 'X-Steady-Key': 's3cret' }),
      body: '{"ask":"home"}',
    }),
  );
  // As node's own HMAC has it; no address holds the key.
  const mac = createHmac('sha256', 's3cret').update('ab/thumb').digest('hex').slice(0, 32);
  expect(await photoUrl('ab', 'thumb')).toBe(`/photo/ab/thumb?token=${mac}`);
});

it('turns a refusal into a failure with its code', async () => {
  const failure = { code: 'gate-closed', message: 'closed', help: 'open it', field: 'mpe' };
  vi.stubGlobal('fetch', () => Promise.resolve(new Response(JSON.stringify(failure), { status: 409 })));
  const caught = await ask({ ask: 'home' }).catch((problem: unknown) => problem);
  expect(caught).toBeInstanceOf(Refusal);
  expect((caught as Refusal).failure).toEqual(failure);
  expect(hasCode(caught, 'gate-closed')).toBe(true);
});

it.each([
  ['no connection', () => Promise.reject(new TypeError('refused'))],
  ['an answer that is no JSON', () => Promise.resolve(new Response('<html>'))],
  ['an error without a code', () => Promise.resolve(new Response('{}', { status: 500 }))],
])('says the core cannot be reached on %s', async (_, fetch) => {
  vi.stubGlobal('fetch', fetch);
  const caught = await ask({ ask: 'home' }).catch((problem: unknown) => problem);
  expect(hasCode(caught, 'no-core')).toBe(true);
});

it('goes through the window where there is one', async () => {
  const invoke = vi.fn(() => Promise.resolve({ is: 'home' }));
  vi.stubGlobal('__TAURI_INTERNALS__', {
    invoke,
    convertFileSrc: (path: string, protocol: string) => `${protocol}://localhost/${path}`,
  });
  await ask({ ask: 'home' });
  expect(invoke).toHaveBeenCalledWith('ask', { request: { ask: 'home' } });
  expect(await photoUrl('ab', 'full')).toBe('photo://localhost/ab/full');
  invoke.mockRejectedValueOnce({ code: 'disk-full', message: 'full', help: 'free some' } as never);
  expect(hasCode(await ask({ ask: 'home' }).catch((problem: unknown) => problem), 'disk-full')).toBe(true);
});

it.each<[string, Request, boolean]>([
  ['p', { ask: 'upload', upload: 'u', index: 0, base64: '' }, true],
  ['p', { ask: 'read-vin', upload: 'u' }, true],
  ['p', { ask: 'keep-wanted', wish: 'w', upload: 'u' }, true],
  ['real', { ask: 'keep-wanted', wish: 'w', upload: 'u' }, false],
  ['real', { ask: 'look', visit: 'p' }, true],
  ['p', { ask: 'look', visit: 'real' }, false],
])('what belongs to the practice visit goes there: on %s, %o', async (visit, request, practised) => {
  history.replaceState(null, '', `#/visit/${visit}/step/housing-look`);
  practiseOn('p');
  const call = vi.fn<typeof fetch>(() => Promise.resolve(new Response('{"is":"uploaded"}')));
  vi.stubGlobal('fetch', call);
  await ask(request as never);
  const sent = JSON.parse(String(call.mock.calls[0]?.[1]?.body)) as Request;
  expect(sent.ask === 'practise').toBe(practised);
  practiseOn(null);
});
