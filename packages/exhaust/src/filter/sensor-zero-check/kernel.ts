export type ZeroVerdict = 'accepted' | 'take-off' | 'repair';

/** Rounding of a change of units: a reading at the limit is the same reading in every unit. */
const rounding = 1e-9;

/** Whether a size is within a limit, one exactly at it included, however its unit was converted. */
export function withinLimit(size: number, limit: number): boolean {
  return size <= limit * (1 + rounding);
}

/** A zero error is accepted, taken off the readings up to five times the accepted one, and a fault beyond that. */
export function zeroVerdict(zeroReading: number, allowedZero: number): ZeroVerdict {
  const size = Math.abs(zeroReading);
  if (withinLimit(size, allowedZero)) return 'accepted';
  return withinLimit(size, 5 * allowedZero) ? 'take-off' : 'repair';
}
