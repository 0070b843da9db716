export interface StepResponse {
  /** Mean of the readings before the step, Pa. */
  readonly levelBefore: number;
  /** Mean of the last quarter of the readings after it, Pa. */
  readonly levelAfter: number;
  /** From the last reading before the step until 63.2 % of the change, in intervals: the time constant of a first-order lag. */
  readonly responseIntervals: number;
  /** Readings after the step that had not yet come so far. */
  readonly crossed: number;
  /** Whether the record ends with a steady level. If not, the level and with it the time are too small. */
  readonly settled: boolean;
}

/** The part of a step that a first-order lag has followed after one time constant. */
const oneTimeConstant = 1 - Math.exp(-1);

/**
 * Change between the third and the last quarter of a record, over the whole change, up to which it counts as steady. A
 * first-order lag comes down to it after 4.2 time constants.
 */
const steadyShare = 0.05;

/** Number of readings in a quarter of a record. */
export function quarterOf(readings: readonly number[]): number {
  return Math.max(1, Math.floor(readings.length / 4));
}

/** Mean of the third quarter of a record. */
export function levelOfThirdQuarter(readings: readonly number[]): number {
  const quarter = quarterOf(readings);
  return mean(readings.slice(-2 * quarter, -quarter));
}

function mean(readings: readonly number[]): number {
  return readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
}

/**
 * Response of a sensor and its hoses to a sudden change of flow, from evenly spaced readings in Pa. The step falls on the
 * last reading before it. Undefined when the level changes by less than a millionth.
 */
export function stepResponse(before: readonly number[], after: readonly number[]): StepResponse | undefined {
  const levelBefore = mean(before);
  const levelAfter = mean(after.slice(-quarterOf(after)));
  const change = levelAfter - levelBefore;
  if (Math.abs(change) <= 1e-6 * Math.max(Math.abs(levelAfter), Math.abs(levelBefore))) return undefined;
  const settled = Math.abs(levelAfter - levelOfThirdQuarter(after)) <= steadyShare * Math.abs(change);
  let last = 0;
  for (const [index, reading] of after.entries()) {
    const part = (reading - levelBefore) / change;
    if (part >= oneTimeConstant) {
      return { levelBefore, levelAfter, settled, crossed: index, responseIntervals: index + (oneTimeConstant - last) / (part - last) };
    }
    last = part;
  }
  return undefined;
}

export type LagVerdict = 'accepted' | 'slow' | 'unknown';

/** Length of the record after the step, in accepted response times, below which nothing is accepted: a lag at the limit has followed 95 %. */
export const neededLimits = 3;

/**
 * Verdict on a response from the accepted time and the interval, both in s. A record that is short or not steady at its end
 * makes the time too small: it can show that the signal is slow, but not that it is quick enough.
 */
export function lagVerdict({ responseIntervals, settled }: StepResponse, readings: number, interval: number, allowed: number): LagVerdict {
  // Within the first interval nothing is known but that the response came in it.
  if (responseIntervals < 1 && interval > allowed) return 'unknown';
  if (responseIntervals * interval > allowed) return 'slow';
  return settled && readings * interval >= neededLimits * allowed ? 'accepted' : 'unknown';
}
