// The visit that is open, looked at anew: another tab or a device beside may have written to it.
//
// It is asked for, not told: the core's whole face is a request and its answer, and neither the app's one command nor
// the desk's one door holds a line open to a screen. A look every few seconds at the visit at hand, which is derived
// already, is one small request; a second face for news alone would be more to get wrong.

import { onMount } from 'svelte';
import { ask } from './client.ts';
import { open } from './state.svelte.ts';

/** How often, in milliseconds, while the screen is seen. */
const EVERY = 5000;
/** Since the last touch or key, in milliseconds: nothing moves under a finger that is about to come down again. */
const REST = 1500;

const held = new Set<() => boolean>();
const typedInto = new Set<HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement>();
let down = false;
let last = -REST;
let asking = false;

/** Nothing is looked at anew while this says so: something is drawn or typed that is not sent. For a part, set up. */
export function holdWhile(unsent: () => boolean): void {
  onMount(() => {
    held.add(unsent);
    return () => held.delete(unsent);
  });
}

/** Follows a visit until the returned is called: on coming back to it, and every few seconds while it is seen. */
export function follow(visit: string): () => void {
  const look = (): void => void lookAnew(visit);
  const every = setInterval(look, EVERY);
  const ends = [
    listen(window, ['focus'], look),
    listen(document, ['visibilitychange'], look),
    listen(window, ['pointerdown'], () => (down = true)),
    listen(window, ['pointerup', 'pointercancel', 'keydown', 'wheel', 'scroll'], touched),
    listen(document, ['input'], typed),
  ];
  return () => {
    clearInterval(every);
    for (const end of ends) end();
    typedInto.clear();
    [down, last] = [false, -REST];
  };
}

async function lookAnew(visit: string): Promise<void> {
  if (asking || !isFree()) return;
  asking = true;
  await open.outOfTurn(async () => {
    const standing = await ask({ ask: 'look', visit });
    return () => {
      // Not by its entries alone: a safety check grows old without one, and an import that is taken back leaves fewer.
      const now = open.standing;
      const other = now?.visit === visit && JSON.stringify(standing) !== JSON.stringify(now);
      if (other && isFree()) open.standing = standing;
    };
  });
  asking = false;
}

function isFree(): boolean {
  if (document.visibilityState !== 'visible' || down || performance.now() - last < REST) return false;
  for (const unsent of held) if (unsent()) return false;
  for (const field of typedInto) {
    if (!field.isConnected) typedInto.delete(field);
    else if (!(field instanceof HTMLSelectElement) && field.value !== '') return false;
  }
  return true;
}

function touched(): void {
  down = false;
  last = performance.now();
}

function typed({ target }: Event): void {
  if (
    target instanceof HTMLInputElement ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement
  )
    typedInto.add(target);
}

function listen(on: EventTarget, names: string[], act: (event: Event) => void): () => void {
  for (const name of names) on.addEventListener(name, act, { capture: true, passive: true });
  return () => {
    for (const name of names) on.removeEventListener(name, act, { capture: true });
  };
}
