// Addresses of the screens, kept in the part of the address after `#`. Every `go` is an entry of the
// browser's history, so the phone's Back goes one screen back.

import type { WorkPlace } from './types/WorkPlace.ts';

/** Every screen and its address; `:visit` and the like are parts of the address. Nothing else lists them. */
const ADDRESSES = {
  home: '',
  calibration: 'calibration',
  settings: 'settings',
  devices: 'devices',
  workshop: 'workshop',
  new: 'new',
  walk: 'visit/:visit',
  intake: 'visit/:visit/intake',
  order: 'visit/:visit/order',
  gates: 'visit/:visit/gates/:set',
  leave: 'visit/:visit/leave/:set',
  step: 'visit/:visit/step/:step',
  looks: 'visit/:visit/looks',
  gauge: 'visit/:visit/gauge/:step',
  photo: 'visit/:visit/photo/:step',
  driver: 'visit/:visit/driver/:step',
  before: 'visit/:visit/before',
  result: 'visit/:visit/result',
  finding: 'visit/:visit/finding',
  note: 'visit/:visit/note',
  ledger: 'visit/:visit/ledger',
  bench: 'visit/:visit/bench',
  'work-photo': 'visit/:visit/work-photo/:of/:photo',
  outcome: 'visit/:visit/outcome',
} as const;

/** What each part of an address reads as. */
const ID = '[A-Za-z0-9-]+';
/** A step at a further support of the shaft ends in its number. */
const STEP = `${ID}(?::\\d)?`;
const READS = { visit: ID, set: ID, step: STEP, photo: ID, of: 'bench-(?:found|finished|ring|pass-\\d+)' };

interface Parts {
  visit: string;
  set: string;
  step: string;
  photo: string;
  of: WorkPlace;
}

type Addresses = typeof ADDRESSES;
type Screen = keyof Addresses;
type Named<Written> = Written extends `${infer Word}/${infer Rest}`
  ? Named<Word> | Named<Rest>
  : Written extends `:${infer Part extends keyof Parts}`
    ? Part
    : never;

/** Where a person is: a screen, and what it is about. */
export type Address = { [S in Screen]: { screen: S } & Pick<Parts, Named<Addresses[S]>> }[Screen];

/** An address inside a visit. */
export type Inside = Extract<Address, { visit: string }>;

const PART = /:([a-z]+)/g;
const PATTERNS = (Object.entries(ADDRESSES) as [Screen, string][]).map(([screen, address]) => {
  const pattern = address.replace(PART, (_, part: keyof Parts) => `(?<${part}>${READS[part]})`);
  return { screen, pattern: new RegExp(`^#/${pattern}$`) };
});

/** Reads an address; one that leads nowhere leads home. */
export function read(hash: string): Address {
  for (const { screen, pattern } of PATTERNS) {
    const found = pattern.exec(hash);
    if (found) return { screen, ...found.groups } as Address;
  }
  return { screen: 'home' };
}

/** Writes an address; `read` gives the same back. */
export function write(address: Address): string {
  const parts = address as Partial<Parts>;
  return `#/${ADDRESSES[address.screen].replace(PART, (_, part: keyof Parts) => parts[part] ?? '')}`;
}

// Whether a screen was left for another since the app started: Back then leads there.
let moved = false;

/** Goes back to the screen before, or to this one where the app was just started here. */
export function backOr(address: Address): void {
  if (moved) history.back();
  else goInstead(address);
}

/** Goes to a screen and leaves the one before reachable by Back. */
export function go(address: Address): void {
  if (location.hash === write(address)) return;
  moved = true;
  location.hash = write(address);
}

/** Goes to a screen in place of the one shown, so that Back skips it. */
export function goInstead(address: Address): void {
  history.replaceState(history.state, '', write(address));
  globalThis.dispatchEvent(new HashChangeEvent('hashchange'));
}
