import { mean, standardDeviation } from '@wallflow/numerics';
import { fitLinear, fitNonlinear } from '@wallflow/numerics/fit';
import { describe, expect, it } from 'vitest';
import { curveFits, linearFits, moments } from './certified-fits.cases.js';
import { expectCase } from './numerics-case.js';

const numbered = (prefix: string, values: readonly number[], first = 0) =>
  Object.fromEntries(values.map((value, i) => [`${prefix}${i + first}`, value]));

describe('linear least squares', () => {
  it.each(linearFits)('$id: $title', (reference) => {
    const { predictors, y, intercept = true } = reference.given;
    const fit = fitLinear(predictors, y, { intercept });
    if (fit.status !== 'fitted') throw new Error(fit.status);
    const all: Record<string, number | undefined> = {
      ...numbered('b', fit.coefficients),
      ...numbered('s', fit.standardErrors ?? []),
      residualStandardDeviation: fit.residualStandardDeviation,
      rSquared: fit.rSquared,
    };
    expectCase(reference, Object.fromEntries(Object.keys(reference.expected).map((key) => [key, all[key]])));
  });
});

describe('non-linear least squares', () => {
  const runs = curveFits.flatMap((reference) => reference.given.starts.map((start) => ({ reference, start, id: reference.id })));
  it.each(runs)('$id from $start', ({ reference, start }) => {
    const { model, x, y } = reference.given;
    const fit = fitNonlinear((parameters, i) => model(parameters, x[i]!), y, start);
    expect(fit.status).toBe('converged');
    fit.parameters.forEach((value, i) => {
      expect(Math.abs(value / Number(reference.expected[`b${i + 1}`]) - 1)).toBeLessThan(3e-10);
    });
    expectCase(reference, {
      ...numbered('b', fit.parameters, 1),
      ...numbered('s', fit.standardErrors ?? [], 1),
      sumOfSquares: fit.sumOfSquares,
      residualStandardDeviation: fit.residualStandardDeviation,
    });
  });
});

describe('a start from which the search fails', () => {
  const runs = curveFits.flatMap((reference) => (reference.given.failing ?? []).map((start) => ({ reference, start, id: reference.id })));
  it.each(runs)('$id from $start says so', ({ reference, start }) => {
    const { model, x, y } = reference.given;
    const fit = fitNonlinear((parameters, i) => model(parameters, x[i]!), y, start);
    // The rate runs away until the model is flat and one parameter has no influence any more.
    expect(fit.status).toBe('rank_deficient');
    expect(fit.covariance).toBeUndefined();
  });
});

describe('mean and standard deviation', () => {
  it.each(moments)('$id: $title', (reference) => {
    expectCase(reference, { mean: mean(reference.given), standardDeviation: standardDeviation(reference.given) });
  });
});
