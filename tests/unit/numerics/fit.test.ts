import { NumericsError } from '@wallflow/numerics';
import { fitExponentialApproach, fitLinear, fitNonlinear } from '@wallflow/numerics/fit';
import { describe, expect, it } from 'vitest';
import { expectAllClose, requireStatus } from './expect-close.js';

describe('fitLinear', () => {
  it('finds a plane that goes through all points', () => {
    const predictors = [
      [0, 0],
      [1, 0],
      [0, 1],
      [2, 3],
      [5, 1],
    ];
    const fit = requireStatus(
      fitLinear(
        predictors,
        predictors.map(([a, b]) => 1 + 2 * a! - 3 * b!),
      ),
      'fitted',
    );
    expectAllClose(fit.coefficients, [1, 2, -3], 1e-13);
    expect(fit.rSquared).toBeCloseTo(1, 14);
    expect(fit.degreesOfFreedom).toBe(2);
  });

  it('agrees with the textbook formulas of a straight line', () => {
    const x = [1, 2, 3, 4];
    const y = [2, 3, 5, 8];
    const fit = requireStatus(
      fitLinear(
        x.map((value) => [value]),
        y,
      ),
      'fitted',
    );
    // Sxx = 5, Sxy = 10, Syy = 21, so slope 2, intercept -0.5, residual sum of squares 1.
    expectAllClose(fit.coefficients, [-0.5, 2], 1e-13);
    expect(fit.sumOfSquares).toBeCloseTo(1, 13);
    expect(fit.residualStandardDeviation).toBeCloseTo(Math.sqrt(0.5), 13);
    expectAllClose(fit.standardErrors!, [Math.sqrt(0.5 * (1 / 4 + 6.25 / 5)), Math.sqrt(0.1)], 1e-13);
    expect(fit.covariance![0]![1]).toBeCloseTo((-0.5 * 2.5) / 5, 13);
    expect(fit.rSquaredAboutMean).toBeCloseTo(20 / 21, 13);
    expect(fit.rSquaredAboutZero).toBeCloseTo(101 / 102, 13);
    expect(fit.rSquared).toBe(fit.rSquaredAboutMean);
  });

  it('a weight of two counts a point twice', () => {
    const weighted = requireStatus(fitLinear([[1], [2], [4]], [1, 3, 4], { weights: [1, 2, 1] }), 'fitted');
    const twice = requireStatus(fitLinear([[1], [2], [2], [4]], [1, 3, 3, 4]), 'fitted');
    expectAllClose(weighted.coefficients, twice.coefficients, 1e-13);
    expect(weighted.sumOfSquares).toBeCloseTo(twice.sumOfSquares, 13);
    expect(weighted.rSquared).toBeCloseTo(twice.rSquared!, 13);
  });

  it('the covariance follows from known uncertainties when they are given', () => {
    const x = [[1], [2], [3], [4]];
    const fit = requireStatus(fitLinear(x, [2, 3, 5, 8], { standardUncertainties: [0.1, 0.1, 0.1, 0.1] }), 'fitted');
    expect(fit.standardErrors![1]).toBeCloseTo(0.1 / Math.sqrt(5), 13);
    const exact = requireStatus(fitLinear([[1], [3]], [2, 6], { standardUncertainties: [0.1, 0.1] }), 'fitted');
    expect(exact.standardErrors![1]).toBeCloseTo((0.1 * Math.SQRT2) / 2, 13);
  });

  it('has no covariance when every point is used up', () => {
    const fit = requireStatus(fitLinear([[1], [3]], [2, 6]), 'fitted');
    expectAllClose(fit.coefficients, [0, 2], 1e-13);
    expect([fit.covariance, fit.standardErrors, fit.residualStandardDeviation]).toEqual([undefined, undefined, undefined]);
  });

  it('has no R² when there is nothing to explain', () => {
    const constant = requireStatus(fitLinear([[1], [2], [3]], [4, 4, 4]), 'fitted');
    expect(constant.rSquared).toBeUndefined();
    const zero = requireStatus(fitLinear([[1], [2]], [0, 0], { intercept: false }), 'fitted');
    expect(zero.rSquared).toBeUndefined();
  });

  it('fits a mean when there are no predictors', () => {
    const fit = requireStatus(fitLinear([[], [], []], [1, 2, 6]), 'fitted');
    expectAllClose(fit.coefficients, [3], 1e-14);
    expect(fit.standardErrors![0]).toBeCloseTo(Math.sqrt(7 / 3), 13);
  });

  it.each([
    ['too_few_points', [[1]], [1], {}],
    ['too_few_points', [], [], {}],
    ['rank_deficient', [[1], [1], [1]], [1, 2, 3], {}],
    [
      'rank_deficient',
      [
        [1, 2],
        [2, 4],
        [3, 6],
      ],
      [1, 2, 3],
      { intercept: false },
    ],
    ['rank_deficient', [[0], [0]], [1, 2], { intercept: false }],
    ['not_finite', [[1], [Number.NaN], [3]], [1, 2, 3], {}],
    ['not_finite', [[1], [2], [3]], [1, 2, Infinity], {}],
    ['invalid_weights', [[1], [2], [3]], [1, 2, 3], { weights: [1, 0, 1] }],
    ['invalid_weights', [[1], [2], [3]], [1, 2, 3], { weights: [1, -1, 1] }],
    ['invalid_weights', [[1], [2], [3]], [1, 2, 3], { standardUncertainties: [1, 0, 1] }],
  ] as const)('says %s for %j', (status, predictors, y, options) => {
    expect(fitLinear(predictors, y, options)).toEqual({ status });
  });

  it('refuses lists that do not fit together', () => {
    expect(() => fitLinear([[1]], [1, 2])).toThrow(NumericsError);
    expect(() => fitLinear([[1], [1, 2]], [1, 2])).toThrow(NumericsError);
    expect(() => fitLinear([[1], [2]], [1, 2], { weights: [1] })).toThrow(NumericsError);
    expect(() => fitLinear([[1], [2]], [1, 2], { weights: [1, 1], standardUncertainties: [1, 1] })).toThrow(NumericsError);
  });
});

