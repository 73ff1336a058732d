// What the screens share: the answer to `home`, the theme, and the visit that is open. Everything here
// is a copy of what the core last said; nothing is worked out.

import { ask, failureOf, type RequestFor } from './client.ts';
import { dropErased } from './erased.ts';
import { go, type Address } from './router.ts';
import { look as shown, named, setTheme, setThumb, THEMES, THUMBS, type Theme, type Thumb } from './look.svelte.ts';
import { chooseLocale, FALLBACK, locale } from './text.svelte.ts';
import { Turns } from './turns.svelte.ts';
import { takeUnits } from './units.svelte.ts';
import type { Failure } from './types/Failure.ts';
import type { Home } from './types/Home.ts';
import type { Standing } from './types/Standing.ts';

/** What the core said last is shown as a whole or replaced, never changed, so it is not watched inside. */
class Shop {
  home = $state.raw<Home | null>(null);
  problem = $state.raw<Failure | null>(null);
}

class Open extends Turns {
  standing = $state.raw<Standing | null>(null);
  /** The locked step from which the gates were asked for: once they are open the walk goes there. */
  wanted: string | null = null;
}

export const shop = new Shop();

export const open = new Open();

/** Asks for everything the first screen needs. */
export async function loadHome(): Promise<void> {
  shop.problem = null;
  try {
    await takeHome(await toldLanguage(await ask({ ask: 'home' })));
    void dropErased();
  } catch (problem) {
    shop.problem = failureOf(problem);
  }
}

/**
 * What the core words itself is in the language it was told; untold, in English. A first start shows the device's own
 * language, which nobody presses.
 */
async function toldLanguage(home: Home): Promise<Home> {
  const shown = locale();
  if (home.preferences.locale !== undefined || shown === FALLBACK) return home;
  return ask({ ask: 'set-preference', name: 'locale', value: shown }).catch(() => home);
}

/** Writes the technician's name; throws a refusal. */
export async function nameTechnician(name: string): Promise<void> {
  await takeHome(await ask({ ask: 'set-technician', name }));
}

/** Shows a theme at once and remembers it. */
export async function chooseTheme(theme: Theme): Promise<void> {
  setTheme(theme);
  await prefer('theme', theme);
}

/** Lays the foot of the screen out for a thumb at once and remembers it. */
export async function chooseThumb(thumb: Thumb): Promise<void> {
  setThumb(thumb);
  await prefer('thumb', thumb);
}

/** Shows the screens in a language as soon as its texts are here, and remembers it. */
export async function chooseLanguage(tag: string): Promise<void> {
  try {
    await chooseLocale([tag]);
  } catch (problem) {
    shop.problem = failureOf(problem);
    return;
  }
  await prefer('locale', tag);
}

async function prefer(name: string, value: string): Promise<void> {
  try {
    await takeHome(await ask({ ask: 'set-preference', name, value }));
  } catch (problem) {
    shop.problem = failureOf(problem);
  }
}

/** Opens a visit for the screens to draw; keeps what is shown if it is that visit already. */
export async function look(visit: string): Promise<void> {
  if (open.standing?.visit !== visit) open.standing = null;
  await act({ ask: 'look', visit });
}

/**
 * Sends one request about a visit and shows what the core makes of it. True if it was taken; if not,
 * `open.problem` says why. The same again while it is on its way is dropped: gloves tap twice; another waits for its
 * turn.
 */
export function act(request: RequestFor<'visit'>): Promise<boolean> {
  return open.take(async () => {
    open.standing = await ask(request);
  }, JSON.stringify(request));
}

/** The address where a visit's walk goes on. */
export function addressOf(standing: Standing): Address {
  const visit = standing.visit;
  const position = standing.position;
  switch (position.at) {
    case 'order':
      return { screen: 'order', visit };
    case 'gates':
      return { screen: 'gates', visit, set: position.set };
    case 'leave':
      return { screen: 'leave', visit, set: position.set };
    case 'step':
      return { screen: 'step', visit, step: position.step };
    case 'looks':
      return { screen: 'looks', visit };
    case 'done':
      return { screen: 'result', visit };
  }
}

/**
 * The address where a visit is opened. Whoever opens one that is rated, and whose part somebody else entered, or too
 * long ago, is not at the car: what it came to is shown, and not the key that says nobody is under it.
 */
export function openingOf(standing: Standing): Address {
  const { visit, position, gate_sets: sets, urgency } = standing;
  const closed = position.at === 'leave' && Boolean(sets.find((set) => set.id === position.set)?.lock);
  return closed && urgency.word !== null ? { screen: 'result', visit } : addressOf(standing);
}

/** Behind gates that were just confirmed, or out of a part: to the step they were asked for, else on with the walk. */
export function goBehind(standing: Standing, confirmed: string | null): void {
  const { visit } = standing;
  const wanted = standing.steps.find((step) => step.id === open.wanted);
  const lock = wanted?.lock ?? null;
  // Out of one part, into the one that the step is behind.
  if (confirmed === null && lock?.why === 'gates-open') return go({ screen: 'gates', visit, set: lock.set });
  open.wanted = null;
  if (wanted && !lock && (confirmed === null || wanted.set === confirmed))
    go({ screen: 'step', visit, step: wanted.id });
  else goOn(standing);
}

/** Goes on with the walk. */
export function goOn(standing: Standing): void {
  go(addressOf(standing));
}

export async function takeHome(home: Home): Promise<void> {
  const { theme, thumb, locale: language } = home.preferences;
  if (theme !== undefined && theme !== shown.theme) setTheme(named(THEMES, theme));
  if (thumb !== undefined && thumb !== shown.thumb) setThumb(named(THUMBS, thumb));
  // What waits for `home` is drawn in the right language from the start.
  if (language !== undefined && language !== locale()) await chooseLocale([language]).catch(() => undefined);
  shop.home = home;
  takeUnits(home.units);
}
