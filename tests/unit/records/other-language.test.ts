import {
  type AnyCalculation,
  citation,
  type ExplainedStep,
  type Form,
  formOf,
  issueText,
  present,
  type Source,
  withTexts,
} from '@wallflow/calculation';
import { inputJsonSchema } from '@wallflow/calculation/json-schema';
import { describe, expect, it } from 'vitest';
import { texts } from '../../../packages/wallflow/src/texts.js';
import { allCalculations } from '../../support/calculations.js';
import { pseudoTexts } from '../../support/pseudo.js';
import { readCaseFiles } from '../../support/reference-case.js';

const pseudo = pseudoTexts(texts('en'));
const files = readCaseFiles();

/** Texts that the user typed: names of samples and parts. */
function typedTexts(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(typedTexts) : [];
}

/** What is the same in every language: what the user typed, works that are cited, units, functions of a calculator. */
function sameEverywhere(calculation: AnyCalculation, input: unknown): string[] {
  const sources = Object.values(calculation.spec.sources as Record<string, Source>);
  const cited = sources.flatMap((source) => [citation(source), source.by, source.title, source.locator]);
  const all = [...typedTexts(input), ...cited.filter((text) => text !== undefined)];
  return all.sort((one, other) => other.length - one.length);
}

const shared = /\b(mbar|sqrt|count|mean|rows?|round|floor|ceil|deviation|first|last|where)\b/g;

/** Texts in which English words are left. */
function english(found: readonly unknown[], same: readonly string[]): string[] {
  return found.filter((text): text is string => {
    if (typeof text !== 'string') return false;
    const rest = same.reduce((left, part) => (part.length > 3 ? left.replaceAll(part, '') : left), text);
    return /[A-Za-z]{4,}/.test(rest.replaceAll(shared, ''));
  });
}

function said(calculation: AnyCalculation, input: unknown): unknown[] {
  const result = calculation.runUnknown(input);
  if (!result.ok) return result.issues.map((issue) => ('reason' in issue ? issue.reason : undefined));
  const { outputs, intermediates } = present(calculation, result);
  const shown = Object.values({ ...intermediates, ...outputs }).flatMap((one): unknown[] => {
    if (one.type !== 'table') return [one.label, one.type === 'quantity' ? undefined : one.text];
    const { code: _, ...columns } = one.columns;
    const heads = Object.values(columns).map(({ label }) => label);
    return [one.label, ...heads, ...one.rows.flatMap((row) => Object.keys(columns).map((key) => row[key]))];
  });
  return [...[...result.warnings, ...result.assumptions, ...result.advice].map(({ text }) => text), result.method, ...shown];
}

function worked(steps: readonly ExplainedStep[]): unknown[] {
  return steps.flatMap((step): unknown[] => [
    step.label,
    step.text,
    step.when,
    ...(step.comparisons ?? []).flatMap(({ verdict, numbers }) => [verdict, numbers]),
    ...(step.columns ?? []).flatMap(({ label, when }) => [label, when]),
    ...(step.nested === undefined ? [] : [step.nested.title, ...worked(step.nested.steps)]),
  ]);
}

function inForm(form: Form): unknown[] {
  return [
    ...form.sections.flatMap(({ label, description }) => [label, description]),
    ...form.fields.flatMap(({ field, inner }): unknown[] => [
      field.label,
      field.description,
      'defaultReason' in field ? field.defaultReason : undefined,
      ...(field.type === 'choice' ? Object.values(field.options) : []),
      ...(inner === undefined ? [] : inForm(inner)),
    ]),
  ];
}

describe.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('%s in another language', (id, calculation) => {
  const other = withTexts(calculation, pseudo);

  it('says nothing in English in its form, results and working', () => {
    const own = sameEverywhere(calculation, calculation.example);
    const explained = other.explain(calculation.example as never);
    expect(english([other.title, ...inForm(formOf(other.spec.inputs))], own)).toEqual([]);
    expect(english(explained.ok ? worked(explained.steps) : [explained.issues], own)).toEqual([]);
    // A calculation in time steps takes long; its sentences are few.
    const cases =
      calculation.spec.precision === undefined
        ? files
            .filter((file) => file.calculation === id)
            .flatMap((file) => file.cases)
            .slice(0, 12)
        : [];
    for (const { inputs } of [{ inputs: calculation.example }, ...cases]) {
      expect(english(said(other, inputs), sameEverywhere(calculation, inputs))).toEqual([]);
    }
  });

  it('gives the same numbers, keys and codes', () => {
    const [one, two] = [calculation.run(calculation.example as never), other.run(calculation.example as never)];
    if (!one.ok || !two.ok)
      throw new Error(
        `the example is refused: ${[one, two].flatMap((run) => (run.ok ? [] : run.issues.map((issue) => issueText(issue))))}`,
      );
    const numbers = (values: object) => Object.values(values).filter((value) => typeof value === 'number');
    expect(numbers(two.outputs)).toEqual(numbers(one.outputs));
    expect(Object.keys(two.outputs)).toEqual(Object.keys(one.outputs));
    expect(two.warnings.map(({ code }) => code)).toEqual(one.warnings.map(({ code }) => code));
    const titles = (schema: Record<string, unknown>) =>
      Object.values(schema.properties as Record<string, { title?: string }>).map(({ title }) => title);
    expect(english(titles(inputJsonSchema(other)), [])).toEqual([]);
    expect(inputJsonSchema(other).required).toEqual(inputJsonSchema(calculation).required);
  });
});
