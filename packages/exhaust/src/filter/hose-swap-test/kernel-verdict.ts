export type HoseSwapVerdict = 'plausible' | 'zero-error' | 'reversed' | 'one-sided' | 'no-signal';

/** What the two readings of a hose swap mean, all in Pa. */
export function hoseSwapVerdict(normalReading: number, swappedReading: number, allowedZero: number): HoseSwapVerdict {
  const smaller = Math.min(Math.abs(normalReading), Math.abs(swappedReading));
  const larger = Math.max(Math.abs(normalReading), Math.abs(swappedReading));
  if (larger <= 2 * allowedZero) return 'no-signal';
  // Many sensors cannot read below zero: then the second reading says nothing.
  if (smaller <= allowedZero && larger > 4 * allowedZero) return 'one-sided';
  if (normalReading < swappedReading) return 'reversed';
  return Math.abs(normalReading + swappedReading) / 2 > allowedZero ? 'zero-error' : 'plausible';
}
