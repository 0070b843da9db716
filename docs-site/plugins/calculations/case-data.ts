import { type AnyCalculation, citation, type OutputField, readable, type Source, subjects } from '@wallflow/calculation';
import { unitSymbol } from '@wallflow/units';
import { type Comparison, compareCase } from '../../../tests/support/compare-case.js';
import { type CaseFile, origins, type ReferenceCase } from '../../../tests/support/reference-case.js';
import { fieldLabel } from '../../src/calculator/field-names.js';
import { fromInput } from '../../src/calculator/form-input.js';
import { toHash } from '../../src/calculator/permalink.js';
import type { CaseView, ComparisonView, FieldData, SubjectValidationData, ValidationData } from '../../src/data/types.js';
import { fieldsData } from './field-data.js';

function short(value: number): string {
  return readable(String(Number(value.toPrecision(3))));
}

function outputField(calculation: AnyCalculation, key: string): OutputField | undefined {
  const fields: Record<string, OutputField> = { ...calculation.spec.intermediates, ...calculation.spec.outputs };
  const [name = '', column] = key.split(/\[-?\d+\]\./);
  const field = fields[name];
  if (column === undefined || field?.type !== 'table') return field;
  return field.columns[column];
}

const refusals: Readonly<Record<string, string>> = {
  missing_input: 'asked for',
  inconsistent_inputs: 'refused as contradicting the rest',
  no_solution: 'no honest answer',
  out_of_range: 'refused as out of range',
  not_a_choice: 'refused as none of the choices',
  missing_unit: 'refused without a unit',
  ambiguous_unit: 'asked which unit is meant',
  unknown_unit: 'refused for its unit',
  incompatible_unit: 'refused for its unit',
  not_finite: 'refused as not finite',
  not_a_number: 'refused as no number',
  list_length: 'refused for the number of rows',
};

/** A refusal as `code path, code path` in words: `no honest answer (Pressure drop)`. */
function refusalWords(calculation: AnyCalculation, text: string): string {
  const inputs = fieldsData(calculation.spec.inputs);
  const one = (part: string) => {
    const [code = '', path = ''] = part.split(' ');
    const words = refusals[code] ?? (code.includes('_') ? 'refused' : code);
    const steps = path.split(/[.[\]]+/).flatMap((step) => (step === '' ? [] : [/^\d+$/.test(step) ? Number(step) : step]));
    const label = fieldLabel(inputs, steps);
    return label === undefined ? words : `${words} (${label})`;
  };
  return text.split(', ').map(one).join(', ');
}

function comparisonView(calculation: AnyCalculation, comparison: Comparison): ComparisonView {
  const field = outputField(calculation, comparison.key);
  const row = /\[(-?\d+)\]/.exec(comparison.key)?.[1];
  const label = field?.label ?? (comparison.key === 'issue' ? 'Refusal' : comparison.key);
  const choice = (text: string) => {
    if (comparison.key === 'issue') return refusalWords(calculation, text);
    return field?.type === 'choice' ? (field.options[text] ?? text) : text;
  };
  const unit = unitOf(field, comparison.expected);
  const withUnit = (value: number | undefined) => (value === undefined ? '' : `${short(value)}${unit === '' ? '' : ` ${unit}`}`);
  // What is left of rounding in the last bits of a double says nothing about the formula.
  const noise = Math.abs(comparison.difference ?? 0) < 1e-6 * (comparison.tolerance ?? 0);
  return {
    label: row === undefined ? label : `${label}, row ${Number(row) < 0 ? 'last' : Number(row) + 1}`,
    expected: choice(comparison.expected),
    ours: readable(choice(comparison.ours)),
    difference: noise ? '0' : withUnit(comparison.difference),
    tolerance: withUnit(comparison.tolerance),
    agrees: comparison.agrees,
  };
}

