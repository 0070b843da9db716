/**
 * How much seeing the outcome of a test is expected to tell of a cause, bits: the mutual information of both (C. E. Shannon, Bell Syst.
 * Tech. J. 27 (1948) 379–423).
 *
 * @param prior - chance of each cause before the test; sums to 1
 * @param joint - for each outcome the chance of it together with each cause, in the order of `prior`
 */
export function mutualInformation(prior: readonly number[], joint: ReadonlyArray<readonly number[]>): number {
  let bits = 0;
  for (const row of joint) {
    const chance = row.reduce((sum, value) => sum + value, 0);
    if (!(chance > 0)) continue;
    row.forEach((value, index) => {
      if (value > 0) bits += value * Math.log2(value / (chance * prior[index]!));
    });
  }
  return Math.max(0, bits);
}
