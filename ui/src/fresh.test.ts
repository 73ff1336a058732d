import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ask, type ReplyTo } from './client.ts';
import { follow } from './fresh.ts';
import { open } from './state.svelte.ts';

vi.mock('./client.ts', async (real) => ({ ...(await real<object>()), ask: vi.fn() }));

const having = (entries: number): ReplyTo<'look'> =>
  ({ is: 'visit', visit: 'one', ledger: { entries } }) as ReplyTo<'look'>;
let end: () => void;

/** How many entries the screens know of once the visit had every occasion to be looked at anew. */
async function known(): Promise<number | undefined> {
  await vi.advanceTimersByTimeAsync(20_000);
  return open.standing?.ledger.entries;
}

/** Types into a field that is on the screen. */
function type(value: string): HTMLInputElement {
  const field = document.body.appendChild(document.createElement('input'));
  field.value = value;
  field.dispatchEvent(new Event('input', { bubbles: true }));
  return field;
}

beforeEach(() => {
  vi.useFakeTimers();
  document.body.replaceChildren();
  open.standing = having(3);
  vi.mocked(ask).mockReset().mockResolvedValue(having(4));
  end = follow('one');
});

afterEach(() => {
  end();
  vi.useRealTimers();
});

it('shows what was recorded elsewhere', async () => {
  expect(await known()).toBe(4);
  expect(vi.mocked(ask).mock.calls[0]).toEqual([{ ask: 'look', visit: 'one' }]);
});

it('asks at once on coming back', async () => {
  window.dispatchEvent(new Event('focus'));
  await vi.advanceTimersByTimeAsync(0);
  expect(open.standing?.ledger.entries).toBe(4);
});

it('leaves alone what is the same', async () => {
  const now = (open.standing = having(4));
  await known();
  expect(open.standing).toBe(now);
});

it('moves nothing under a finger, and goes on once it was lifted and rests', async () => {
  window.dispatchEvent(new Event('pointerdown'));
  expect(await known()).toBe(3);
  expect(ask).not.toHaveBeenCalled();
  window.dispatchEvent(new Event('pointerup'));
  expect(await known()).toBe(4);
});

it('waits while something typed is not sent', async () => {
  const field = type('72.03');
  expect(await known()).toBe(3);
  field.value = '';
  expect(await known()).toBe(4);
});

it('forgets what was typed into a form that is gone', async () => {
  type('72.03').remove();
  expect(await known()).toBe(4);
});

it('is silent where the core is out of reach', async () => {
  vi.mocked(ask).mockRejectedValue(new Error('out of reach'));
  expect(await known()).toBe(3);
  expect(open.problem).toBeNull();
});

it('drops an answer that an entry of this screen overtook', async () => {
  let answer: (standing: ReplyTo<'look'>) => void = () => undefined;
  vi.mocked(ask).mockReturnValueOnce(new Promise((give) => (answer = give)) as never);
  window.dispatchEvent(new Event('focus'));
  await open.take(() => Promise.resolve(void (open.standing = having(4))));
  answer(having(9));
  await vi.advanceTimersByTimeAsync(0);
  expect(open.standing?.ledger.entries).toBe(4);
});

it('asks for nothing once the visit is left', async () => {
  end();
  await known();
  expect(ask).not.toHaveBeenCalled();
});

it('takes what is fewer: an import that was taken back left it', async () => {
  open.standing = having(5);
  expect(await known()).toBe(4);
});
