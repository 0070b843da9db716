export type ZeroVerdict = 'accepted' | 'take-off' | 'repair';

/** A zero error is accepted, taken off the readings up to five times the accepted one, and a fault beyond that. */
export function zeroVerdict(zeroReading: number, allowedZero: number): ZeroVerdict {
  const size = Math.abs(zeroReading);
  if (size <= allowedZero) return 'accepted';
  return size <= 5 * allowedZero ? 'take-off' : 'repair';
}
