import type * as z from 'zod/mini';
import { checkWithRules, type RuledInputs } from './check-inputs.js';
import { computing, constantValues } from './compute.js';
import {
  type Calculation,
  type Constants,
  type Definition,
  type DefinitionSpec,
  type Explained,
  type Failure,
  isRefusal,
  type RunResult,
  type Success,
} from './definition.js';
import { exampleOf } from './example.js';
import type { ObjectOf, Shape } from './fields.js';
import { freezeData } from './freeze.js';
import { type Given, readGiven } from './given.js';
import { CalculationError, type Issue, type Warning } from './issue.js';
import { withExample } from './issues-from-zod.js';
import { withLabels } from './labels.js';
import { issueText } from './messages.js';
import { wholeSpec } from './normalise.js';
import { declared, type Outputs, type ValuesOf } from './outputs.js';
import { propagate } from './propagate.js';
import { assertWhole } from './whole.js';
import { type Dictionary, speaking } from './words/say.js';
import { explainResult } from './working/explain.js';
import type { AnySpec } from './working/spec.js';

type Values = Readonly<Record<string, unknown>>;

/** The first issues as sentences; an exception's message is to be read. */
function sentences(issues: readonly Issue[], most = 10): string {
  const shown = issues.slice(0, most).map((issue) => issueText(issue));
  return [...shown, ...(issues.length > most ? [`And ${issues.length - most} more.`] : [])].join(' ');
}

function pick<O extends Outputs>(fields: O, values: Values): ValuesOf<O> {
  return Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, declared(field, values[key])])) as ValuesOf<O>;
}

function notCarried(note: string | undefined): Warning[] {
  return note === undefined ? [] : [{ code: 'uncertainty_not_carried', text: note }];
}

/** Describe a calculation once; validation, working, forms, pages, JSON Schema and tests follow from it. */
export function defineCalculation<
  const S extends Shape,
  const O extends Outputs,
  const M extends Outputs = Record<never, never>,
  const C extends Constants = Record<never, never>,
>(written: Definition<S, O, M, C>): Calculation<ObjectOf<S>, O, M, C> {
  return calculationOf<ObjectOf<S>, O, M, C>(wholeSpec(written));
}

/** A calculation of a whole definition; with a dictionary, what it says of a result is in that language. */
export function calculationOf<I extends z.core.$ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
  dictionary?: Dictionary,
): Calculation<I, O, M, C> {
  assertWhole(spec as unknown as AnySpec);
  const definition = { id: spec.id, version: spec.version };
  const ownConstants = constantValues(spec.constants);
  const compute = computing(spec);

  function succeed(checked: Checked): Worked | Failure {
    const { input, ruled } = checked;
    const evaluation = compute(input, ownConstants);
    if (isRefusal(evaluation)) return refuse(evaluation.refused.map((issue) => withExample(spec.inputs, issue)));
    const given = readGiven(spec.inputs, ruled.raw, ruled.idle);
    const again = (changed: z.output<I>) => {
      const values = compute(changed, ownConstants);
      return isRefusal(values) ? undefined : values.values;
    };
    const note = given.uncertain.length === 0 ? undefined : spec.uncertaintyNote;
    const uncertainty = note === undefined ? propagate(spec, input, evaluation.values, given.uncertain, again) : undefined;
    const outputs = pick(spec.outputs, evaluation.values);
    const intermediates = pick(spec.intermediates, evaluation.values);
    const advice = spec.advise?.({ ...outputs, ...intermediates }, input) ?? [];
    const result: Success<O, M> = {
      ok: true,
      outputs,
      intermediates,
      warnings: [...ruled.warnings, ...given.warnings, ...evaluation.warnings, ...notCarried(note), ...(uncertainty?.warnings ?? [])],
      assumptions: [...spec.assumptions, ...evaluation.assumptions, ...given.defaults, ...ruled.assumptions],
      advice,
      method: evaluation.method,
      ...(uncertainty === undefined ? {} : { uncertainty: { values: uncertainty.values, budget: uncertainty.budget } }),
      inputDigits: given.significantDigits,
      definition,
    };
    return { result, given };
  }

  function refuse(issues: readonly Issue[]): Failure {
    return { ok: false, issues: issues.map((issue) => withLabels(spec.inputs, issue)), definition };
  }

  type Checked = Extract<RuledInputs<I>, { ok: true }>;
  type Worked = { readonly result: Success<O, M>; readonly given: Given };

  function run(raw: unknown): RunResult<O, M> {
    return speaking(dictionary, () => runSpeaking(raw));
  }

  function explainUnknown(raw: unknown): Explained<O, M> {
    return speaking(dictionary, () => explainSpeaking(raw));
  }

  function runSpeaking(raw: unknown): RunResult<O, M> {
    const checked = checkWithRules(spec.inputs, raw);
    if (!checked.ok) return refuse(checked.issues);
    const worked = succeed(checked);
    return 'result' in worked ? worked.result : worked;
  }

  function explainSpeaking(raw: unknown): Explained<O, M> {
    const checked = checkWithRules(spec.inputs, raw);
    if (!checked.ok) return refuse(checked.issues);
    const worked = succeed(checked);
    if (!('result' in worked)) return worked;
    const { result, given } = worked;
    const values: Values = { ...result.intermediates, ...result.outputs };
    const shown = { values, inputDigits: result.inputDigits, uncertainty: result.uncertainty?.values ?? {} };
    const steps = explainResult(spec as unknown as AnySpec, checked.input as Values, given, shown);
    return { ok: true, result, definition, steps };
  }

  const calculation: Calculation<I, O, M, C> = {
    spec,
    id: spec.id,
    version: spec.version,
    subject: spec.subject,
    title: spec.title,
    example: { ...exampleOf(spec.inputs), ...spec.example } as z.input<I>,
    run,
    runUnknown: run,
    calculate(input): Success<O, M> {
      const result = run(input);
      if (result.ok) return result;
      throw new CalculationError(`${spec.id}: ${sentences(result.issues)}`, result.issues);
    },
    explain: explainUnknown,
    explainUnknown,
    evaluate(input, constants = ownConstants) {
      const evaluation = compute(input, constants);
      return isRefusal(evaluation) ? evaluation : (evaluation.values as ValuesOf<O> & ValuesOf<M>);
    },
  };
  // Not its inputs: a schema fills itself in as it is used.
  for (const part of Object.values({ ...spec, inputs: undefined })) freezeData(part);
  Object.freeze(spec);
  freezeData(calculation.example);
  return Object.freeze(calculation);
}
