import { mean, standardDeviation } from '@wallflow/numerics';
import { fitLinear, fitNonlinear } from '@wallflow/numerics/fit';
import type { curveFits, linearFits, moments } from './certified-fits.cases.js';
import type { Ours } from './numerics-case.js';

const numbered = (prefix: string, values: readonly number[], first = 0) =>
  Object.fromEntries(values.map((value, i) => [`${prefix}${i + first}`, value]));

export function linearFit(reference: (typeof linearFits)[number]): Ours {
  const { predictors, y, intercept = true } = reference.given;
  const fit = fitLinear(predictors, y, { intercept });
  if (fit.status !== 'fitted') throw new Error(fit.status);
  const all: Ours = {
    ...numbered('b', fit.coefficients),
    ...numbered('s', fit.standardErrors ?? []),
    residualStandardDeviation: fit.residualStandardDeviation,
    rSquared: fit.rSquared,
  };
  return Object.fromEntries(Object.keys(reference.expected).map((key) => [key, all[key]]));
}

export function curveFit(reference: (typeof curveFits)[number], start: readonly number[]): Ours {
  const { model, x, y } = reference.given;
  const fit = fitNonlinear((parameters, i) => model(parameters, x[i]!), y, start);
  if (fit.status !== 'converged') throw new Error(fit.status);
  return {
    ...numbered('b', fit.parameters, 1),
    ...numbered('s', fit.standardErrors ?? [], 1),
    sumOfSquares: fit.sumOfSquares,
    residualStandardDeviation: fit.residualStandardDeviation,
  };
}

export function momentsOf(reference: (typeof moments)[number]): Ours {
  return { mean: mean(reference.given), standardDeviation: standardDeviation(reference.given) };
}
