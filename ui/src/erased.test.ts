import { beforeEach, expect, test, vi } from 'vitest';
import { draftedVisits, saveDraft } from './drafts.ts';
import { dropErased } from './erased.ts';

const GONE = '0191d2f0-0000-7000-8000-000000000001';
const THERE = '0191d2f0-0000-7000-8000-000000000002';

beforeEach(() => {
  localStorage.clear();
});

test('what is kept of a visit that was erased elsewhere is dropped, and nothing else', async () => {
  const asked = vi.fn(async (_: string, sent: RequestInit) => {
    const gone = String(sent.body).includes(GONE);
    const body = gone ? { code: 'unknown-visit', message: '', help: '' } : { is: 'visit' };
    return new Response(JSON.stringify(body), { status: gone ? 422 : 200 });
  });
  vi.stubGlobal('fetch', asked);
  for (const visit of [GONE, THERE]) {
    saveDraft(`sign.${visit}`, { name: 'Somebody' });
    saveDraft(`reason.${visit}.play-vertical`, 'the owner said so');
  }
  saveDraft('intake', { plate: 'TR 4417' });
  expect(draftedVisits().sort()).toEqual([GONE, THERE]);
  await dropErased();
  expect(draftedVisits()).toEqual([THERE]);
  expect(localStorage.length).toBe(3);
  vi.unstubAllGlobals();
});
