// Addresses of the screens, kept in the part of the address after `#`. Every `go` is an entry of the
// browser's history, so the phone's Back goes one screen back.

export type Place =
  | { screen: 'home' | 'settings' | 'calibration' | 'workshop' }
  | { screen: 'intake'; visit: string | null }
  | { screen: 'walk'; visit: string }
  | { screen: 'step' | 'gauge' | 'photo'; visit: string; step: string }
  | { screen: 'work-photo'; visit: string; of: string; photo: string }
  | { screen: 'gates'; visit: string; set: string }
  | { screen: 'leave'; visit: string; set: string }
  | { screen: 'order'; visit: string }
  | { screen: 'result' | 'finding' | 'note' | 'ledger' | 'outcome' | 'bench' | 'driver'; visit: string };

const ID = '([A-Za-z0-9-]+)';
const STEP = new RegExp(`^#/visit/${ID}/(step|gauge|photo|gates|leave)/${ID}$`);
const WORK_PHOTO = new RegExp(`^#/visit/${ID}/work-photo/${ID}/${ID}$`);
const VISIT = new RegExp(`^#/visit/${ID}(?:/(intake|order|result|finding|note|ledger|outcome|bench|driver))?$`);

/** Reads an address; one that leads nowhere leads home. */
export function read(hash: string): Place {
  if (hash === '#/calibration') return { screen: 'calibration' };
  if (hash === '#/settings') return { screen: 'settings' };
  if (hash === '#/workshop') return { screen: 'workshop' };
  if (hash === '#/new') return { screen: 'intake', visit: null };
  const [, at, screen, about] = STEP.exec(hash) ?? [];
  if (at && about) {
    if (screen === 'step' || screen === 'gauge' || screen === 'photo') return { screen, visit: at, step: about };
    if (screen === 'gates' || screen === 'leave') return { screen, visit: at, set: about };
  }
  const [, on, of, photo] = WORK_PHOTO.exec(hash) ?? [];
  if (on && of && photo) return { screen: 'work-photo', visit: on, of, photo };
  const [, visit, inside] = VISIT.exec(hash) ?? [];
  if (!visit) return { screen: 'home' };
  return { screen: (inside ?? 'walk') as 'walk' | 'intake' | 'order' | 'result', visit };
}

/** Writes an address; `read` gives the same place back. */
export function write(place: Place): string {
  switch (place.screen) {
    case 'home':
      return '#/';
    case 'calibration':
    case 'settings':
    case 'workshop':
      return `#/${place.screen}`;
    case 'intake':
      return place.visit === null ? '#/new' : `#/visit/${place.visit}/intake`;
    case 'walk':
      return `#/visit/${place.visit}`;
    case 'step':
    case 'gauge':
    case 'photo':
      return `#/visit/${place.visit}/${place.screen}/${place.step}`;
    case 'work-photo':
      return `#/visit/${place.visit}/work-photo/${place.of}/${place.photo}`;
    case 'gates':
    case 'leave':
      return `#/visit/${place.visit}/${place.screen}/${place.set}`;
    default:
      return `#/visit/${place.visit}/${place.screen}`;
  }
}

// Whether a screen was left for another since the app started: Back then leads there.
let moved = false;

/** Goes back to the screen before, or to this one where the app was just started here. */
export function backOr(place: Place): void {
  if (moved) history.back();
  else goInstead(place);
}

/** Goes to a screen and leaves the one before reachable by Back. */
export function go(place: Place): void {
  if (location.hash === write(place)) return;
  moved = true;
  location.hash = write(place);
}

/** Goes to a screen in place of the one shown, so that Back skips it. */
export function goInstead(place: Place): void {
  history.replaceState(history.state, '', write(place));
  globalThis.dispatchEvent(new HashChangeEvent('hashchange'));
}
