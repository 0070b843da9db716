import { type AnyCalculation, createRegistry, type Issue, type Outputs, type Success } from '@wallflow/calculation';
import { calculations as exhaust } from '@wallflow/exhaust/calculations';
import { calculations as workshop } from '../definitions.js';

/** One calculation of a job with what it was given and what came out. */
export interface Evaluation {
  readonly calculation: AnyCalculation;
  readonly input: Readonly<Record<string, unknown>>;
  readonly result: Success<Outputs, Outputs>;
}

/** A calculation of a job that gave no result, and why. A job goes on without it and says so. */
export interface NoEvaluation {
  readonly calculation: AnyCalculation;
  readonly input: Readonly<Record<string, unknown>>;
  readonly issues: readonly Issue[];
}

/** A calculation of a job with its result, or with why there is none. */
export type Attempt = Evaluation | NoEvaluation;

/** Whether a calculation was asked for and gave a result. */
export function succeeded(attempt: Attempt | undefined): attempt is Evaluation {
  return attempt !== undefined && 'result' in attempt;
}

const registry = /* @__PURE__ */ createRegistry(exhaust, workshop);

export function isCalculation(id: string): boolean {
  return registry.get(id) !== undefined;
}

function find(id: string): AnyCalculation {
  const calculation = registry.get(id);
  if (calculation === undefined) throw new Error(`no calculation ${id}`);
  return calculation;
}

/** Inputs of the record that this calculation knows; a job's section may serve several calculations. */
export function inputsFor(id: string, record: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const known = find(id).spec.inputs.shape as object;
  return Object.fromEntries(Object.entries(record).filter(([key]) => Object.hasOwn(known, key)));
}

/** Names in a section that none of the calculations which read it knows. */
export function unknownInputs(record: Readonly<Record<string, unknown>>, ids: readonly string[]): string[] {
  const known = new Set(ids.flatMap((id) => Object.keys(find(id).spec.inputs.shape as object)));
  return Object.keys(record).filter((key) => !known.has(key));
}

/** Run a calculation by id. */
export function evaluate(id: string, input: Readonly<Record<string, unknown>>): Attempt {
  const calculation = find(id);
  const result = calculation.runUnknown(input);
  return result.ok ? { calculation, input, result } : { calculation, input, issues: result.issues };
}

/** An SI output of an evaluation. */
export function numberOf(evaluation: Evaluation, key: string): number {
  const value = { ...evaluation.result.intermediates, ...evaluation.result.outputs }[key];
  if (typeof value !== 'number') throw new Error(`${evaluation.calculation.id} has no number ${key}`);
  return value;
}

/** A choice or text output of an evaluation. */
export function wordOf(evaluation: Evaluation, key: string): string {
  return String({ ...evaluation.result.intermediates, ...evaluation.result.outputs }[key]);
}

/** An SI number as the record form of an input, with its standard uncertainty where one is known. */
export function si(value: number, unit: string, uncertainty?: number): { value: number; unit: string; uncertainty?: number } {
  return { value, unit, ...(uncertainty === undefined || !(uncertainty > 0) ? {} : { uncertainty }) };
}

/** The uncertainty that an evaluation gives one of its numbers, in SI. */
export function uncertaintyOf(evaluation: Evaluation, key: string): number | undefined {
  return evaluation.result.uncertainty?.values[key];
}

/** What the verdict could as well be within the uncertainty of what went into it; undefined where that changes nothing. */
export function unsureText(evaluation: Evaluation): string | undefined {
  return evaluation.result.warnings.find((warning) => 'output' in warning && warning.output === 'verdict')?.text;
}
