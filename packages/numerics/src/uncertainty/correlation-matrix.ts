import { NumericsError } from '../errors.js';

/** Correlation coefficients of all inputs, row by row, with ones on the diagonal. */
export type CorrelationMatrix = ReadonlyArray<ArrayLike<number>>;

/**
 * Lower triangle `L` with `L Lᵀ` equal to the matrix (Cholesky), or `undefined` when it is not a
 * correlation matrix: not symmetric, ones missing on the diagonal, or values that no quantities can
 * have together. Coefficients of exactly ±1 are allowed.
 *
 * @throws NumericsError `unequal_lengths` when it is not as large as the number of inputs
 */
export function factorCorrelation(matrix: CorrelationMatrix, size: number): number[][] | undefined {
  if (matrix.length !== size || matrix.some((row) => row.length !== size)) {
    throw new NumericsError('unequal_lengths', `the correlation matrix is not ${size} by ${size}`);
  }
  const rounding = 1e-9;
  const factor: number[][] = [];
  for (let i = 0; i < size; i += 1) {
    const row = new Array<number>(size).fill(0);
    factor.push(row);
    for (let j = 0; j <= i; j += 1) {
      const entry = matrix[i]![j]!;
      if (!(Math.abs(entry - matrix[j]![i]!) <= rounding)) return undefined;
      let rest = entry;
      for (let k = 0; k < j; k += 1) rest -= row[k]! * factor[j]![k]!;
      if (i === j) {
        if (!(Math.abs(entry - 1) <= rounding) || !(rest >= -rounding)) return undefined;
        row[i] = Math.sqrt(Math.max(0, rest));
      } else if (factor[j]![j]! > Math.sqrt(rounding)) {
        row[j] = rest / factor[j]![j]!;
      } else if (!(Math.abs(rest) <= Math.sqrt(rounding))) {
        return undefined;
      }
    }
  }
  return factor;
}
