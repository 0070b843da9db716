import type { RandomSource } from './random-source.js';

/** A normal distribution by its mean and the lower Cholesky factor of its precision, row by row. */
export interface Gaussian {
  readonly mean: Float64Array;
  readonly factor: Float64Array;
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
  return { mean: new Float64Array(size), factor };
}

/** Normal distribution with this mean and precision; undefined when the precision is not positive definite. */
export function gaussianOfPrecision(mean: Float64Array, precision: Float64Array): Gaussian | undefined {
  const factor = precision.slice();
  if (!factorInPlace(factor, mean.length)) return undefined;
  return { mean, factor };
}

/** Fill `out` with one draw. */
export function drawGaussian(gaussian: Gaussian, source: RandomSource, out: Float64Array): void {
  drawTail(gaussian, 0, source, out);
}

/** Fill `out` with one draw of the unknowns from `from` on; those before get their mean, given the others. */
export function drawTail(gaussian: Gaussian, from: number, source: RandomSource, out: Float64Array): void {
  out.fill(0, 0, from);
  for (let i = from; i < out.length; i += 1) out[i] = source.normal();
  solveTransposed(gaussian.factor, out.length, out);
  for (let i = 0; i < out.length; i += 1) out[i]! += gaussian.mean[i]!;
}

/** Mean of the unknowns before `before`, given the values of those from there on. */
export function conditionalMean({ mean, factor }: Gaussian, before: number, point: Float64Array): Float64Array {
  const size = mean.length;
  const away = new Float64Array(size);
  for (let i = before; i < size; i += 1) away[i] = point[i]! - mean[i]!;
  for (let i = before - 1; i >= 0; i -= 1) {
    let sum = 0;
    for (let k = i + 1; k < size; k += 1) sum -= factor[k * size + i]! * away[k]!;
    away[i] = sum / factor[i * size + i]!;
  }
  return away.map((value, i) => value + mean[i]!).slice(0, before);
}

/** ln of the density without the factor of 2π, which all distributions of one size share. */
export function logDensity(gaussian: Gaussian, point: Float64Array): number {
  return tailLogDensity(gaussian, 0, point);
}

/**
 * The same of the unknowns from `from` on, whatever the others are: the lower right part of the factor of a precision is the
 * factor of their own precision.
 */
export function tailLogDensity({ mean, factor }: Gaussian, from: number, point: Float64Array): number {
  const size = mean.length;
  let sum = 0;
  for (let column = from; column < size; column += 1) {
    let part = 0;
    for (let row = column; row < size; row += 1) part += factor[row * size + column]! * (point[row]! - mean[row]!);
    sum += Math.log(factor[column * size + column]!) - (part * part) / 2;
  }
  return sum;
}
