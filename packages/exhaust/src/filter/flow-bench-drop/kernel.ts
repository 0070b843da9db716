export type BenchVerdict = 'pass' | 'fail' | 'not-decided' | 'no-baseline';

/** Relative standard uncertainties of a drop, of the flow it was measured at, and of the drop of the new part. */
export interface BenchUncertainty {
  readonly drop: number;
  readonly flow: number;
  readonly baseline: number;
}

/** Relative standard uncertainty of a drop over the new part's drop; the drop grows with a power of 1 to 2 of the flow. */
export function benchRatioUncertainty({ drop, flow, baseline }: BenchUncertainty, inertialShare: number): number {
  return Math.hypot(drop, (1 + inertialShare) * flow, baseline);
}

/** Pass or fail only when the whole interval of twice the standard uncertainty is on one side of the limit. */
export function benchVerdict(ratio: number | undefined, uncertainty: number, limit: number): BenchVerdict {
  if (ratio === undefined) return 'no-baseline';
  if (ratio * (1 + 2 * uncertainty) <= limit) return 'pass';
  return ratio * (1 - 2 * uncertainty) > limit ? 'fail' : 'not-decided';
}
