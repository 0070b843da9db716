/** A tall matrix as the product of an orthogonal and an upper triangular one. */
export interface QrFactors {
  /** Element of the triangle, on or above its diagonal. */
  triangle(row: number, column: number): number;
  /** The x that brings A x closest to a right-hand side. The diagonal of the triangle must not hold a zero. */
  solve(rightHandSide: Float64Array): Float64Array;
}

/** Length of a vector, which neither overflows nor is limited in its number of elements, as the arguments of `Math.hypot` are. */
export function lengthOf(vector: Float64Array): number {
  const largest = vector.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (largest === 0 || !Number.isFinite(largest)) return largest;
  return largest * Math.sqrt(vector.reduce((sum, value) => sum + (value / largest) ** 2, 0));
}

/** What a reflection along `mirror`, from row `from` on, makes of a column; the column is changed. */
function reflect(column: Float64Array, mirror: Float64Array, from: number): void {
  let product = 0;
  for (let i = from; i < column.length; i += 1) product += mirror[i]! * column[i]!;
  const share = product / mirror[from]!;
  for (let i = from; i < column.length; i += 1) column[i]! -= share * mirror[i]!;
}

/**
 * QR factorisation by Householder reflections (G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed., section 5.2), for a
 * matrix of at least as many rows as columns, given column by column.
 */
export function factorise(columns: readonly Float64Array[]): QrFactors {
  // On and below the diagonal the reflections, above it the triangle.
  const work = columns.map((column) => Float64Array.from(column));
  const diagonal = new Float64Array(work.length);
  work.forEach((mirror, k) => {
    const length = lengthOf(mirror.subarray(k));
    if (length === 0) return;
    // The sign that does not cancel.
    const signed = mirror[k]! < 0 ? -length : length;
    for (let i = k; i < mirror.length; i += 1) mirror[i]! /= signed;
    mirror[k]! += 1;
    diagonal[k] = -signed;
    for (const column of work.slice(k + 1)) reflect(column, mirror, k);
  });
  const triangle = (row: number, column: number) => (row === column ? diagonal[row]! : work[column]![row]!);

  return {
    triangle,
    solve(rightHandSide) {
      const turned = Float64Array.from(rightHandSide);
      work.forEach((mirror, k) => {
        if (diagonal[k] !== 0) reflect(turned, mirror, k);
      });
      const solution = turned.slice(0, work.length);
      for (let k = work.length - 1; k >= 0; k -= 1) {
        solution[k]! /= diagonal[k]!;
        for (let i = 0; i < k; i += 1) solution[i]! -= solution[k]! * triangle(i, k);
      }
      return solution;
    },
  };
}
