// Where the keyboard and the screen reader are after a change of screen: at its heading, so that Tab goes on
// from there and the heading is read out.

let walked = false;

/** Notes that the reader went from one screen to another; the first screen after a start leaves the focus alone. */
export function noteWalk(): void {
  walked = true;
}

/** Takes the focus to a heading that has just been drawn, unless something on the screen has it already. */
export function takeFocus(heading: HTMLElement): void {
  if (walked && (document.activeElement === null || document.activeElement === document.body)) {
    heading.focus({ preventScroll: true });
  }
}
