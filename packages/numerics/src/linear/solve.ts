import { requireEqualLengths } from '../errors.js';
import type { LinearSolveResult, SystemMatrix } from './system-matrix.js';

/**
 * Solves `matrix x = rightHandSide`. The matrix is factorised in place and cannot be read afterwards.
 *
 * @throws NumericsError `unequal_lengths` when the right-hand side has another length than the matrix
 */
export function solveLinear(matrix: SystemMatrix, rightHandSide: ArrayLike<number>): LinearSolveResult {
  requireEqualLengths('the matrix', { length: matrix.size }, 'the right-hand side', rightHandSide);
  const solution = Float64Array.from(rightHandSide);
  const factored = matrix.factor();
  if (factored) matrix.solveInPlace(solution);
  return factored && solution.every(Number.isFinite)
    ? { status: 'solved', solution }
    : { status: 'singular', solution: new Float64Array(0) };
}
