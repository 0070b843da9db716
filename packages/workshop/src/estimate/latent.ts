/** Share of the standard normal distribution below z: Abramowitz and Stegun 7.1.26, within 1.5e-7. */
export function normalShare(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = (poly * Math.exp(-x * x)) / 2;
  return z > 0 ? 1 - tail : tail;
}

/** From a standard normal number to the distributions of the priors. */
export const lognormal = (z: number, median: number, spread: number): number => median * Math.exp(z * Math.log(spread));
export const uniform = (z: number, from: number, to: number): number => from + (to - from) * normalShare(z);
/** A share between 0 and 1 with this median; `spread` is the standard deviation of its log odds. */
export const share = (z: number, median: number, spread: number): number => 1 / (1 + ((1 - median) / median) * Math.exp(-z * spread));
