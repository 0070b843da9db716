import { type CorrelationMatrix, factorCorrelation } from './correlation-matrix.js';
import { type Model, sensitivities } from './sensitivity.js';
import { welchSatterthwaite } from './welch-satterthwaite.js';

/** One input of a model with its standard uncertainty. */
export interface UncertainInput {
  readonly value: number;
  /** Not below zero. */
  readonly standardUncertainty: number;
  /** Of the standard uncertainty; infinite when not given. */
  readonly degreesOfFreedom?: number;
}

/** One line of an uncertainty budget. */
export interface BudgetLine {
  /** Derivative of the output by the input. */
  readonly sensitivity: number;
  /** Sensitivity times standard uncertainty, with the sign of the sensitivity. */
  readonly contribution: number;
  /** Part of the output's variance; the parts add up to 1. May be negative with correlated inputs. 0 without any variance. */
  readonly share: number;
}

/** One output of a model with its uncertainty. */
export interface UncertainOutput {
  readonly value: number;
  readonly standardUncertainty: number;
  /** By Welch and Satterthwaite; `undefined` for correlated inputs, where the formula does not hold. */
  readonly degreesOfFreedom: number | undefined;
  /** One line for each input, in their order. */
  readonly budget: readonly BudgetLine[];
}

/** How a propagation ended. */
export type PropagationStatus =
  | 'done'
  /** An input, its uncertainty, an output or a derivative is NaN or infinite. */
  | 'not_finite'
  /** A standard uncertainty is negative or degrees of freedom are not above zero. */
  | 'invalid_uncertainty'
  /** Not a correlation matrix: see the requirements there. */
  | 'invalid_correlation';

/** Outcome of {@link propagateUncertainty}. */
export interface PropagationResult {
  readonly status: PropagationStatus;
  /** Empty unless done. */
  readonly outputs: readonly UncertainOutput[];
  /** Covariance of the outputs, row by row; empty unless done. */
  readonly covariance: readonly number[][];
}

/** Options of {@link propagateUncertainty}. */
export interface PropagationOptions {
  /** When not given, the inputs are independent. */
  readonly correlation?: CorrelationMatrix;
}

/**
 * Law of propagation of uncertainty, first order, through any model (JCGM 100:2008, 5.1.2 and
 * 5.2.2, equations 10 and 13; several outputs as in H.2). Derivatives are taken by differences.
 *
 * First order says nothing of bias and skew: for a strongly curved model or inputs uncertain by more
 * than some 10 %, compare with `simulateUncertainty` of the entry `simulation`.
 *
 * @throws NumericsError `unequal_lengths` when the correlation matrix has another size than the inputs
 */
export function propagateUncertainty(model: Model, inputs: readonly UncertainInput[], options: PropagationOptions = {}): PropagationResult {
  const fail = (status: PropagationStatus): PropagationResult => ({ status, outputs: [], covariance: [] });
  const { correlation } = options;
  const problem = findInputProblem(inputs);
  if (problem) return fail(problem);
  if (correlation && !factorCorrelation(correlation, inputs.length)) return fail('invalid_correlation');

  const values = inputs.map((input) => input.value);
  const outputValues = model([...values]);
  // sensitivity[i][k]: of output k to input i.
  const sensitivity = inputs.map((input, i) => sensitivities(model, values, i, input.standardUncertainty));
  const contribution = sensitivity.map((row, i) => row.map((slope) => slope * inputs[i]!.standardUncertainty));
  if (!outputValues.every(Number.isFinite) || !contribution.flat().every(Number.isFinite)) return fail('not_finite');

  const coefficient = (i: number, j: number): number => (i === j ? 1 : (correlation?.[i]?.[j] ?? 0));
  // What input i adds to the covariance of outputs k and l.
  const part = (i: number, k: number, l: number): number =>
    contribution.reduce((sum, row, j) => sum + contribution[i]![k]! * coefficient(i, j) * row[l]!, 0);
  const covariance = outputValues.map((_, k) => outputValues.map((__, l) => inputs.reduce((sum, _input, i) => sum + part(i, k, l), 0)));
  const isCorrelated = inputs.some((_, i) => inputs.some((__, j) => i !== j && coefficient(i, j) !== 0));

  const outputs = outputValues.map((value, k): UncertainOutput => {
    const variance = Math.max(0, covariance[k]![k]!);
    const contributions = contribution.map((row) => row[k]!);
    return {
      value,
      standardUncertainty: Math.sqrt(variance),
      degreesOfFreedom: isCorrelated
        ? undefined
        : welchSatterthwaite(
            contributions,
            inputs.map((input) => input.degreesOfFreedom ?? Infinity),
          ),
      budget: inputs.map((_, i) => ({
        sensitivity: sensitivity[i]![k]!,
        contribution: contributions[i]!,
        share: variance > 0 ? part(i, k, k) / variance : 0,
      })),
    };
  });
  return { status: 'done', outputs, covariance };
}

/** Checks values and uncertainties of inputs; undefined when all are fit for use. */
export function findInputProblem(inputs: readonly UncertainInput[]): 'not_finite' | 'invalid_uncertainty' | undefined {
  for (const { value, standardUncertainty, degreesOfFreedom = Infinity } of inputs) {
    if (!Number.isFinite(value) || !Number.isFinite(standardUncertainty)) return 'not_finite';
    if (standardUncertainty < 0 || !(degreesOfFreedom > 0)) return 'invalid_uncertainty';
  }
  return undefined;
}
