import { requireEqualLengths } from '../errors.js';
import type { LinearSolveResult, SystemMatrix } from './system-matrix.js';
import { TridiagonalMatrix } from './tridiagonal-matrix.js';

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

/**
 * Solves a tridiagonal system by the Thomas algorithm, see `TridiagonalMatrix` for when it is safe.
 *
 * @param lower - entries below the diagonal, one fewer than the diagonal has
 * @param upper - entries above the diagonal, one fewer than the diagonal has
 * @throws NumericsError `unequal_lengths` when the lengths do not fit together
 */
export function solveTridiagonal(
  lower: ArrayLike<number>,
  diagonal: ArrayLike<number>,
  upper: ArrayLike<number>,
  rightHandSide: ArrayLike<number>,
): LinearSolveResult {
  requireEqualLengths('lower', lower, 'upper', upper);
  requireEqualLengths('diagonal', diagonal, 'lower with one more', { length: lower.length + 1 });
  const matrix = new TridiagonalMatrix(diagonal.length);
  for (let i = 0; i < diagonal.length; i += 1) {
    matrix.set(i, i, diagonal[i]!);
    if (i > 0) {
      matrix.set(i, i - 1, lower[i - 1]!);
      matrix.set(i - 1, i, upper[i - 1]!);
    }
  }
  return solveLinear(matrix, rightHandSide);
}