describe('fitNonlinear', () => {
  const x = [0, 1, 2, 3, 5, 8];

  it('gives what a linear fit gives for a linear model', () => {
    const y = [1, 2.9, 5.2, 7.1, 10.8, 17.2];
    const linear = requireStatus(
      fitLinear(
        x.map((value) => [value]),
        y,
      ),
      'fitted',
    );
    const general = fitNonlinear((p, i) => p[0]! + p[1]! * x[i]!, y, [0, 0]);
    expect(general.status).toBe('converged');
    expectAllClose(general.parameters, linear.coefficients, 1e-9);
    expectAllClose(general.standardErrors!, linear.standardErrors!, 1e-9);
    expectAllClose(general.residuals, linear.residuals, 1e-8);
    expect(general.sumOfSquares).toBeCloseTo(linear.sumOfSquares, 12);
  });

  it('takes weights and known uncertainties as the linear fit does', () => {
    const y = [1, 2.9, 5.2, 7.1, 10.8, 17.2];
    const options = { standardUncertainties: [0.1, 0.2, 0.1, 0.3, 0.1, 0.5] };
    const linear = requireStatus(
      fitLinear(
        x.map((value) => [value]),
        y,
        options,
      ),
      'fitted',
    );
    const general = fitNonlinear((p, i) => p[0]! + p[1]! * x[i]!, y, [0, 0], options);
    expectAllClose(general.parameters, linear.coefficients, 1e-9);
    expectAllClose(general.standardErrors!, linear.standardErrors!, 1e-9);
  });

  it('recovers parameters of a power law from far away', () => {
    const at = [1, 2, 4, 8, 16];
    const fit = fitNonlinear(
      (p, i) => p[0]! * at[i]! ** p[1]!,
      at.map((value) => 3 * value ** 1.7),
      [1, 1],
    );
    expect(fit.status).toBe('converged');
    expectAllClose(fit.parameters, [3, 1.7], 1e-9);
  });

  it('crosses the banana valley', () => {
    // H. H. Rosenbrock's function as residuals 10 (b - a²) and 1 - a.
    const residuals = (p: Float64Array, i: number) => (i === 0 ? 10 * (p[1]! - p[0]! ** 2) : 1 - p[0]!);
    const fit = fitNonlinear(residuals, [0, 0], [-1.2, 1]);
    expect(fit.status).toBe('converged');
    expectAllClose(fit.parameters, [1, 1], 1e-8);
    expect(fit.covariance).toBeUndefined();
  });

  it('steps back from where the model is not defined', () => {
    const at = [1, 2, 3, 4];
    const fit = fitNonlinear(
      (p, i) => Math.log(p[0]! + at[i]!),
      at.map((value) => Math.log(value - 0.9)),
      [5],
    );
    expect(fit.status).toBe('converged');
    expect(fit.parameters[0]).toBeCloseTo(-0.9, 9);
  });

  it('says when the iterations ran out, with the best parameters so far', () => {
    const y = x.map((value) => 5 * Math.exp(-value / 2));
    const fit = fitNonlinear((p, i) => p[0]! * Math.exp(-x[i]! / p[1]!), y, [1, 1], { maxIterations: 2 });
    expect(fit.status).toBe('max_iterations');
    expect(fit.sumOfSquares).toBeLessThan(x.reduce((sum, value, i) => sum + (y[i]! - Math.exp(-value)) ** 2, 0));
    expect(fit.covariance).toBeUndefined();
  });

  it('says when a parameter has no influence of its own', () => {
    const fit = fitNonlinear((p, i) => (p[0]! + p[1]!) * x[i]!, x, [1, 1]);
    expect(fit.status).toBe('rank_deficient');
    expect(fitNonlinear((p, i) => p[0]! * x[i]! + 0 * p[1]!, [1, 2, 3, 4, 5, 6], [1, 1]).status).toBe('rank_deficient');
  });

  it('says when there are too few points, the start is not finite or weights are none', () => {
    expect(fitNonlinear((p) => p[0]! + p[1]!, [1], [1, 1]).status).toBe('too_few_points');
    const undefinedAtStart = fitNonlinear((p) => Math.log(p[0]!), [1, 2], [-1]);
    expect(undefinedAtStart).toMatchObject({ status: 'not_finite', parameters: [-1], sumOfSquares: undefined });
    expect(fitNonlinear((p) => p[0]!, [1, 2], [1], { weights: [1, -1] }).status).toBe('invalid_weights');
  });

  it('refuses a fit without parameters and weights that do not fit', () => {
    expect(() => fitNonlinear(() => 1, [1], [])).toThrow(NumericsError);
    expect(() => fitNonlinear((p) => p[0]!, [1, 2], [1], { weights: [1] })).toThrow(NumericsError);
  });
});

