import { fitExponentialApproach, fitLinear } from '@wallflow/numerics/fit';
import { describe, expect, it } from 'vitest';
import independent from './independent-code.json';

describe('fits', () => {
  it('viscous and inertial parts with known uncertainties agree with the normal equations in 40 digits', () => {
    const { x, y, standardUncertainties, coefficients, standardErrors, covariance01 } = independent['viscous-and-inertial'];
    const fit = fitLinear(
      x.map((flow) => [flow, flow ** 2]),
      y,
      { intercept: false, standardUncertainties },
    );
    if (fit.status !== 'fitted') throw new Error(fit.status);
    fit.coefficients.forEach((value, i) => {
      expect(value / Number(coefficients[i])).toBeCloseTo(1, 12);
      expect(fit.standardErrors![i]! / Number(standardErrors[i])).toBeCloseTo(1, 12);
    });
    expect(fit.covariance![0]![1]! / Number(covariance01)).toBeCloseTo(1, 12);
  });

  it('an exponential approach agrees with another implementation of least squares', () => {
    const { x, y, parameters, standardErrors } = independent['exponential-approach'];
    const fit = fitExponentialApproach(x, y);
    expect(fit.status).toBe('converged');
    fit.parameters.forEach((value, i) => {
      expect(value / Number(parameters[i])).toBeCloseTo(1, 7);
      // Its covariance rests on one-sided differences.
      expect(fit.standardErrors![i]! / Number(standardErrors[i])).toBeCloseTo(1, 4);
    });
  });
});
