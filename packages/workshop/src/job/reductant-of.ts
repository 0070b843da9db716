import { estimateReductant, type ReductantEstimate, type ReductantInput } from '../estimate/index.js';
import { type Attempt, type Evaluation, numberOf, succeeded, uncertaintyOf } from './evaluation.js';

const found = (attempts: readonly Attempt[], id: string): Evaluation | undefined =>
  attempts.filter(succeeded).find(({ calculation }) => calculation.id === id);

function reading(evaluation: Evaluation, key: string) {
  const uncertainty = uncertaintyOf(evaluation, key);
  return { value: numberOf(evaluation, key), ...(uncertainty === undefined ? {} : { uncertainty }) };
}

/** What the calculations of the reductant side say together; undefined where none of them was made. */
export function reductantOf(attempts: readonly Attempt[]): ReductantEstimate | undefined {
  const fluid = found(attempts, 'reductant-concentration');
  const dosing = found(attempts, 'dosing-test');
  const conversion = found(attempts, 'nox-conversion');
  const input: ReductantInput = {
    ...(fluid === undefined ? {} : { ureaFraction: reading(fluid, 'ureaFraction') }),
    // Repeats after a discarded run scatter by some two per cent of the mean (common practice, no source).
    ...(dosing === undefined ? {} : { delivered: { value: 1 + numberOf(dosing, 'flowDeviation'), uncertainty: 0.02 } }),
    ...(conversion === undefined ? {} : { conversion: reading(conversion, 'apparentConversion') }),
  };
  return Object.keys(input).length === 0 ? undefined : estimateReductant(input);
}
