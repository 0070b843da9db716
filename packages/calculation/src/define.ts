import type * as z from 'zod';
import { type CheckedInputs, checkInputs } from './check-inputs.js';
import {
  type AnyCalculation,
  type Calculation,
  type ComputeContext,
  type Constants,
  type ConstantValues,
  type DefinitionSpec,
  type Failure,
  isRefusal,
  type Refusal,
  type RunResult,
  type Success,
} from './definition.js';
import { exampleOf } from './example.js';
import { explainResult } from './explain.js';
import { freezeData } from './freeze.js';
import { readGiven } from './given.js';
import { CalculationError, type Issue, type Warning } from './issue.js';
import { withExample } from './issues-from-zod.js';
import { inputJsonSchema } from './json-schema.js';
import { issueText } from './messages.js';
import type { OutputField, Outputs, ValuesOf } from './outputs.js';
import { propagate } from './propagate.js';

type Values = Readonly<Record<string, unknown>>;

interface Evaluation {
  readonly values: Values;
  readonly warnings: Warning[];
  readonly assumptions: { code: string; text: string }[];
  readonly method: string;
}

/** Check that a definition is whole; a mistake here is a programmer's and throws when the module is loaded. */
function assertWhole(spec: DefinitionSpec<z.ZodObject, Outputs, Outputs, Constants>): void {
  const fail = (what: string) => {
    throw new Error(`${spec.id}: ${what}`);
  };
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(spec.id)) fail('the id is not kebab-case');
  if (!/^\d+\.\d+\.\d+$/.test(spec.version)) fail('the version is not semantic');
  for (const key of Object.keys(spec.outputs)) if (key in spec.intermediates) fail(`${key} is both output and intermediate`);
  const last = spec.steps.at(-1);
  if (last === undefined || !(last.gives in spec.outputs)) fail('the last step does not give an output');
  for (const step of spec.steps) {
    if (step.tex === undefined && step.text === undefined) fail(`step ${step.gives} has neither a formula nor words`);
    if (step.source !== undefined && !(step.source in spec.sources)) fail(`step ${step.gives} names an unknown source ${step.source}`);
    for (const [, key = ''] of `${step.tex ?? ''}${step.text ?? ''}`.matchAll(/\[\[(\w+)\]\]/g)) {
      const known = key in spec.inputs.shape || key in spec.outputs || key in spec.intermediates || key in spec.constants;
      if (!known) fail(`step ${step.gives} mentions an unknown name ${key}`);
    }
  }
  if (Object.keys(spec.sources).length === 0) fail('no source');
}

/** The first output that is missing or not a finite number, if any. */
function firstBad(fields: Outputs, values: Values, at = ''): string | undefined {
  for (const [key, field] of Object.entries(fields)) {
    const bad = badValue(field, values[key], `${at}${key}`);
    if (bad !== undefined) return bad;
  }
  return undefined;
}

function badValue(field: OutputField, value: unknown, at: string): string | undefined {
  if (value === undefined) return field.optional ? undefined : at;
  if (field.type === 'quantity' || field.type === 'count') return Number.isFinite(value) ? undefined : at;
  if (field.type === 'choice') return typeof value === 'string' && Object.hasOwn(field.options, value) ? undefined : at;
  if (field.type !== 'table') return typeof value === 'string' ? undefined : at;
  for (const [index, row] of (value as Values[]).entries()) {
    const bad = firstBad(field.columns, row, `${at}[${index}].`);
    if (bad !== undefined) return bad;
  }
  return undefined;
}

/** The first issues as sentences; an exception's message is to be read. */
function sentences(issues: readonly Issue[], most = 10): string {
  const shown = issues.slice(0, most).map((issue) => issueText(issue));
  return [...shown, ...(issues.length > most ? [`And ${issues.length - most} more.`] : [])].join(' ');
}

function pick<O extends Outputs>(fields: O, values: Values): ValuesOf<O> {
  return Object.fromEntries(Object.keys(fields).map((key) => [key, values[key]])) as ValuesOf<O>;
}

function notCarried(note: string | undefined): Warning[] {
  return note === undefined ? [] : [{ code: 'uncertainty_not_carried', text: note }];
}

