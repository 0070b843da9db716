/** A model: outputs from inputs. Outputs that cannot be computed are NaN. */
export type Model = (inputs: number[]) => number[];

/** Step of the differences in units of the input's standard uncertainty. */
const STEP_IN_UNCERTAINTIES = 0.1;

/**
 * Derivatives of every output by one input: central differences at two steps, extrapolated
 * (Richardson), so that the error falls with the fourth power of the step. The step is a tenth of
 * the input's standard uncertainty: large enough for models that iterate, small enough for a
 * first-order budget. Where the model ends (a fraction at 1, say) on one side only, the difference
 * is taken on the other.
 */
export function sensitivities(model: Model, inputs: readonly number[], index: number, uncertainty: number): number[] {
  const value = inputs[index]!;
  const step = uncertainty > 0 ? STEP_IN_UNCERTAINTIES * uncertainty : 1e-4 * Math.abs(value) || 1e-4;
  const at = (x: number): number[] => {
    const moved = [...inputs];
    moved[index] = x;
    return model(moved);
  };
  const points = [-step, -step / 2, 0, step / 2, step].map((change) => value + change);
  const [farBelow, below, centre, above, farAbove] = points.map(at) as [number[], number[], number[], number[], number[]];
  return centre.map((middle, k) => {
    const wide = (farAbove[k]! - farBelow[k]!) / (points[4]! - points[0]!);
    const narrow = (above[k]! - below[k]!) / (points[3]! - points[1]!);
    const central = (4 * narrow - wide) / 3;
    if (Number.isFinite(central)) return central;
    // Three points on one side: slope at the first of them, with an error of second order.
    const upwards = (-3 * middle + 4 * above[k]! - farAbove[k]!) / (points[4]! - points[2]!);
    const downwards = (3 * middle - 4 * below[k]! + farBelow[k]!) / (points[2]! - points[0]!);
    return Number.isFinite(upwards) ? upwards : downwards;
  });
}
