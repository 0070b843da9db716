export interface StepResponse {
  /** Mean of the readings before the step, Pa. */
  readonly levelBefore: number;
  /** Mean of the last quarter of the readings after it, Pa. */
  readonly levelAfter: number;
  /** From the last reading before the step until 63.2 % of the change, in intervals: the time constant of a first-order lag. */
  readonly responseIntervals: number;
}

/** The part of a step that a first-order lag has followed after one time constant. */
const oneTimeConstant = 1 - Math.exp(-1);

function mean(readings: readonly number[]): number {
  return readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
}

/**
 * Response of a sensor and its hoses to a sudden change of flow, from evenly spaced readings in Pa. The step falls on the
 * last reading before it. Undefined when the level changes by less than a millionth.
 */
export function stepResponse(before: readonly number[], after: readonly number[]): StepResponse | undefined {
  const levelBefore = mean(before);
  const levelAfter = mean(after.slice(-Math.max(1, Math.floor(after.length / 4))));
  const change = levelAfter - levelBefore;
  if (Math.abs(change) <= 1e-6 * Math.max(Math.abs(levelAfter), Math.abs(levelBefore))) return undefined;
  let last = 0;
  for (const [index, reading] of after.entries()) {
    const part = (reading - levelBefore) / change;
    if (part >= oneTimeConstant) return { levelBefore, levelAfter, responseIntervals: index + (oneTimeConstant - last) / (part - last) };
    last = part;
  }
  return undefined;
}
