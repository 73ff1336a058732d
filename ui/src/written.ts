// Numbers as people write them. What could be two numbers is not guessed: "81,200" may be eighty-one.

/** A whole number, its thousands apart by a space or not at all; null if it is none. */
export function wholeOf(text: string): number | null {
  const plain = text.trim();
  if (/^\d{1,3}([ \u00a0\u202f]\d{3})+$/.test(plain)) return Number(plain.replace(/\D/g, ''));
  return /^\d+$/.test(plain) ? Number(plain) : null;
}

/** A number with a point or comma before its decimals; null if it is none, or could be thousands. */
export function decimalOf(text: string): number | null {
  const plain = text.trim();
  const thousands = /^[1-9]\d{0,2}[.,]\d{3}$/.test(plain);
  return /^\d+([.,]\d+)?$/.test(plain) && !thousands ? Number(plain.replace(',', '.')) : null;
}

/** Whether something is written that the reading made nothing of. */
export function isUnread(text: string, read: (text: string) => number | null): boolean {
  return text.trim() !== '' && read(text) === null;
}
