// Coming back after the app was closed or killed: the last screen is remembered, and at a fresh start
// it is shown again with the list of visits beneath it, so that Back leads there.

import { read, write, type Address } from './router.ts';

const STORE = 'steady.place';

/** Remembers the screen that is shown. */
export function remember(place: Address): void {
  try {
    localStorage.setItem(STORE, write(place));
  } catch {
    return;
  }
}

/** At a fresh start, goes back to the remembered screen. */
export function resume(): void {
  if (location.hash !== '' && location.hash !== '#/') return;
  history.replaceState(null, '', '#/');
  const stored = localStorage.getItem(STORE);
  if (stored === null) return;
  const place = read(stored);
  // Leaving a part and choosing the order are moments, not places: where the walk goes on is for the core to say.
  const back: Address =
    place.screen === 'leave' || place.screen === 'order' ? { screen: 'walk', visit: place.visit } : place;
  if (back.screen !== 'home') history.pushState(null, '', write(back));
}
