import { NumericsError, requireArgument } from '../errors.js';

/** Relative and absolute tolerance of each state. */
export interface Tolerances {
  readonly relative: number;
  readonly absolute: Float64Array;
}

/** Checks tolerance options and spreads a single absolute tolerance over all states. */
export function makeTolerances(size: number, relative: number, absolute: number | ArrayLike<number>): Tolerances {
  requireArgument(relative >= 0, 'relativeTolerance must not be negative');
  const list = typeof absolute === 'number' ? new Float64Array(size).fill(absolute) : Float64Array.from(absolute);
  if (list.length !== size) {
    throw new NumericsError('unequal_lengths', `absoluteTolerance has ${list.length} values, the state has ${size}`);
  }
  for (const value of list) {
    requireArgument(value >= 0, 'absoluteTolerance must not be negative');
    requireArgument(value + relative > 0, 'one of the tolerances must be above zero');
  }
  return { relative, absolute: list };
}

/**
 * Root mean square of an error, each state measured by its tolerance (Hairer, Nørsett and Wanner,
 * Solving Ordinary Differential Equations I, 2nd ed. 1993, equation II.4.11). 1 is just acceptable;
 * NaN when a state is not finite.
 */
export function errorNorm(error: Float64Array, y: Float64Array, next: Float64Array, tolerances: Tolerances): number {
  const { relative, absolute } = tolerances;
  let sum = 0;
  for (let i = 0; i < error.length; i += 1) {
    const size = Math.max(Math.abs(y[i]!), Math.abs(next[i]!));
    const scale = absolute[i]! + relative * size;
    // A state at exactly zero without absolute tolerance: no error counts as zero, any error as too large.
    const ratio = error[i] === 0 ? 0 : error[i]! / scale;
    sum += ratio * ratio + 0 * size;
  }
  return Math.sqrt(sum / error.length);
}
