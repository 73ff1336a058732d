// What has just been said is brought into view, where it stands out of it.

/** For a message, as an attachment. */
export function seen(message: HTMLElement): void {
  message.scrollIntoView({ block: 'nearest' });
}
