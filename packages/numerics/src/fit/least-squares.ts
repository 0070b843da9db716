import { factorise, lengthOf, type QrFactors } from './qr.js';

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
  const lengths = columns.map(lengthOf);
  const scaled = columns.map((column, j) => column.map((value) => (lengths[j] === 0 ? 0 : value / lengths[j]!)));
  const factors = factorise(scaled);
  const negligible = Math.max(rows, count) * Number.EPSILON;
  for (let j = 0; j < count; j += 1) {
    if (!(Math.abs(factors.triangle(j, j)) > negligible)) return undefined;
  }

  const first = factors.solve(rightHandSide);
  const residual = rightHandSide.map((value, i) => value - scaled.reduce((sum, column, j) => sum + column[i]! * first[j]!, 0));
  const correction = factors.solve(residual);
  return {
    solution: lengths.map((length, j) => (first[j]! + correction[j]!) / length),
    inverseGram: invertGram(factors, lengths),
  };
}

/** `(RᵀR)⁻¹` with the scale of the columns put back. */
function invertGram({ triangle }: QrFactors, lengths: readonly number[]): number[][] {
  const count = lengths.length;
  const inverse = lengths.map(() => new Float64Array(count));
  for (let column = 0; column < count; column += 1) {
    for (let i = column; i >= 0; i -= 1) {
      let sum = i === column ? 1 : 0;
      for (let k = i + 1; k <= column; k += 1) sum -= triangle(i, k) * inverse[k]![column]!;
      inverse[i]![column] = sum / triangle(i, i);
    }
  }
  const gram = (i: number, j: number) => inverse[i]!.reduce((sum, value, k) => sum + value * inverse[j]![k]!, 0);
  return lengths.map((length, i) => lengths.map((other, j) => gram(i, j) / length / other));
}
