import { requireArgument } from '../errors.js';
import { isNegligiblePivot, type SystemMatrix } from './system-matrix.js';

/** Below this ratio of pivot to row the elimination without row swaps would lose half of the digits. */
const SAFE_PIVOT_RATIO = 2 ** -26;

/**
 * Tridiagonal matrix factorised without row swaps (Thomas algorithm; Golub and Van Loan, Matrix
 * Computations, 3rd ed. 1996, algorithm 4.3.6). Safe for diagonally dominant matrices; a pivot that
 * would cost more than half of the digits counts as singular: use `BandedMatrix` there.
 */
export class TridiagonalMatrix implements SystemMatrix {
  readonly size: number;
  private readonly lower: Float64Array;
  private readonly diagonal: Float64Array;
  private readonly upper: Float64Array;

  constructor(size: number) {
    requireArgument(Number.isInteger(size) && size > 0, 'a matrix needs a size of at least 1');
    this.size = size;
    this.lower = new Float64Array(size);
    this.diagonal = new Float64Array(size);
    this.upper = new Float64Array(size);
  }

  get(row: number, column: number): number {
    if (row === column) return this.diagonal[row] ?? 0;
    if (column === row - 1) return this.lower[row] ?? 0;
    return column === row + 1 ? (this.upper[row] ?? 0) : 0;
  }

  set(row: number, column: number, value: number): void {
    const { size } = this;
    requireArgument(row >= 0 && row < size && column >= 0 && column < size, 'no such entry');
    requireArgument(Math.abs(row - column) <= 1, 'the entry lies outside of the band');
    if (row === column) this.diagonal[row] = value;
    else if (column < row) this.lower[row] = value;
    else this.upper[row] = value;
  }

  clear(): void {
    this.lower.fill(0);
    this.diagonal.fill(0);
    this.upper.fill(0);
  }

  setToDiagonalMinus(diagonal: Float64Array, other: TridiagonalMatrix): void {
    for (let i = 0; i < this.size; i += 1) {
      this.lower[i] = -other.lower[i]!;
      this.diagonal[i] = diagonal[i]! - other.diagonal[i]!;
      this.upper[i] = -other.upper[i]!;
    }
  }

  factor(): boolean {
    const { lower, diagonal, upper, size } = this;
    for (let i = 0; i < size; i += 1) {
      const scale = Math.max(Math.abs(lower[i]!), Math.abs(diagonal[i]!), Math.abs(upper[i]!));
      if (i > 0) {
        lower[i]! /= diagonal[i - 1]!;
        diagonal[i]! -= lower[i]! * upper[i - 1]!;
      }
      const pivot = diagonal[i]!;
      if (isNegligiblePivot(pivot, scale, size) || Math.abs(pivot) < SAFE_PIVOT_RATIO * scale) return false;
    }
    return true;
  }

  solveInPlace(b: Float64Array): void {
    const { lower, diagonal, upper, size } = this;
    for (let i = 1; i < size; i += 1) b[i]! -= lower[i]! * b[i - 1]!;
    b[size - 1]! /= diagonal[size - 1]!;
    for (let i = size - 2; i >= 0; i -= 1) b[i] = (b[i]! - upper[i]! * b[i + 1]!) / diagonal[i]!;
  }
}
