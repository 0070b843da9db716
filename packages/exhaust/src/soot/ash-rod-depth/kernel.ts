/** Mean, sample standard deviation and standard uncertainty of the mean. */
export function depthStatistics(depths: readonly number[]): { mean: number; deviation: number; uncertainty: number } {
  const mean = depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
  if (depths.length < 2) return { mean, deviation: 0, uncertainty: 0 };
  const squares = depths.reduce((sum, depth) => sum + (depth - mean) ** 2, 0);
  const deviation = Math.sqrt(squares / (depths.length - 1));
  return { mean, deviation, uncertainty: deviation / Math.sqrt(depths.length) };
}