describe('fitExponentialApproach', () => {
  it.each([
    [20, 80, 1.5],
    [100, -60, 0.4],
    [0, 5, 12],
  ])('recovers level %s, amplitude %s, decay length %s without a start', (level, amplitude, decayLength) => {
    const x = [0, 1, 2, 3, 4, 5];
    const fit = fitExponentialApproach(
      x,
      x.map((value) => level + amplitude * Math.exp(-value / decayLength)),
    );
    expect(fit.status).toBe('converged');
    expectAllClose([fit.level!, fit.amplitude!, fit.decayLength!], [level, amplitude, decayLength], 1e-6 * Math.abs(amplitude));
  });

  it('solves three points exactly', () => {
    // Distances 60 : 24 fall by 0.4 a step: level 60, decay length 1 / ln 2.5, all in closed form.
    const fit = fitExponentialApproach([0, 1, 2], [160, 100, 76]);
    expectAllClose([fit.level!, fit.amplitude!, fit.decayLength!], [60, 100, 1 / Math.log(2.5)], 1e-7);
    expect(fit.covariance).toBeUndefined();
  });

  it('gives standard errors that cover the truth of scattered points', () => {
    const x = [0, 1, 2, 3, 4, 5, 6, 7];
    const scatter = [0.4, -0.7, 0.2, 0.6, -0.5, -0.1, 0.5, -0.4];
    const fit = fitExponentialApproach(
      x,
      x.map((value, i) => 30 + 70 * Math.exp(-value / 2) + scatter[i]!),
    );
    expect(fit.status).toBe('converged');
    expect(Math.abs(fit.level! - 30)).toBeLessThan(3 * fit.standardErrors![0]!);
    expect(Math.abs(fit.decayLength! - 2)).toBeLessThan(3 * fit.standardErrors![2]!);
  });

  it('does not invent a level for points that do not bend', () => {
    const fit = fitExponentialApproach([0, 1, 2, 3, 4], [100, 80, 60, 40, 20]);
    expect(fit).toMatchObject({ status: 'not_determined', level: undefined, decayLength: undefined });
    expect(fitExponentialApproach([0, 1, 2, 3], [1, 2, 4, 8]).status).toBe('not_determined');
    // All of the change in the first step: how fast, within it, cannot be told.
    expect(fitExponentialApproach([0, 1, 2, 3], [100, 20, 20, 20]).status).toBe('not_determined');
  });

  it('needs three points that are finite', () => {
    expect(fitExponentialApproach([0, 1], [2, 1]).status).toBe('too_few_points');
    expect(fitExponentialApproach([], []).status).toBe('too_few_points');
    expect(fitExponentialApproach([0, 1, 2], [1, Number.NaN, 3]).status).toBe('not_finite');
    expect(() => fitExponentialApproach([0, 1], [1])).toThrow(NumericsError);
  });
});
