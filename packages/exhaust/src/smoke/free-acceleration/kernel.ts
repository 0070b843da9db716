export type FreeAccelerationProcedure = 'mean-of-three' | 'stable-four';

export interface FreeAccelerationResult {
  /** Readings that count, the last of the series. */
  readonly counted: readonly number[];
  readonly mean: number;
  /** Largest minus smallest of the readings that count. */
  readonly band: number;
  /** Whether they fall from reading to reading: the exhaust is still being blown clean. */
  readonly falling: boolean;
}

/** The last readings of a series as a procedure counts them; undefined with too few of them. */
export function freeAcceleration(readings: readonly number[], procedure: FreeAccelerationProcedure): FreeAccelerationResult | undefined {
  const needed = procedure === 'stable-four' ? 4 : 3;
  if (readings.length < needed) return undefined;
  const counted = readings.slice(-needed);
  const mean = counted.reduce((sum, reading) => sum + reading, 0) / needed;
  const band = Math.max(...counted) - Math.min(...counted);
  const falling = counted.every((reading, index) => index === 0 || reading < counted[index - 1]!);
  return { counted, mean, band, falling };
}

export type SmokeVerdict = 'pass' | 'fail' | 'not-stable' | 'no-limit';

export interface SmokeVerdictInput {
  readonly mean: number;
  readonly stable: boolean;
  readonly limit: number | undefined;
}

export function smokeVerdict({ mean, stable, limit }: SmokeVerdictInput): SmokeVerdict {
  if (limit === undefined) return 'no-limit';
  if (!stable) return 'not-stable';
  return mean <= limit ? 'pass' : 'fail';
}
