import { beforeEach, expect, it, vi } from 'vitest';
import { ask, type ReplyTo } from './client.ts';
import { loadHome, shop } from './state.svelte.ts';
import { chooseLocale } from './text.svelte.ts';

vi.mock('./client.ts', async (real) => ({ ...(await real<object>()), ask: vi.fn() }));

const having = (preferences: Record<string, string>): ReplyTo<'home'> =>
  ({ is: 'home', preferences, units: {} }) as unknown as ReplyTo<'home'>;
const told = (): unknown[] =>
  vi
    .mocked(ask)
    .mock.calls.map(([request]) => request)
    .filter((request) => request.ask === 'set-preference');

beforeEach(() => {
  vi.mocked(ask).mockReset();
});

it('tells the core the language that a first start shows, which nobody pressed', async () => {
  await chooseLocale(['de-DE']);
  vi.mocked(ask).mockImplementation(({ ask: what }) =>
    Promise.resolve(having(what === 'home' ? {} : { locale: 'de' }) as never),
  );
  await loadHome();
  expect(told()).toEqual([{ ask: 'set-preference', name: 'locale', value: 'de' }]);
  expect(shop.home?.preferences.locale).toBe('de');
});

it('leaves alone the language that was chosen, and English, which the core takes by itself', async () => {
  vi.mocked(ask).mockResolvedValue(having({ locale: 'fr' }) as never);
  await loadHome();
  await chooseLocale(['en']);
  vi.mocked(ask).mockResolvedValue(having({}) as never);
  await loadHome();
  expect(told()).toEqual([]);
});

it('opens all the same where the language cannot be kept', async () => {
  await chooseLocale(['de-DE']);
  vi.mocked(ask).mockImplementation(({ ask: what }) =>
    what === 'set-preference' ? Promise.reject(new Error('full')) : Promise.resolve(having({}) as never),
  );
  await loadHome();
  expect([shop.problem, shop.home?.preferences]).toEqual([null, {}]);
});
