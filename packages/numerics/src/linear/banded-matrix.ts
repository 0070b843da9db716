import { requireArgument } from '../errors.js';
import { isNegligiblePivot, type SystemMatrix } from './system-matrix.js';

/**
 * Band matrix with LU factorisation by partial pivoting (Golub and Van Loan, Matrix Computations,
 * 3rd ed. 1996, section 4.3). Cost of a factorisation: about
 * `2 size lowerBandwidth (lowerBandwidth + upperBandwidth)` operations.
 */
export class BandedMatrix implements SystemMatrix {
  readonly size: number;
  readonly lowerBandwidth: number;
  readonly upperBandwidth: number;
  /** Row by row, the diagonal at `lowerBandwidth`; row swaps fill `lowerBandwidth` more places on the right. */
  private readonly data: Float64Array;
  private readonly width: number;
  private readonly multipliers: Float64Array;
  private readonly pivots: Int32Array;
  private readonly rowScales: Float64Array;

  constructor(size: number, lowerBandwidth: number, upperBandwidth: number) {
    requireArgument(Number.isInteger(size) && size > 0, 'a matrix needs a size of at least 1');
    const isBandwidth = (width: number) => Number.isInteger(width) && width >= 0;
    requireArgument(isBandwidth(lowerBandwidth), 'lowerBandwidth must be a whole number');
    requireArgument(isBandwidth(upperBandwidth), 'upperBandwidth must be a whole number');
    this.size = size;
    this.lowerBandwidth = Math.min(lowerBandwidth, size - 1);
    this.upperBandwidth = Math.min(upperBandwidth, size - 1);
    this.width = 2 * this.lowerBandwidth + this.upperBandwidth + 1;
    this.data = new Float64Array(size * this.width);
    this.multipliers = new Float64Array(size * this.lowerBandwidth);
    this.pivots = new Int32Array(size);
    this.rowScales = new Float64Array(size);
  }

  get(row: number, column: number): number {
    const offset = column - row + this.lowerBandwidth;
    return offset < 0 || offset >= this.width ? 0 : (this.data[row * this.width + offset] ?? 0);
  }

  set(row: number, column: number, value: number): void {
    const { size, lowerBandwidth, upperBandwidth } = this;
    const distance = column - row;
    requireArgument(row >= 0 && row < size && column >= 0 && column < size, 'no such entry');
    requireArgument(distance >= -lowerBandwidth && distance <= upperBandwidth, 'the entry lies outside of the band');
    this.data[row * this.width + distance + lowerBandwidth] = value;
  }

  clear(): void {
    this.data.fill(0);
  }

  setToDiagonalMinus(diagonal: Float64Array, other: BandedMatrix): void {
    const { data, size, width, lowerBandwidth } = this;
    for (let k = 0; k < data.length; k += 1) data[k] = -other.data[k]!;
    for (let i = 0; i < size; i += 1) data[i * width + lowerBandwidth]! += diagonal[i]!;
  }

  factor(): boolean {
    const { data, multipliers, pivots, rowScales, size, width, lowerBandwidth, upperBandwidth } = this;
    for (let i = 0; i < size; i += 1) {
      let scale = 0;
      for (let k = i * width; k < (i + 1) * width; k += 1) scale = Math.max(scale, Math.abs(data[k]!));
      rowScales[i] = scale;
    }
    // Of a row, column j stands at `row * (width - 1) + lowerBandwidth + j`.
    const stride = width - 1;
    for (let k = 0; k < size; k += 1) {
      const lastRow = Math.min(size - 1, k + lowerBandwidth);
      const lastColumn = Math.min(size - 1, k + lowerBandwidth + upperBandwidth);
      const column = lowerBandwidth + k;
      let pivotRow = k;
      for (let i = k + 1; i <= lastRow; i += 1) {
        if (Math.abs(data[i * stride + column]!) > Math.abs(data[pivotRow * stride + column]!)) pivotRow = i;
      }
      pivots[k] = pivotRow;
      if (pivotRow !== k) this.swapRows(k, pivotRow, lastColumn);
      const pivot = data[k * stride + column]!;
      if (isNegligiblePivot(pivot, rowScales[k]!, size)) return false;
      for (let i = k + 1; i <= lastRow; i += 1) {
        const multiplier = data[i * stride + column]! / pivot;
        multipliers[k * lowerBandwidth + i - k - 1] = multiplier;
        if (multiplier === 0) continue;
        const target = i * stride + lowerBandwidth;
        const source = k * stride + lowerBandwidth;
        for (let j = k + 1; j <= lastColumn; j += 1) data[target + j]! -= multiplier * data[source + j]!;
      }
    }
    return true;
  }

  solveInPlace(b: Float64Array): void {
    const { data, multipliers, pivots, size, width, lowerBandwidth, upperBandwidth } = this;
    for (let k = 0; k < size; k += 1) {
      const pivotRow = pivots[k]!;
      const value = b[pivotRow]!;
      b[pivotRow] = b[k]!;
      b[k] = value;
      const lastRow = Math.min(size - 1, k + lowerBandwidth);
      for (let i = k + 1; i <= lastRow; i += 1) b[i]! -= multipliers[k * lowerBandwidth + i - k - 1]! * value;
    }
    for (let i = size - 1; i >= 0; i -= 1) {
      const row = i * (width - 1) + lowerBandwidth;
      const lastColumn = Math.min(size - 1, i + lowerBandwidth + upperBandwidth);
      let sum = b[i]!;
      for (let j = i + 1; j <= lastColumn; j += 1) sum -= data[row + j]! * b[j]!;
      b[i] = sum / data[row + i]!;
    }
  }

  private swapRows(first: number, second: number, lastColumn: number): void {
    const { data, rowScales, width, lowerBandwidth } = this;
    const one = first * (width - 1) + lowerBandwidth;
    const other = second * (width - 1) + lowerBandwidth;
    for (let j = first; j <= lastColumn; j += 1) {
      const value = data[one + j]!;
      data[one + j] = data[other + j]!;
      data[other + j] = value;
    }
    const scale = rowScales[first]!;
    rowScales[first] = rowScales[second]!;
    rowScales[second] = scale;
  }
}
