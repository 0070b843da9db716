import { DenseMatrix, rodas4p2 } from '@wallflow/numerics';
import { describe, expect, it } from 'vitest';
import { expectAllClose } from './expect-close.js';

const { denseWeights, gamma, slopeWeights, stageTimes, stateWeights, timeSlopeWeights } = rodas4p2;

/**
 * The coefficients are transcribed from print. Here they are put back into the textbook form
 * (Hairer and Wanner, Solving Ordinary Differential Equations II, 1996, IV.7): `Γ⁻¹ = I/γ - C`,
 * `α = A Γ`, `b = m Γ`, and must fulfil the order conditions of table IV.7.1.
 */
const s = 6;
const zeros = () => Array.from({ length: s }, () => new Array<number>(s).fill(0));

function lowerTriangle(rows: ReadonlyArray<readonly number[]>): number[][] {
  const matrix = zeros();
  for (const [i, row] of rows.entries()) {
    for (const [j, value] of row.entries()) matrix[i]![j] = value;
  }
  return matrix;
}

const inverseGamma = lowerTriangle(slopeWeights).map((row, i) => row.map((value, j) => (i === j ? 1 / gamma : 0) - value));
/** Γ column by column, from `Γ⁻¹ Γ = I`. */
const gammaMatrix = zeros();
for (let column = 0; column < s; column += 1) {
  const unit = new Float64Array(s);
  unit[column] = 1;
  const matrix = DenseMatrix.fromRows(inverseGamma);
  matrix.factor();
  matrix.solveInPlace(unit);
  for (const [row, value] of unit.entries()) gammaMatrix[row]![column] = value;
}
const multiply = (a: number[][], b: number[][]) =>
  a.map((row) => b[0]!.map((_, j) => row.reduce((sum, value, k) => sum + value * b[k]![j]!, 0)));
const alpha = multiply(lowerTriangle(stateWeights), gammaMatrix);
const beta = alpha.map((row, i) => row.map((value, j) => value + gammaMatrix[i]![j]!));
const m = [[...stateWeights[5], 1]];
const mEmbedded = [[...stateWeights[5], 0]];
const b = multiply(m, gammaMatrix)[0]!;
const bEmbedded = multiply(mEmbedded, gammaMatrix)[0]!;

const rowSums = (matrix: number[][]) => matrix.map((row) => row.reduce((sum, value) => sum + value, 0));
const a1 = rowSums(alpha);
const b1 = rowSums(beta);
const apply = (matrix: number[][], vector: number[]) => matrix.map((row) => row.reduce((sum, value, j) => sum + value * vector[j]!, 0));
const dot = (x: number[], y: number[]) => x.reduce((sum, value, i) => sum + value * y[i]!, 0);
const times = (x: number[], y: number[]) => x.map((value, i) => value * y[i]!);
const ones = new Array<number>(s).fill(1);
const squares = times(a1, a1);

const conditionsOfOrder3: Array<[string, number[], number]> = [
  ['Σ b', ones, 1],
  ['Σ b β', b1, 1 / 2],
  ['Σ b α²', squares, 1 / 3],
  ['Σ b β β', apply(beta, b1), 1 / 6],
];
const conditionsOfOrder4: Array<[string, number[], number]> = [
  ['Σ b α³', times(squares, a1), 1 / 4],
  ['Σ b α α β', times(a1, apply(alpha, b1)), 1 / 8],
  ['Σ b β α²', apply(beta, squares), 1 / 12],
  ['Σ b β β β', apply(beta, apply(beta, b1)), 1 / 24],
];

describe('coefficients of the Rosenbrock–Wanner method', () => {
  it.each([...conditionsOfOrder3, ...conditionsOfOrder4])('result of order 4: %s', (_, vector, expected) => {
    expect(dot(b, vector)).toBeCloseTo(expected, 12);
  });

  it.each(conditionsOfOrder3)('embedded result of order 3: %s', (_, vector, expected) => {
    expect(dot(bEmbedded, vector)).toBeCloseTo(expected, 12);
  });

  it('order 2 for any matrix in place of the Jacobian: Σ b α and Σ b γ', () => {
    expect(dot(b, a1)).toBeCloseTo(1 / 2, 12);
    expect(dot(b, rowSums(gammaMatrix))).toBeCloseTo(0, 12);
  });

  it('stage times and time slopes are the row sums', () => {
    expectAllClose(a1, stageTimes, 1e-12);
    expectAllClose(rowSums(gammaMatrix), timeSlopeWeights, 1e-12);
  });

  it('is stiffly accurate: b is the last row of β, and the embedded b that of the fifth stage', () => {
    expectAllClose(b, beta[5]!, 1e-12);
    expectAllClose(bEmbedded, beta[4]!, 1e-12);
  });

  it('is L-stable: |R| stays below 1 on the imaginary axis and vanishes at infinity', () => {
    // One step for the rotation y' = [[0, w], [-w, 0]] y has the growth |R(iw)|.
    for (const frequency of [0.01, 0.1, 1, 2, 5, 10, 30, 100, 1e3, 1e6]) {
      expect(amplification(frequency)).toBeLessThanOrEqual(1 + 1e-12);
    }
    expect(amplification(1e9)).toBeLessThan(1e-8);
  });

  it('dense output has order 3: it meets the conditions at every point of the step', () => {
    // b_i(θ) from the nested form; conditions with powers of θ on the right.
    const [inner, innermost] = denseWeights.map((row) => multiply([[...row, 0]], gammaMatrix)[0]!);
    for (const theta of [0.1, 0.25, 0.5, 0.8, 1]) {
      const bTheta = b.map((value, i) => theta * (value + (1 - theta) * (inner![i]! + theta * innermost![i]!)));
      expect(dot(bTheta, ones)).toBeCloseTo(theta, 11);
      expect(dot(bTheta, b1)).toBeCloseTo(theta ** 2 / 2, 11);
      expect(dot(bTheta, squares)).toBeCloseTo(theta ** 3 / 3, 11);
      expect(dot(bTheta, apply(beta, b1))).toBeCloseTo(theta ** 3 / 6, 11);
    }
  });
});

/** Growth of one step of length 1 for a rotation with the given frequency. */
function amplification(frequency: number): number {
  const scale = 1 / gamma;
  const norm = scale ** 2 + frequency ** 2;
  // (1/γ - J)⁻¹ for J = [[0, w], [-w, 0]].
  const solve = ([p, q]: [number, number]): [number, number] => [(scale * p + frequency * q) / norm, (-frequency * p + scale * q) / norm];
  const start: [number, number] = [1, 0];
  const stages: Array<[number, number]> = [];
  for (let i = 0; i < s; i += 1) {
    const state: [number, number] = [...start];
    const sum: [number, number] = [0, 0];
    stages.forEach((u, j) => {
      const stateWeight = stateWeights[i]![j] ?? 0;
      const slopeWeight = slopeWeights[i]![j] ?? 0;
      for (const k of [0, 1] as const) {
        state[k] += stateWeight * u[k];
        sum[k] += slopeWeight * u[k];
      }
    });
    stages.push(solve([frequency * state[1] + sum[0], -frequency * state[0] + sum[1]]));
  }
  const end: [number, number] = [...start];
  stages.forEach((u, j) => {
    for (const k of [0, 1] as const) end[k] += m[0]![j]! * u[k];
  });
  return Math.hypot(...end);
}