function unitOf(field: OutputField | undefined, expected: string): string {
  if (field?.type !== 'quantity') return '';
  const parsed = field.kind.parse(expected);
  const symbol = parsed.ok ? unitSymbol(field.kind.kind, parsed.unit) : '';
  return symbol === '1' ? '' : symbol;
}

function inputTexts(inputs: readonly FieldData[], given: Readonly<Record<string, unknown>>): { label: string; text: string }[] {
  return Object.entries(given).map(([key, value]) => {
    const field = inputs.find((candidate) => candidate.key === key);
    return { label: field?.label ?? key, text: inputText(field, value) };
  });
}

function inputText(field: FieldData | undefined, value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (field?.type === 'choice') return field.options.find((option) => option.key === value)?.label ?? String(value);
  if (field?.type === 'list' && Array.isArray(value)) {
    return value
      .map((row) =>
        inputTexts(field.item, row as Record<string, unknown>)
          .map((part) => part.text)
          .join(', '),
      )
      .join('; ');
  }
  if (typeof value === 'object' && value !== null) {
    const { value: number, unit } = value as { value?: unknown; unit?: unknown };
    return `${String(number)} ${String(unit)}`;
  }
  return String(value);
}

/** One reference case beside what the calculation gives for it. */
export function caseView(calculation: AnyCalculation, reference: ReferenceCase): CaseView {
  const inputs = fieldsData(calculation.spec.inputs);
  const comparisons = compareCase(calculation, reference).map((comparison) => comparisonView(calculation, comparison));
  return {
    id: reference.id,
    calculation: calculation.id,
    title: reference.title,
    origin: reference.origin,
    source: citation({ ...reference.source, mark: 'read' } as Source),
    mark: reference.source.mark,
    inputs: inputTexts(inputs, reference.inputs),
    comparisons,
    agrees: comparisons.every((comparison) => comparison.agrees),
    ...(reference.toleranceReason === undefined ? {} : { toleranceReason: reference.toleranceReason }),
    ...(reference.disagreement === undefined ? {} : { disagreement: reference.disagreement }),
    ...(reference.notes === undefined ? {} : { notes: reference.notes }),
    hash: toHash(inputs, { version: calculation.version, values: fromInput(inputs, reference.inputs) }),
  };
}

/** All reference cases, each run through its calculation. */
export function caseViews(calculations: readonly AnyCalculation[], files: readonly CaseFile[]): CaseView[] {
  const byId = new Map(calculations.map((calculation) => [calculation.id, calculation]));
  return files.flatMap((file) => {
    const calculation = byId.get(file.calculation);
    if (calculation === undefined) throw new Error(`a reference case is about ${file.calculation}, which is not published`);
    return file.cases.map((reference) => caseView(calculation, reference));
  });
}

function counts(cases: readonly CaseView[]): { cases: number; agreeing: number; disagreeing: number } {
  return {
    cases: cases.length,
    agreeing: cases.filter((view) => view.agrees).length,
    disagreeing: cases.filter((view) => view.disagreement !== undefined).length,
  };
}

/** How many cases there are, by origin and by calculation. */
export function validationData(calculations: readonly AnyCalculation[], cases: readonly CaseView[]): ValidationData {
  return {
    origins: origins
      .map((origin) => ({ origin, ...counts(cases.filter((view) => view.origin === origin)) }))
      .filter((count) => count.cases > 0),
    calculations: calculations.map(({ id, subject, title }) => ({
      id,
      subject,
      title,
      ...counts(cases.filter((view) => view.calculation === id)),
    })),
  };
}

/** The cases themselves, by subject and calculation. */
export function subjectValidation(calculations: readonly AnyCalculation[], cases: readonly CaseView[]): SubjectValidationData[] {
  return subjects.map((subject) => ({
    subject,
    calculations: calculations
      .filter((calculation) => calculation.subject === subject)
      .map(({ id, title }) => ({ id, title, cases: cases.filter((view) => view.calculation === id) })),
  }));
}
