import { fitLinear } from '@wallflow/numerics/fit';
import type { Ours } from './numerics-case.js';
import type { thermometer } from './uncertainty.cases.js';

export function thermometerOurs(reference: typeof thermometer): Ours {
  const { temperature, correction } = reference.given;
  const fit = fitLinear(
    temperature.map((t) => [t - 20]),
    correction,
  );
  if (fit.status !== 'fitted') throw new Error(fit.status);
  const [s1, s2] = fit.standardErrors!;
  return {
    intercept: fit.coefficients[0]!,
    slope: fit.coefficients[1]!,
    interceptUncertainty: s1!,
    slopeUncertainty: s2!,
    correlation: fit.covariance![0]![1]! / s1! / s2!,
    residualStandardDeviation: fit.residualStandardDeviation,
    at30: fit.coefficients[0]! + 10 * fit.coefficients[1]!,
    uncertaintyAt30: Math.sqrt(s1! ** 2 + 2 * 10 * fit.covariance![0]![1]! + (10 * s2!) ** 2),
  };
}
