import { beforeEach, expect, it, vi } from 'vitest';
import { onward } from './onward.ts';
import { go } from './router.ts';
import type { Standing } from './types/Standing.ts';

vi.mock('./router.ts', async (actual) => ({ ...(await actual()), go: vi.fn() }));

/** A car of which the owner's report is unanswered, and every part closed. */
function reported(more: Partial<Standing>): Standing {
  const step = (id: string, set: string | null, closed: boolean): unknown => ({
    id,
    set,
    answered: null,
    lock: closed ? { why: 'gates-open', set } : null,
  });
  return {
    visit: 'a-1',
    position: { at: 'step', step: 'road-speed-vibration' },
    steps: [step('road-speed-vibration', null, false), step('idle-speed', 'running', true)],
    gate_sets: [{ id: 'running', lock: null, open: false }],
    ...more,
  } as unknown as Standing;
}

beforeEach(() => void vi.mocked(go).mockClear());

it('asks how to check before it leads to gates, also where the first question was put off', () => {
  onward(reported({ offers_order: true }), ['road-speed-vibration'], () => undefined);
  expect(go).toHaveBeenCalledExactlyOnceWith({ screen: 'order', visit: 'a-1' });
});

it('leads from a question that was put off to the gates once that was chosen', () => {
  onward(reported({ offers_order: false }), ['road-speed-vibration'], () => undefined);
  expect(go).toHaveBeenCalledExactlyOnceWith({ screen: 'gates', visit: 'a-1', set: 'running' });
});
