/** ln of the sum of exponentials, without overflow; -Infinity when no term is finite. */
export function logSumExp(logs: ArrayLike<number>): number {
  let largest = -Infinity;
  for (let i = 0; i < logs.length; i += 1) if (logs[i]! > largest) largest = logs[i]!;
  if (!Number.isFinite(largest)) return largest;
  let sum = 0;
  for (let i = 0; i < logs.length; i += 1) sum += Math.exp(logs[i]! - largest);
  return largest + Math.log(sum);
}

/** Weights that sum to 1 from their logarithms; all zero when none is finite. */
export function weightsFromLogs(logs: ArrayLike<number>): Float64Array {
  const total = logSumExp(logs);
  return Float64Array.from(logs, (log) => (Number.isFinite(total) ? Math.exp(log - total) : 0));
}

/**
 * How many equally weighted draws would tell as much: 1 over the sum of the squared weights (A. Kong, J. S. Liu and W. H.
 * Wong, J. Am. Stat. Assoc. 89 (1994) 278–288). Weights must sum to 1; 0 when all are zero.
 */
export function effectiveSampleSize(weights: ArrayLike<number>): number {
  let squares = 0;
  for (let i = 0; i < weights.length; i += 1) squares += weights[i]! ** 2;
  return squares > 0 ? 1 / squares : 0;
}

/**
 * The values below which the given shares of the weight lie, each at the middle of its draw's weight and straight between
 * draws. Empty for no weight.
 *
 * @param shares - from 0 to 1
 */
export function weightedQuantiles(values: ArrayLike<number>, weights: ArrayLike<number>, shares: readonly number[]): number[] {
  const order = Array.from({ length: values.length }, (_, index) => index)
    .filter((index) => weights[index]! > 0)
    .sort((a, b) => values[a]! - values[b]!);
  if (order.length === 0) return [];
  const total = order.reduce((sum, index) => sum + weights[index]!, 0);
  return shares.map((share) => {
    const wanted = share * total;
    let below = 0;
    let [lastMiddle, lastValue] = [Number.NEGATIVE_INFINITY, values[order[0]!]!];
    for (const index of order) {
      const middle = below + weights[index]! / 2;
      const value = values[index]!;
      if (middle >= wanted) {
        if (!Number.isFinite(lastMiddle)) return value;
        return lastValue + ((value - lastValue) * (wanted - lastMiddle)) / (middle - lastMiddle);
      }
      below += weights[index]!;
      [lastMiddle, lastValue] = [middle, value];
    }
    return lastValue;
  });
}
