import type { RandomSource } from '../uncertainty/distributions.js';

/** A normal distribution by its mean and the lower Cholesky factor of its precision, row by row. */
export interface Gaussian {
  readonly mean: Float64Array;
  readonly factor: Float64Array;
  /** ln of the determinant of the factor. */
  readonly logDeterminant: number;
}

/** Lower factor of a symmetric positive definite matrix, in place, row by row; false when it is not one. */
export function factorInPlace(matrix: Float64Array, size: number): boolean {
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i * size + j]!;
      for (let k = 0; k < j; k += 1) sum -= matrix[i * size + k]! * matrix[j * size + k]!;
      if (i !== j) matrix[i * size + j] = sum / matrix[j * size + j]!;
      else if (sum > 0) matrix[i * size + i] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Solve L Lᵀ x = b in place. */
export function solveFactored(factor: Float64Array, size: number, b: Float64Array): void {
  for (let i = 0; i < size; i += 1) {
    let sum = b[i]!;
    for (let k = 0; k < i; k += 1) sum -= factor[i * size + k]! * b[k]!;
    b[i] = sum / factor[i * size + i]!;
  }
  solveTransposed(factor, size, b);
}

/** Solve Lᵀ x = b in place. */
function solveTransposed(factor: Float64Array, size: number, b: Float64Array): void {
  for (let i = size - 1; i >= 0; i -= 1) {
    let sum = b[i]!;
    for (let k = i + 1; k < size; k += 1) sum -= factor[k * size + i]! * b[k]!;
    b[i] = sum / factor[i * size + i]!;
  }
}

/** The standard normal distribution. */
export function standardGaussian(size: number): Gaussian {
  const factor = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) factor[i * size + i] = 1;
  return { mean: new Float64Array(size), factor, logDeterminant: 0 };
}

/** Normal distribution with this mean and precision; undefined when the precision is not positive definite. */
export function gaussianOfPrecision(mean: Float64Array, precision: Float64Array): Gaussian | undefined {
  const factor = precision.slice();
  if (!factorInPlace(factor, mean.length)) return undefined;
  let logDeterminant = 0;
  for (let i = 0; i < mean.length; i += 1) logDeterminant += Math.log(factor[i * mean.length + i]!);
  return { mean: mean.slice(), factor, logDeterminant };
}

/** Fill `out` with one draw. */
export function drawGaussian({ mean, factor }: Gaussian, source: RandomSource, out: Float64Array): void {
  for (let i = 0; i < out.length; i += 1) out[i] = source.normal();
  solveTransposed(factor, out.length, out);
  for (let i = 0; i < out.length; i += 1) out[i]! += mean[i]!;
}

/** ln of the density without the factor of 2π, which all distributions of one size share. */
export function logDensity({ mean, factor, logDeterminant }: Gaussian, point: Float64Array): number {
  const size = mean.length;
  let squares = 0;
  for (let column = 0; column < size; column += 1) {
    let sum = 0;
    for (let row = column; row < size; row += 1) sum += factor[row * size + column]! * (point[row]! - mean[row]!);
    squares += sum * sum;
  }
  return logDeterminant - squares / 2;
}
