import { expect, it } from 'vitest';
import { changed } from './changed.ts';

it('names what was corrected at intake, with what there was before', () => {
  expect(changed({ field: 'plate', before: ['KL55 WRG'], now: ['KL55 WRO'] })).toBe('Plate: KL55 WRG, now KL55 WRO');
  expect(changed({ field: 'vin', before: [], now: ['1M8GDM9AXKP042788'] })).toBe('VIN: –, now 1M8GDM9AXKP042788');
});

it('says choices as the screens say them, and what holds the car up without a name of its own', () => {
  const [before, now] = [['bare'], ['sleeved']];
  expect(changed({ field: 'seat', before, now })).toContain('Bare aluminium seat, now Steel-sleeved seat');
  expect(changed({ field: 'lift', before: ['two-post'], now: ['pit'] })).toBe('Two-post lift, now Pit');
});
