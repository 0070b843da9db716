import { studentTQuantile } from '@wallflow/numerics';
import { fitExponentialApproach, fitLinear } from '@wallflow/numerics/fit';
import independent from './independent-code.json';
import { computedBy, type IndependentCase } from './independent-source.js';

const { 'viscous-and-inertial': drop, 'exponential-approach': approach, 'student-t': quantiles } = independent;

const named = (name: string, values: readonly string[]) => Object.fromEntries(values.map((value, i) => [`${name} ${i + 1}`, value]));
const numbers = (name: string, values: ArrayLike<number>) =>
  Object.fromEntries(Array.from(values, (value, i) => [`${name} ${i + 1}`, value] as const));

const fits: readonly IndependentCase[] = [
  {
    id: 'viscous-and-inertial',
    title: 'Viscous and inertial parts of a drop with known uncertainties',
    ...computedBy('mpmath 1.3.0', 'weighted normal equations in 40-digit arithmetic'),
    expected: {
      ...named('coefficient', drop.coefficients),
      ...named('standard error', drop.standardErrors),
      covariance: drop.covariance01,
    },
    relativeTolerance: 1e-14,
    toleranceReason: 'fifteen digits are quoted, and doubles round a few times',
    ours: () => {
      const rows = drop.x.map((flow) => [flow, flow ** 2]);
      const fit = fitLinear(rows, drop.y, { intercept: false, standardUncertainties: drop.standardUncertainties });
      if (fit.status !== 'fitted') throw new Error(fit.status);
      return {
        ...numbers('coefficient', fit.coefficients),
        ...numbers('standard error', fit.standardErrors ?? []),
        covariance: fit.covariance?.[0]?.[1],
      };
    },
  },
  {
    id: 'exponential-approach',
    title: 'An exponential approach to a lower limit',
    ...computedBy('SciPy 1.17.1', 'curve_fit'),
    expected: named('parameter', approach.parameters),
    relativeTolerance: 5e-9,
    toleranceReason: 'nine digits are quoted',
    ours: () => numbers('parameter', fitExponentialApproach(approach.x, approach.y).parameters),
  },
  {
    id: 'exponential-approach-errors',
    title: 'An exponential approach to a lower limit: standard errors',
    ...computedBy('SciPy 1.17.1', 'curve_fit'),
    expected: named('standard error', approach.standardErrors),
    relativeTolerance: 2e-6,
    toleranceReason: 'six digits are quoted',
    ours: () => numbers('standard error', fitExponentialApproach(approach.x, approach.y).standardErrors ?? []),
  },
];

function quantileCase(
  id: string,
  words: string,
  wanted: (probability: string) => boolean,
  tolerance: number,
  reason: string,
): IndependentCase {
  const own = quantiles.filter(({ probability }) => wanted(probability));
  const name = (probability: string, freedom: string) => `p = ${probability}, ${freedom} degrees of freedom`;
  return {
    id,
    title: `Quantiles of Student's t, ${words}`,
    ...computedBy('mpmath 1.3.0', 'incomplete beta function in 40-digit arithmetic'),
    expected: Object.fromEntries(own.map(({ probability, degreesOfFreedom, quantile }) => [name(probability, degreesOfFreedom), quantile])),
    relativeTolerance: tolerance,
    toleranceReason: reason,
    ours: () =>
      Object.fromEntries(
        own.map(({ probability, degreesOfFreedom }) => [
          name(probability, degreesOfFreedom),
          studentTQuantile(Number(probability), Number(degreesOfFreedom)),
        ]),
      ),
  };
}

const middle = '0.501';
const tail = '0.999999';

/** Quantiles by how many digits a probability in doubles leaves. */
export const studentT: readonly IndependentCase[] = [
  quantileCase('student-t', 'usual probabilities', (p) => p !== middle && p !== tail, 1e-13, 'the last digits of a double'),
  quantileCase('student-t-middle', 'near the middle', (p) => p === middle, 1e-12, 'the distance from one half carries the digits'),
  quantileCase(
    'student-t-tail',
    'far out',
    (p) => p === tail,
    3.001e-10,
    '0.999999 as a double is off by up to 5.6e-17, which is 5.6e-11 of the tail, over ν of the quantile',
  ),
];

/** Fits and quantiles that other code has computed as well. */
export const independentCases: readonly IndependentCase[] = [...fits, ...studentT];
