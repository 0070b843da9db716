/** One estimate of the same quantity with its standard uncertainty, both in the same unit. */
export interface Estimate {
  readonly value: number;
  readonly uncertainty: number;
}

/** Mean of independent estimates weighted by 1/u², its uncertainty, and the sum of squared deviations over u². */
export function weightedMean(estimates: readonly Estimate[]) {
  const weight = estimates.reduce((sum, { uncertainty }) => sum + uncertainty ** -2, 0);
  const mean = estimates.reduce((sum, { value, uncertainty }) => sum + value * uncertainty ** -2, 0) / weight;
  const chiSquared = estimates.reduce((sum, { value, uncertainty }) => sum + ((value - mean) / uncertainty) ** 2, 0);
  return { mean, uncertainty: weight ** -0.5, chiSquared };
}

/** How far an estimate lies from the weighted mean of the others, in units of the uncertainty of that difference. */
export function deviationFromOthers(estimates: readonly Estimate[], index: number): number {
  const own = estimates[index]!;
  const others = weightedMean(estimates.filter((_, other) => other !== index));
  return (own.value - others.mean) / Math.hypot(own.uncertainty, others.uncertainty);
}
