// How much a step's screen has to give way until all of it that matters is in view at once: what is watched for,
// what is done, and the answers.

import { flushSync } from 'svelte';

/** 0: everything has its room. 1: the drawing is a tile. 2: three answers a row. 3: tight lines. */
export type Fit = 0 | 1 | 2 | 3;

const TIGHTEST = 3;

/**
 * Fills the screen above the foot with `part`, and sets on it the least `data-fit` with which it does not reach below.
 * `asked` is read so that it is worked out anew with it. What is laid out stays so until then, or it would move under
 * the finger; only where something above it closes, such as the list of steps, is it laid out anew.
 */
export function fitting(asked: () => unknown, tell: (fit: Fit) => void): (part: HTMLElement) => () => void {
  return (part) => {
    asked();
    const foot = (): number => Number.parseFloat(document.documentElement.style.getPropertyValue('--foot')) || 0;
    let fit: Fit = 0;
    const reaches = (): number => part.getBoundingClientRect().bottom + scrollY;
    // Measured as it will stand: the drawing is a part of the screen, or a tile, by what was told. Within an effect
    // nothing can be drawn yet; what is observed then lays it out once more.
    function lay(least: Fit, draw: () => unknown = flushSync): void {
      const room = innerHeight - foot();
      part.style.minHeight = '';
      for (fit = least; ; fit = (fit + 1) as Fit) {
        part.dataset.fit = String(fit);
        tell(fit);
        draw();
        if (fit === TIGHTEST || reaches() <= room) break;
      }
      const high = room - part.getBoundingClientRect().top - scrollY;
      part.style.minHeight = `${Math.max(high, 0)}px`;
    }
    // A turned phone: what stands above it and the foot take their new height within the next frames.
    const anew = (): void => {
      lay(0);
      requestAnimationFrame(() => requestAnimationFrame(() => part.isConnected && lay(0)));
    };
    // What comes later, such as an answer's own rating, may take more room, and never gives any back.
    // What closes above it leaves room that it was not laid for.
    const watcher = new ResizeObserver(() => {
      const room = innerHeight - foot();
      const spare = room - part.getBoundingClientRect().top - scrollY - Number.parseFloat(part.style.minHeight || '0');
      if (reaches() > room) lay(fit);
      else if (spare > 1) lay(0);
    });
    lay(0, () => undefined);
    watcher.observe(part);
    watcher.observe(document.body);
    addEventListener('resize', anew);
    return () => {
      watcher.disconnect();
      removeEventListener('resize', anew);
    };
  };
}
