// Where the keyboard and the screen reader are after a change of screen: at its heading, so that Tab goes on
// from there and the heading is read out. The one place that knows; App calls it.

let stop = (): void => undefined;

/** Takes the focus to the heading of the screen that was just gone to, as soon as it is drawn. */
export function focusHeading(): void {
  stop();
  if (took()) return;
  const before = document.activeElement;
  // A screen may still be fetched, or wait for the core. Whoever moves on meanwhile is not called back.
  const watcher = new MutationObserver(() => {
    const moved = document.activeElement !== before && document.activeElement !== document.body;
    if (moved || took()) stop();
  });
  stop = () => watcher.disconnect();
  watcher.observe(document.body, { childList: true, subtree: true });
}

function took(): boolean {
  const heading = document.querySelector<HTMLElement>('h1');
  if (heading === null) return false;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
  return true;
}
