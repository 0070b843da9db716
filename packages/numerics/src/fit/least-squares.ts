import { Matrix, QrDecomposition } from 'ml-matrix';

/** Solution of `min |A x - b|`. */
export interface LeastSquares {
  readonly solution: number[];
  /** `(AᵀA)⁻¹`, row by row. */
  readonly inverseGram: number[][];
}

/**
 * Least squares by QR factorisation of the columns, each scaled to length 1, with one step of
 * iterative refinement (Å. Björck, Numerical Methods for Least Squares Problems, SIAM 1996, sections
 * 2.4 and 2.9). `undefined` when a column depends on the others to working precision.
 */
export function solveLeastSquares(columns: readonly Float64Array[], rightHandSide: Float64Array): LeastSquares | undefined {
  const rows = rightHandSide.length;
  const count = columns.length;
  if (count === 0) return { solution: [], inverseGram: [] };
  const lengths = columns.map((column) => Math.hypot(...column));
  const scaled = new Matrix(rows, count);
  columns.forEach((column, j) => {
    for (let i = 0; i < rows; i += 1) scaled.set(i, j, lengths[j] === 0 ? 0 : column[i]! / lengths[j]!);
  });
  const factors = new QrDecomposition(scaled);
  const triangle = factors.upperTriangularMatrix;
  const negligible = Math.max(rows, count) * Number.EPSILON;
  for (let j = 0; j < count; j += 1) {
    if (!(Math.abs(triangle.get(j, j)) > negligible)) return undefined;
  }

  const target = Matrix.columnVector(rightHandSide);
  const solution = factors.solve(target);
  const residual = Matrix.sub(target, scaled.mmul(solution));
  solution.add(factors.solve(residual));
  return {
    solution: lengths.map((length, j) => solution.get(j, 0) / length),
    inverseGram: invertGram(triangle, lengths),
  };
}

/** `(RᵀR)⁻¹` with the scale of the columns put back. */
function invertGram(triangle: Matrix, lengths: readonly number[]): number[][] {
  const count = lengths.length;
  const inverse = Matrix.zeros(count, count);
  for (let column = 0; column < count; column += 1) {
    for (let i = column; i >= 0; i -= 1) {
      let sum = i === column ? 1 : 0;
      for (let k = i + 1; k <= column; k += 1) sum -= triangle.get(i, k) * inverse.get(k, column);
      inverse.set(i, column, sum / triangle.get(i, i));
    }
  }
  const gram = inverse.mmul(inverse.transpose());
  return lengths.map((length, i) => lengths.map((other, j) => gram.get(i, j) / length / other));
}
