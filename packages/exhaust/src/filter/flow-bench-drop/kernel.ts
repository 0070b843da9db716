import { dropAtState, type FlowStateOfDrop } from '../drop-at-reference-state/kernel.js';

export type BenchVerdict = 'pass' | 'fail' | 'too-open' | 'not-decided' | 'no-baseline';

/** Relative standard uncertainties of a drop, of the flow it was measured at, and of the drop of the new part. */
export interface BenchUncertainty {
  readonly drop: number;
  readonly flow: number;
  readonly baseline: number;
}

export interface ConvertedDrop {
  /** Pa. */
  readonly drop: number;
  /** Part of it that grows with ρQ². */
  readonly inertialShare: number;
}

/** A measured drop at another state, with the inertial part that it has there. */
export function benchDropAt(drop: number, measured: FlowStateOfDrop, wanted: FlowStateOfDrop, inertialShare: number): ConvertedDrop {
  const converted = dropAtState(drop, measured, wanted, inertialShare);
  const inertial = inertialShare * dropAtState(drop, measured, wanted, 1);
  return { drop: converted, inertialShare: inertial / converted };
}

/**
 * Relative standard uncertainty of a converted drop over the new part's drop. An error of the flow counts with the power
 * of the flow, 1 for the viscous and 2 for the inertial part, in the shares of the state that is converted to.
 */
export function benchRatioUncertainty({ drop, flow, baseline }: BenchUncertainty, inertialShare: number): number {
  return Math.hypot(drop, (1 + inertialShare) * flow, baseline);
}

export interface BenchLimits {
  /** Share of the new value below which a reading is not believed, and the one up to which it is accepted. */
  readonly lowest: number;
  readonly highest: number;
}

/**
 * Against the upper limit, pass or fail only when the whole interval of twice the standard uncertainty is on one side. Against
 * the lower one, too open only when the whole interval is below; a reading below it by itself is not decided.
 */
export function benchVerdict(ratio: number | undefined, uncertainty: number, { lowest, highest }: BenchLimits): BenchVerdict {
  if (ratio === undefined) return 'no-baseline';
  if (ratio * (1 + 2 * uncertainty) < lowest) return 'too-open';
  if (ratio * (1 - 2 * uncertainty) > highest) return 'fail';
  return ratio >= lowest && ratio * (1 + 2 * uncertainty) <= highest ? 'pass' : 'not-decided';
}