/** Describe a calculation once; validation, working, forms, pages, JSON Schema and tests follow from it. */
export function defineCalculation<I extends z.ZodObject, const O extends Outputs, const M extends Outputs, const C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
): Calculation<I, O, M, C> {
  assertWhole(spec as unknown as DefinitionSpec<z.ZodObject, Outputs, Outputs, Constants>);
  const definition = { id: spec.id, version: spec.version };
  const ownConstants = Object.fromEntries(Object.entries(spec.constants).map(([key, { value }]) => [key, value])) as ConstantValues<C>;

  function compute(input: z.output<I>, constants: ConstantValues<C>): Evaluation | Refusal {
    const warnings: Warning[] = [];
    const assumptions: { code: string; text: string }[] = [];
    let method = spec.method;
    const context: ComputeContext<C> = {
      constants,
      warn: (code, text, path) => void warnings.push({ code, text, ...(path === undefined ? {} : { path }) }),
      assume: (code, text) => void assumptions.push({ code, text }),
      method: (name) => {
        method = name;
      },
    };
    const values = spec.compute(input, context);
    if (isRefusal(values)) return values;
    const bad = firstBad({ ...spec.intermediates, ...spec.outputs }, values as Values);
    if (bad !== undefined) {
      return { refused: [{ code: 'no_solution', path: [], reason: `not_finite: ${bad} has no finite value for these inputs` }] };
    }
    return { values: values as Values, warnings, assumptions, method };
  }

  function succeed(input: z.output<I>, raw: unknown): RunResult<O, M> {
    const evaluation = compute(input, ownConstants);
    if (isRefusal(evaluation)) return refuse(evaluation.refused.map((issue) => withExample(spec.inputs, issue)));
    const given = readGiven(spec.inputs, raw);
    const again = (changed: z.output<I>) => {
      const values = compute(changed, ownConstants);
      return isRefusal(values) ? undefined : values.values;
    };
    const note = given.uncertain.length === 0 ? undefined : spec.uncertaintyNote;
    const uncertainty = note === undefined ? propagate(spec, input, evaluation.values, given.uncertain, again) : undefined;
    const outputs = pick(spec.outputs, evaluation.values);
    const intermediates = pick(spec.intermediates, evaluation.values);
    const advice = spec.advise?.({ ...outputs, ...intermediates }, input) ?? [];
    return {
      ok: true,
      outputs,
      intermediates,
      warnings: [...given.warnings, ...evaluation.warnings, ...notCarried(note), ...(uncertainty?.warnings ?? [])],
      assumptions: [...spec.assumptions, ...evaluation.assumptions, ...given.defaults],
      advice,
      method: evaluation.method,
      ...(uncertainty === undefined ? {} : { uncertainty: { values: uncertainty.values, budget: uncertainty.budget } }),
      inputDigits: given.significantDigits,
      definition,
    };
  }

  function refuse(issues: readonly Issue[]): Failure {
    return { ok: false, issues, definition };
  }

  const check = (raw: unknown): CheckedInputs<I> => checkInputs(spec.inputs, raw);

  function run(raw: unknown): RunResult<O, M> {
    const checked = check(raw);
    return checked.ok ? succeed(checked.input, raw) : refuse(checked.issues);
  }

  const calculation: Calculation<I, O, M, C> = {
    spec,
    id: spec.id,
    version: spec.version,
    subject: spec.subject,
    title: spec.title,
    example: { ...exampleOf(spec.inputs), ...spec.example } as z.input<I>,
    run,
    calculate(input): Success<O, M> {
      const result = run(input);
      if (result.ok) return result;
      throw new CalculationError(`${spec.id}: ${sentences(result.issues)}`, result.issues);
    },
    explain(raw) {
      const checked = check(raw);
      if (!checked.ok) return refuse(checked.issues);
      const result = succeed(checked.input, raw);
      if (!result.ok) return result;
      return { ok: true, result, definition, steps: explainResult(spec, checked.input as Values, result) };
    },
    evaluate(input, constants = ownConstants) {
      const evaluation = compute(input, constants);
      return isRefusal(evaluation) ? evaluation : (evaluation.values as ValuesOf<O> & ValuesOf<M>);
    },
    jsonSchema: () => inputJsonSchema(calculation as AnyCalculation),
  };
  // Not its inputs: a schema fills itself in as it is used.
  for (const part of Object.values({ ...spec, inputs: undefined })) freezeData(part);
  Object.freeze(spec);
  freezeData(calculation.example);
  return Object.freeze(calculation);
}
