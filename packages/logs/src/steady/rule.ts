/** What counts as steady. */
export interface SteadyRule {
  /** How far engine speed may stray from the mean of the stretch, as a share of it and in 1/s at least. */
  readonly speedShare: number;
  readonly speedFloor: number;
  /** Time left out at the start of a stretch, and least time kept, in s. */
  readonly settling: number;
  readonly shortest: number;
  /** Longest time without a sample, in s. */
  readonly gap: number;
  /** Least number of samples of a channel that make a mean. */
  readonly samples: number;
}

/** Common practice, no source: 5 % or 50 rpm, 10 s to settle, then 20 s at least, no gap over 10 s, 5 samples. */
export const usualRule: SteadyRule = { speedShare: 0.05, speedFloor: 50 / 60, settling: 10, shortest: 20, gap: 10, samples: 5 };
