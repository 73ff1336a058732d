// How a weight of evidence is put in words: decibans into "N times as likely".

/** The odds factor of a weight, 1 or more, whatever its direction, rounded as a person would say it. */
export function times(decibans: number): number {
  const factor = 10 ** (Math.abs(decibans) / 10);
  if (factor < 3) return Math.round(factor * 10) / 10;
  if (factor < 20) return Math.round(factor);
  const magnitude = 10 ** (Math.floor(Math.log10(factor)) - 1);
  return Math.min(1000, Math.round(factor / magnitude) * magnitude);
}
