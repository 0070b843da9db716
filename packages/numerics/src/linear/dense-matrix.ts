import { requireArgument } from '../errors.js';
import { isNegligiblePivot, type SystemMatrix } from './system-matrix.js';

/**
 * Small full matrix with LU factorisation by partial pivoting (Golub and Van Loan, Matrix
 * Computations, 3rd ed. 1996, algorithm 3.4.1).
 */
export class DenseMatrix implements SystemMatrix {
  readonly size: number;
  /** Row by row. */
  private readonly data: Float64Array;
  private readonly pivots: Int32Array;
  private readonly rowScales: Float64Array;

  constructor(size: number) {
    requireArgument(Number.isInteger(size) && size > 0, 'a matrix needs a size of at least 1');
    this.size = size;
    this.data = new Float64Array(size * size);
    this.pivots = new Int32Array(size);
    this.rowScales = new Float64Array(size);
  }

  /** A matrix from its rows. */
  static fromRows(rows: ReadonlyArray<ArrayLike<number>>): DenseMatrix {
    const matrix = new DenseMatrix(rows.length);
    rows.forEach((row, i) => {
      requireArgument(row.length === rows.length, 'the matrix is not square');
      matrix.data.set(row, i * rows.length);
    });
    return matrix;
  }

  get(row: number, column: number): number {
    return this.data[row * this.size + column] ?? 0;
  }

  set(row: number, column: number, value: number): void {
    const { size } = this;
    requireArgument(row >= 0 && row < size && column >= 0 && column < size, 'no such entry');
    this.data[row * size + column] = value;
  }

  clear(): void {
    this.data.fill(0);
  }

  setToDiagonalMinus(diagonal: Float64Array, other: DenseMatrix): void {
    const { data, size } = this;
    for (let k = 0; k < data.length; k += 1) data[k] = -other.data[k]!;
    for (let i = 0; i < size; i += 1) data[i * (size + 1)]! += diagonal[i]!;
  }

  factor(): boolean {
    const { data, pivots, rowScales, size } = this;
    for (let i = 0; i < size; i += 1) {
      let scale = 0;
      for (let k = i * size; k < (i + 1) * size; k += 1) scale = Math.max(scale, Math.abs(data[k]!));
      rowScales[i] = scale;
    }
    for (let k = 0; k < size; k += 1) {
      let pivotRow = k;
      for (let i = k + 1; i < size; i += 1) {
        if (Math.abs(data[i * size + k]!) > Math.abs(data[pivotRow * size + k]!)) pivotRow = i;
      }
      pivots[k] = pivotRow;
      if (pivotRow !== k) this.swapRows(k, pivotRow);
      const pivot = data[k * size + k]!;
      if (isNegligiblePivot(pivot, rowScales[k]!, size)) return false;
      for (let i = k + 1; i < size; i += 1) {
        const multiplier = data[i * size + k]! / pivot;
        data[i * size + k] = multiplier;
        if (multiplier === 0) continue;
        for (let j = k + 1; j < size; j += 1) data[i * size + j]! -= multiplier * data[k * size + j]!;
      }
    }
    return true;
  }

  solveInPlace(b: Float64Array): void {
    const { data, pivots, size } = this;
    for (let k = 0; k < size; k += 1) {
      const pivotRow = pivots[k]!;
      const value = b[pivotRow]!;
      b[pivotRow] = b[k]!;
      b[k] = value;
    }
    for (let i = 1; i < size; i += 1) {
      let sum = b[i]!;
      for (let j = 0; j < i; j += 1) sum -= data[i * size + j]! * b[j]!;
      b[i] = sum;
    }
    for (let i = size - 1; i >= 0; i -= 1) {
      let sum = b[i]!;
      for (let j = i + 1; j < size; j += 1) sum -= data[i * size + j]! * b[j]!;
      b[i] = sum / data[i * size + i]!;
    }
  }

  private swapRows(first: number, second: number): void {
    const { data, rowScales, size } = this;
    for (let j = 0; j < size; j += 1) {
      const value = data[first * size + j]!;
      data[first * size + j] = data[second * size + j]!;
      data[second * size + j] = value;
    }
    const scale = rowScales[first]!;
    rowScales[first] = rowScales[second]!;
    rowScales[second] = scale;
  }
}
