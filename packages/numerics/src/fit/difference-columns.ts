/**
 * Derivatives of the model by each parameter, from a function that gives the residual (measured less
 * model): central differences. `undefined` when the model is not finite on either side.
 *
 * @param smallest - size above zero that a parameter nearer to zero is given for its change
 */
export function differenceColumns(
  residual: (parameters: Float64Array) => Float64Array,
  parameters: Float64Array,
  smallest: Float64Array,
): Float64Array[] | undefined {
  const columns: Float64Array[] = [];
  for (let j = 0; j < parameters.length; j += 1) {
    const value = parameters[j]!;
    const step = Math.cbrt(Number.EPSILON) * Math.max(Math.abs(value), smallest[j]!);
    const at = (x: number): Float64Array => {
      const moved = parameters.slice();
      moved[j] = x;
      return residual(moved);
    };
    const above = value + step;
    const below = value - step;
    const atAbove = at(above);
    const atBelow = at(below);
    const column = atAbove.map((rest, i) => (atBelow[i]! - rest) / (above - below));
    if (!column.every(Number.isFinite)) return undefined;
    columns.push(column);
  }
  return columns;
}
