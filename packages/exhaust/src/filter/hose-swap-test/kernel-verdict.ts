import { withinLimit, zeroVerdict } from '../sensor-zero-check/kernel.js';
import { separateZero } from './kernel.js';

export type HoseSwapVerdict = 'plausible' | 'zero-error' | 'repair' | 'reversed' | 'one-sided' | 'unchanged' | 'no-signal';

/** What the two readings of a hose swap mean, all in Pa; the zero error is judged as by the zero check. */
export function hoseSwapVerdict(normalReading: number, swappedReading: number, allowedZero: number): HoseSwapVerdict {
  const smaller = Math.min(Math.abs(normalReading), Math.abs(swappedReading));
  const larger = Math.max(Math.abs(normalReading), Math.abs(swappedReading));
  if (withinLimit(larger, 2 * allowedZero)) return 'no-signal';
  const { pressureDrop, zeroError } = separateZero(normalReading, swappedReading);
  // A drop turns its sign with the hoses. What stays is the sensor, or hoses that were never swapped.
  if (withinLimit(Math.abs(pressureDrop), allowedZero)) return 'unchanged';
  // Many sensors cannot read below zero: then the second reading says nothing.
  if (withinLimit(smaller, allowedZero) && !withinLimit(larger, 4 * allowedZero)) return 'one-sided';
  const zero = zeroVerdict(zeroError, allowedZero);
  if (zero === 'repair') return 'repair';
  if (normalReading < swappedReading) return 'reversed';
  return zero === 'accepted' ? 'plausible' : 'zero-error';
}
