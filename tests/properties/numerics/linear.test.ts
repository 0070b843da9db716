import { BandedMatrix, DenseMatrix, solveLinear, TridiagonalMatrix } from '@wallflow/numerics';
import { fitLinear } from '@wallflow/numerics/fit';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finite } from './arbitraries.js';

/** Size, bandwidths, entries of the band row by row and a solution to be found again. */
const systems = fc
  .record({ size: fc.integer({ min: 1, max: 12 }), lower: fc.integer({ min: 0, max: 4 }), upper: fc.integer({ min: 0, max: 4 }) })
  .chain(({ size, lower, upper }) =>
    fc.record({
      size: fc.constant(size),
      lower: fc.constant(lower),
      upper: fc.constant(upper),
      entries: fc.array(finite(-1, 1), { minLength: size * size, maxLength: size * size }),
      solution: fc.array(finite(-10, 10), { minLength: size, maxLength: size }),
    }),
  );

describe('linear systems', () => {
  it('a band matrix and the same as a full one agree, and both fulfil the equations', () => {
    fc.assert(
      fc.property(systems, ({ size, lower, upper, entries, solution }) => {
        const rows = Array.from({ length: size }, (_, i) =>
          Array.from({ length: size }, (_unused, j) => (j - i > upper || i - j > lower ? 0 : entries[i * size + j]!)),
        );
        const banded = new BandedMatrix(size, lower, upper);
        rows.forEach((row, i) => {
          row.forEach((value, j) => {
            if (value !== 0) banded.set(i, j, value);
          });
        });
        const multiply = (x: ArrayLike<number>) => rows.map((row) => row.reduce((sum, value, j) => sum + value * x[j]!, 0));
        const rightHandSide = multiply(solution);
        const one = solveLinear(DenseMatrix.fromRows(rows), rightHandSide);
        const other = solveLinear(banded, rightHandSide);
        expect(other.status).toBe(one.status);
        fc.pre(one.status === 'solved');
        for (const result of [one, other]) {
          const largest = Math.max(...result.solution.map(Math.abs), 1);
          multiply(result.solution).forEach((value, i) => {
            expect(Math.abs(value - rightHandSide[i]!)).toBeLessThan(1e-11 * largest);
          });
        }
      }),
      { numRuns: 300 },
    );
  });

  it('diagonally dominant tridiagonal systems are always solved', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(finite(-1, 1), finite(-1, 1), finite(0.1, 10), finite(-10, 10)), { minLength: 1, maxLength: 50 }),
        (rows) => {
          const lower = rows.slice(1).map(([value]) => value);
          const upper = rows.slice(0, -1).map(([, value]) => value);
          const diagonal = rows.map(([below, above, margin]) => Math.abs(below) + Math.abs(above) + margin);
          const solution = rows.map(([, , , value]) => value);
          const rightHandSide = solution.map(
            (value, i) => diagonal[i]! * value + (lower[i - 1] ?? 0) * (solution[i - 1] ?? 0) + (upper[i] ?? 0) * (solution[i + 1] ?? 0),
          );
          const matrix = new TridiagonalMatrix(rows.length);
          diagonal.forEach((value, i) => {
            matrix.set(i, i, value);
            if (i > 0) {
              matrix.set(i, i - 1, lower[i - 1]!);
              matrix.set(i - 1, i, upper[i - 1]!);
            }
          });
          const result = solveLinear(matrix, rightHandSide);
          expect(result.status).toBe('solved');
          result.solution.forEach((value, i) => {
            expect(Math.abs(value - solution[i]!)).toBeLessThan(1e-11);
          });
        },
      ),
    );
  });
});

describe('fitLinear', () => {
  const points = fc.array(fc.tuple(finite(-100, 100), finite(-100, 100)), { minLength: 4, maxLength: 20 });
  const fitted = (rows: number[][], y: number[], options = {}) => {
    const fit = fitLinear(rows, y, options);
    fc.pre(new Set(rows.map(([x]) => Math.round(x!))).size > 2);
    if (fit.status !== 'fitted') throw new Error(fit.status);
    return fit;
  };

  it('residuals are at right angles to every predictor and add up to zero', () => {
    fc.assert(
      fc.property(points, (list) => {
        const fit = fitted(
          list.map(([x]) => [x]),
          list.map(([, y]) => y),
        );
        expect(Math.abs(fit.residuals.reduce((sum, rest) => sum + rest, 0))).toBeLessThan(1e-9);
        expect(Math.abs(fit.residuals.reduce((sum, rest, i) => sum + rest * list[i]![0], 0))).toBeLessThan(1e-7);
        expect(fit.rSquaredAboutMean ?? 0).toBeLessThanOrEqual(1);
        expect(fit.rSquaredAboutMean ?? 0).toBeGreaterThanOrEqual(-1e-12);
      }),
    );
  });

  it('rescaling y and x rescales coefficients and standard errors by their dimensions', () => {
    fc.assert(
      fc.property(points, finite(-6, 6), finite(-6, 6), (list, exponentY, exponentX) => {
        const [scaleY, scaleX] = [10 ** exponentY, 10 ** exponentX];
        const y = list.map(([, value]) => value);
        const one = fitted(
          list.map(([x]) => [x]),
          y,
        );
        const scaled = fitLinear(
          list.map(([x]) => [x * scaleX]),
          y.map((value) => value * scaleY),
        );
        if (scaled.status !== 'fitted') throw new Error(scaled.status);
        const size = Math.max(...one.coefficients.map(Math.abs), 1e-3);
        expect(Math.abs(scaled.coefficients[1]! / (scaleY / scaleX) - one.coefficients[1]!)).toBeLessThan(1e-10 * size);
        expect(Math.abs(scaled.coefficients[0]! / scaleY - one.coefficients[0]!)).toBeLessThan(1e-9 * size);
        const errors = one.standardErrors!;
        expect(Math.abs(scaled.standardErrors![1]! / (scaleY / scaleX) - errors[1]!)).toBeLessThan(1e-9 * (errors[1]! + 1e-3));
      }),
    );
  });

  it('the order of the points does not matter', () => {
    fc.assert(
      fc.property(points, (list) => {
        const forward = fitted(
          list.map(([x]) => [x]),
          list.map(([, y]) => y),
        );
        const turned = [...list].reverse();
        const backward = fitted(
          turned.map(([x]) => [x]),
          turned.map(([, y]) => y),
        );
        forward.coefficients.forEach((value, i) => {
          expect(Math.abs(value - backward.coefficients[i]!)).toBeLessThan(1e-9 * (1 + Math.abs(value)));
        });
      }),
    );
  });
});
