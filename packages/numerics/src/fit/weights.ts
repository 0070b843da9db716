import { requireArgument, requireEqualLengths } from '../errors.js';

/** How much each point counts. Without either, all count the same. */
export interface FitWeights {
  /** Relative weights; how uncertain the points are is estimated from the residuals. */
  readonly weights?: ArrayLike<number>;
  /** Known standard uncertainties of the points; the covariance then follows from them alone. */
  readonly standardUncertainties?: ArrayLike<number>;
}

/** Square roots of the weights, with the largest weight at 1 unless uncertainties are known. */
export function rootWeights(options: FitWeights, count: number): Float64Array | undefined {
  const { weights, standardUncertainties } = options;
  requireArgument(!weights || !standardUncertainties, 'give weights or standardUncertainties, not both');
  const given = weights ?? standardUncertainties;
  if (given) requireEqualLengths('the points', { length: count }, 'their weights or uncertainties', given);
  const roots = new Float64Array(count).fill(1);
  for (let i = 0; given && i < count; i += 1) {
    roots[i] = weights ? Math.sqrt(weights[i]!) : 1 / standardUncertainties![i]!;
  }
  return roots.every((root) => root > 0 && root < Infinity) ? roots : undefined;
}
