// What has just been said is brought into view, where it stands out of it.

/** For a message, as an attachment: at once, and again where what came with it has moved it. */
export function seen(message: HTMLElement): () => void {
  const show = (): void => message.scrollIntoView({ block: 'nearest' });
  show();
  const drawn = requestAnimationFrame(show);
  return () => cancelAnimationFrame(drawn);
}
