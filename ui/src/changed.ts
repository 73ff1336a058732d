// What an entry changed, in words: the field as its own screen calls it, what there was, and what there is now.

import { find, t } from './text.svelte.ts';
import type { HistoryChange } from './types/HistoryChange.ts';

/** What the screens call each field. */
const NAMES: Readonly<Record<string, string>> = {
  plate: 'ui-plate',
  vin: 'ui-vin',
  layout: 'ui-layout',
  seat: 'ui-seat',
  gearbox: 'ui-gearbox',
  'maker-play': 'ui-maker-figure',
  'warm-from': 'intake-warm-from',
  sounds: 'ui-complaint-sounds',
  complaint: 'ui-complaint',
  when: 'ui-when',
  conditions: 'conditions',
  occasion: 'occasion',
  label: 'ui-label',
  odometer: 'ui-odometer',
  cylinders: 'ui-cylinders',
  idle: 'ui-idle-range',
  owner: 'ui-owner-name',
  contact: 'ui-owner-contact',
};

/** Fields that are chosen and not typed: how the text of a choice begins. */
const CHOSEN: Readonly<Record<string, string>> = {
  layout: 'layout',
  seat: 'seat',
  gearbox: 'gearbox',
  sounds: 'sound',
  occasion: 'occasion',
  lift: 'lift',
};

/** One change as a line of the record. */
export function changed({ field, before, now }: HistoryChange): string {
  const name = NAMES[field] ? t(NAMES[field]) : '';
  // Several fields of a screen of their own: that they changed is enough.
  if (field === 'conditions') return name;
  const start = CHOSEN[field];
  const said = (values: string[]): string =>
    values.map((value) => (start ? (find(`${start}-${value}`) ?? value) : value)).join(t('list-joint')) || '–';
  const between = t('ui-ledger-change', { before: said(before), now: said(now) });
  return name === '' ? between : `${name}: ${between}`;
}
