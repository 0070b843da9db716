/** Flow through the same orifice at another pressure difference: proportional to its square root (Bernoulli). */
export function scaleOrificeFlow(flow: number, pressure: number, otherPressure: number): number {
  return flow * Math.sqrt(otherPressure / pressure);
}

/** Shares of open area and of pressure difference that would be missing, each alone, where a flow is low by this ratio. */
export function orificeLoss(flowRatio: number): { readonly area: number; readonly pressure: number } {
  return { area: 1 - flowRatio, pressure: 1 - flowRatio ** 2 };
}

export type DosingQuantityVerdict = 'pass' | 'low' | 'high' | 'low-once' | 'high-once' | 'undecided' | 'not-repeatable' | 'too-few-runs';

export interface DosingQuantityInput {
  /** Number of runs that count. */
  readonly count: number;
  /** Deviation of the mean from what was expected, as a fraction of it. */
  readonly deviation: number;
  /** Half-width of the interval that holds the true mean, as a fraction of what was expected. */
  readonly uncertainty: number;
  readonly tolerance: number;
  /** Standard deviation over mean. */
  readonly spread: number;
  readonly greatestSpread: number;
}

/**
 * A verdict on the quantity; low, high or pass only where the whole interval lies on one side of the limit. A single run does not
 * show its spread: it is low or high only beyond the greatest spread that would be accepted, and has to be repeated.
 */
export function dosingQuantityVerdict(input: DosingQuantityInput): DosingQuantityVerdict {
  const { count, deviation, uncertainty, tolerance, spread, greatestSpread } = input;
  if (count < 2) {
    const beyond = Math.abs(deviation) - uncertainty - greatestSpread > tolerance;
    return beyond ? (deviation < 0 ? 'low-once' : 'high-once') : 'too-few-runs';
  }
  if (spread > greatestSpread) return 'not-repeatable';
  if (deviation + uncertainty < -tolerance) return 'low';
  if (deviation - uncertainty > tolerance) return 'high';
  return Math.abs(deviation) + uncertainty <= tolerance ? 'pass' : 'undecided';
}
