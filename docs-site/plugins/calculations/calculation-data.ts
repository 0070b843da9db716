import { type AnyCalculation, type Constant, citation, type OutputField, quantityTex, type Source, type Step } from '@wallflow/calculation';
import { fromInput, toInput } from '../../src/calculator/form-input.js';
import { emptyValues } from '../../src/calculator/form-values.js';
import { viewResult } from '../../src/calculator/result-view.js';
import type { CalculationData, CaseView, ConstantView, FieldData, IssueView, SourceView, SuccessView } from '../../src/data/types.js';
import { fieldsData } from './field-data.js';
import { symbolsOf } from './formulas.js';

function sourceView(source: Source): SourceView {
  return {
    text: citation(source),
    mark: source.mark,
    type: source.type,
    ...(source.doi === undefined ? {} : { doi: source.doi }),
    ...(source.note === undefined ? {} : { note: source.note }),
  };
}

function constantView(constant: Constant, sources: Readonly<Record<string, Source>>): ConstantView {
  const source = typeof constant.source === 'string' ? sources[constant.source] : constant.source;
  return {
    label: constant.label,
    tex: `${constant.symbol} = ${quantityTex(constant.kind, constant.value, constant.kind.baseUnit, 9)}`,
    source: source === undefined ? String(constant.source) : citation(source),
  };
}

function exampleView(calculation: AnyCalculation, inputs: readonly FieldData[]): SuccessView {
  const view = viewResult(calculation, inputs, calculation.example);
  if (view.ok) return view;
  throw new Error(`${calculation.id}: the example is refused: ${view.issues.map((issue) => issue.text).join(' ')}`);
}

/** What the empty form misses; one that misses nothing still waits for a first reading. */
function neededView(calculation: AnyCalculation, inputs: readonly FieldData[]): readonly IssueView[] {
  const view = viewResult(calculation, inputs, toInput(inputs, emptyValues(inputs)));
  return view.ok ? [] : view.issues;
}

/** Formulas in symbols of every step, also of those that the example does not reach. */
export function symbolicSteps(calculation: AnyCalculation): string[] {
  const spec = calculation.spec;
  const symbols = new Map<string, string>();
  const outputs: Record<string, OutputField> = { ...spec.intermediates, ...spec.outputs };
  for (const [key, constant] of Object.entries(spec.constants as Record<string, Constant>)) symbols.set(key, constant.symbol);
  for (const [key, field] of Object.entries(outputs)) if ('symbol' in field) symbols.set(key, field.symbol);
  for (const field of fieldsData(spec.inputs)) if ('symbolTex' in field) symbols.set(field.key, field.symbolTex);
  return (spec.steps as readonly Step[]).flatMap((step) => {
    if (step.tex === undefined) return [];
    const keys = [...step.tex.matchAll(/\[\[(\w+)\]\]/g)].map((match) => match[1] ?? '');
    if (!keys.every((key) => symbols.has(key))) return [];
    return [step.tex.replaceAll(/\[\[(\w+)\]\]/g, (_, key: string) => `{${symbols.get(key)}}`)];
  });
}

/** Everything that the pages of one calculation need, as plain data. */
export function calculationData(calculation: AnyCalculation, cases: readonly CaseView[]): CalculationData {
  const spec = calculation.spec;
  const inputs = fieldsData(spec.inputs);
  if (inputs.some((field) => field.key === 'version')) throw new Error(`${calculation.id}: "version" is taken by the link's own key`);
  const data = {
    id: calculation.id,
    version: calculation.version,
    subject: calculation.subject,
    title: calculation.title,
    purpose: spec.purpose,
    keywords: spec.keywords ?? [],
    method: spec.method,
    inputs,
    constants: Object.values(spec.constants as Record<string, Constant>).map((constant) => constantView(constant, spec.sources)),
    assumptions: spec.assumptions.map((assumption) => assumption.text),
    limits: spec.limits.map((limit) => limit.text),
    cautions: spec.cautions.map((caution) => caution.text),
    sources: Object.values(spec.sources as Record<string, Source>).map(sourceView),
    history: spec.history ?? [],
    needed: neededView(calculation, inputs),
    exampleValues: fromInput(inputs, calculation.example as Record<string, unknown>),
    example: exampleView(calculation, inputs),
    cases,
  };
  return { ...data, formulas: symbolsOf(data) };
}
