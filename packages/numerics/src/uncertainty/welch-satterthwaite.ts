import { requireEqualLengths } from '../errors.js';

/**
 * Effective degrees of freedom of a combined standard uncertainty (JCGM 100:2008, G.4.1, equation
 * G.2b), for inputs that are not correlated. Infinite when every contribution with finite degrees of
 * freedom is zero; `undefined` when a contribution is not finite or its degrees of freedom are not
 * above zero.
 *
 * @param contributions - uncertainty of the result due to each input; the sign does not matter
 * @param degreesOfFreedom - of each input's standard uncertainty; may be infinite
 * @throws NumericsError `unequal_lengths`
 */
export function welchSatterthwaite(contributions: ArrayLike<number>, degreesOfFreedom: ArrayLike<number>): number | undefined {
  requireEqualLengths('contributions', contributions, 'degreesOfFreedom', degreesOfFreedom);
  let largest = 0;
  for (let i = 0; i < contributions.length; i += 1) {
    if (!Number.isFinite(contributions[i]) || !(degreesOfFreedom[i]! > 0)) return undefined;
    largest = Math.max(largest, Math.abs(contributions[i]!));
  }
  // Relative to the largest contribution, fourth powers stay in range.
  let variance = 0;
  let sum = 0;
  for (let i = 0; i < contributions.length && largest > 0; i += 1) {
    const square = (contributions[i]! / largest) ** 2;
    variance += square;
    sum += (square * square) / degreesOfFreedom[i]!;
  }
  return sum === 0 ? Infinity : (variance * variance) / sum;
}
