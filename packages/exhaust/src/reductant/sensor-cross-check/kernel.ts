export type SensorVerdict = 'agree' | 'after-low' | 'after-high' | 'storage-possible' | 'undecided' | 'too-little' | 'not-comparable';

export interface SensorVerdictInput {
  /** Mean of after minus before and half the width of its 95 % interval, as mole fractions. */
  readonly difference: number;
  readonly uncertainty: number;
  readonly allowed: number;
  /** Mean of both. */
  readonly mean: number;
  readonly dosing: boolean;
  /** Whether the catalyst is known to hold no ammonia. */
  readonly emptied: boolean;
}

/** Whether two sensors in the same gas agree; a catalyst that still holds ammonia lowers the second without a fault. */
export function sensorVerdict({ difference, uncertainty, allowed, mean, dosing, emptied }: SensorVerdictInput): SensorVerdict {
  if (dosing) return 'not-comparable';
  // Two dead sensors agree as well.
  if (mean <= allowed) return 'too-little';
  if (Math.abs(difference) + uncertainty <= allowed) return 'agree';
  if (Math.abs(difference) - uncertainty <= allowed) return 'undecided';
  if (difference > 0) return 'after-high';
  return emptied ? 'after-low' : 'storage-possible';
}

/**
 * Difference that two sensors may show: each within the larger of an absolute and a relative figure, the two
 * together by the root of the sum of squares.
 */
export function allowedSensorDifference(mean: number, absolute: number, relative: number): number {
  return Math.SQRT2 * Math.max(absolute, relative * mean);
}
