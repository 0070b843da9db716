import {
  type AnyCalculation,
  type ExplainedStep,
  type Issue,
  type OutputField,
  type Path,
  type Presented,
  pathText,
  present,
  presentValue,
  type Success,
} from '@wallflow/calculation';
import { draw } from '@wallflow/calculation/display';
import { unitSymbol } from '@wallflow/units';
import type {
  BudgetView,
  FieldData,
  IssueView,
  NoteView,
  QuantityFieldData,
  ResultView,
  StepView,
  SuccessView,
  TableView,
  UnitChoice,
  ValueView,
} from '../data/types.js';
import { fieldAt, fieldLabel } from './field-names.js';
import { issueTextFor, unitOffers } from './unit-offers.js';

// biome-ignore lint/suspicious/noExplicitAny: the output types of different calculations have no common supertype
type AnySuccess = Success<any, any>;
type Fields = Readonly<Record<string, OutputField>>;

/** Units of a field as a select shows them. */
export function unitChoices(kind: { readonly kind: string }, units: readonly string[]): UnitChoice[] {
  return units.map((id) => ({ id, symbol: unitSymbol(kind.kind as never, id) || id }));
}

function valueView(key: string, field: OutputField, shown: Exclude<Presented, { type: 'table' }>): ValueView {
  const description = field.description === undefined ? {} : { description: field.description };
  const base = { key, label: field.label, ...description, text: shown.text, units: [] };
  if (field.type === 'quantity' && shown.type === 'quantity') {
    return { ...base, symbolTex: field.symbol, units: unitChoices(field.kind, field.units), unit: shown.unit };
  }
  if (shown.type === 'choice') return { ...base, choice: shown.value };
  if (field.type === 'count') return { ...base, symbolTex: field.symbol };
  if (field.type === 'text') return { ...base, words: true };
  return base;
}

/** What several lines of one drawing have in common: their kind of quantity. */
function axisName(field: Extract<OutputField, { type: 'table' }>, lines: readonly string[]): { up: string } | Record<never, never> {
  const [first, ...others] = new Set(
    lines.map((key) => field.columns[key]).map((column) => (column?.type === 'quantity' ? column.kind.label : '')),
  );
  if (first === undefined || first === '' || others.length > 0) return {};
  return { up: `${first.charAt(0).toUpperCase()}${first.slice(1)}` };
}

/** The columns for people: one of codes, by which a program tells the rows apart, has its words in another. */
function readColumns(field: Extract<OutputField, { type: 'table' }>): [string, (typeof field.columns)[string]][] {
  return Object.entries(field.columns).filter(([name, column]) => name !== 'code' || column?.type !== 'text');
}

function tableView(key: string, field: Extract<OutputField, { type: 'table' }>, shown: Extract<Presented, { type: 'table' }>): TableView {
  return {
    key,
    label: field.label,
    ...(field.description === undefined ? {} : { description: field.description }),
    columns: readColumns(field).map(([name, column]) => {
      const unit = shown.columns[name]?.unit;
      const symbol = column.type === 'quantity' && unit !== undefined ? unitSymbol(column.kind.kind, unit) : '';
      return {
        key: name,
        label: column.label,
        ...(symbol === '' || symbol === '1' ? {} : { unit: symbol }),
      };
    }),
    rows: shown.rows,
    texts: shown.texts,
    ...(shown.plot === undefined ? {} : { plot: { ...shown.plot, ...axisName(field, shown.plot.y) } }),
  };
}

function splitShown(fields: Fields, shown: Readonly<Record<string, Presented>>): { values: ValueView[]; tables: TableView[] } {
  const values: ValueView[] = [];
  const tables: TableView[] = [];
  for (const [key, value] of Object.entries(shown)) {
    const field = fields[key];
    if (field === undefined) continue;
    if (value.type !== 'table') values.push(valueView(key, field, value));
    else if (field.type === 'table') tables.push(tableView(key, field, value));
  }
  return { values, tables };
}

function budgetViews(calculation: AnyCalculation, result: AnySuccess, inputs: readonly FieldData[]): BudgetView[] {
  const fields = calculation.spec.outputs as Fields;
  return Object.entries(result.uncertainty?.budget ?? {}).flatMap(([key, entries]): BudgetView[] => {
    const field = fields[key];
    if (field?.type !== 'quantity' || entries.length === 0) return [];
    const shown = presentValue(field, result.outputs[key], result.inputDigits, result.uncertainty?.values[key]);
    const contribution = (value: number) => {
      const part = presentValue(field, result.outputs[key], result.inputDigits, Math.abs(value));
      return part.type === 'quantity'
        ? `${Number((part.uncertainty ?? 0).toPrecision(2))} ${unitSymbol(field.kind.kind, part.unit)}`.trim()
        : '';
    };
    return [
      {
        output: field.label,
        text: shown.type === 'quantity' ? shown.text : '',
        entries: entries.map((entry) => ({
          label: fieldLabel(inputs, entry.path) ?? pathText(entry.path),
          contribution: contribution(entry.contribution),
          share: entry.share,
        })),
      },
    ];
  });
}

function quantityAt(inputs: readonly FieldData[], path: Path): QuantityFieldData | undefined {
  const field = fieldAt(inputs, path);
  return field?.type === 'quantity' ? field : undefined;
}

/** Of which inputs one is asked for, in the words of the form: `Runs, row 1: enter either Collected mass or Collected volume.` */
function eitherText(paths: readonly Path[], inputs: readonly FieldData[]): string {
  const labels = paths.map((path) => fieldAt(inputs, path)?.label ?? pathText(path)).join(' or ');
  const place = fieldLabel(inputs, paths[0]?.slice(0, -1) ?? []);
  return place === undefined ? `Enter either ${labels}.` : `${place}: enter either ${labels}.`;
}

/** The sentence of an issue, about the field by its label in the form. */
function labelledText(issue: Issue, inputs: readonly FieldData[]): string {
  if (issue.code === 'missing_input' && issue.paths !== undefined) return eitherText(issue.paths, inputs);
  const label = fieldLabel(inputs, issue.path);
  return issueTextFor(quantityAt(inputs, issue.path), label === undefined ? issue : { ...issue, label });
}

/** An issue in the words of the form. */
export function issueView(issue: Issue, inputs: readonly FieldData[]): IssueView {
  const paths: readonly Path[] = issue.code === 'inconsistent_inputs' ? issue.paths : [issue.path];
  const text =
    issue.code === 'inconsistent_inputs'
      ? `${issue.paths.map((path) => fieldLabel(inputs, path) ?? pathText(path)).join(' and ')} contradict each other: ${issue.reason}${/[.!?]$/.test(issue.reason) ? '' : '.'}`
      : labelledText(issue, inputs);
  const name = paths[0] === undefined ? undefined : fieldLabel(inputs, paths[0]);
  return {
    code: issue.code,
    fields: paths.map(pathText).filter((path) => path !== ''),
    ...(name === undefined ? {} : { name }),
    text,
    offers: unitOffers(quantityAt(inputs, issue.path), issue),
  };
}

/** Everything that a page shows of one run, as plain data. */
export function viewResult(
  calculation: AnyCalculation,
  inputs: readonly FieldData[],
  input: unknown,
  units: Readonly<Record<string, string>> = {},
): ResultView {
  const explained = calculation.explainUnknown(input);
  if (!explained.ok) {
    const issues = explained.issues.map((issue) => issueView(issue, inputs));
    return { ok: false, issues };
  }
  const { result, steps } = explained;
  const shown = present(calculation, result, { units: knownUnits(calculation.spec.outputs, units) });
  const drawing = draw(calculation, input, result, { units: knownUnits(calculation.spec.outputs, units) });
  const outputs = splitShown(calculation.spec.outputs, shown.outputs);
  const intermediates = splitShown(calculation.spec.intermediates, shown.intermediates);
  const warnings: NoteView[] = once(
    result.warnings.map((warning) => ({
      text: warning.text,
      ...(warning.path === undefined ? {} : { field: pathText(warning.path) }),
    })),
  );
  const view: SuccessView = {
    ok: true,
    ...(drawing === undefined ? {} : { drawing }),
    method: result.method,
    values: answerFirst(outputs.values, calculation.spec.answer as string),
    intermediates: intermediates.values,
    tables: [...outputs.tables, ...intermediates.tables],
    warnings,
    assumptions: result.assumptions.map((assumption) => assumption.text),
    advice: adviceOnce(result.advice, [...warnings, ...outputs.values]),
    budget: budgetViews(calculation, result, inputs),
    steps: steps.map((step: ExplainedStep) => stepView(calculation, step)),
  };
  return view;
}

function stepView(calculation: AnyCalculation, step: ExplainedStep): StepView {
  const { changes, comparisons, columns, nested } = step;
  return {
    label: step.label,
    ...(step.symbol === undefined ? {} : { symbolTex: step.symbol }),
    ...(step.tex === undefined ? {} : { tex: step.tex }),
    ...(step.source === undefined ? {} : { source: step.source }),
    ...(step.when === undefined ? {} : { when: step.when }),
    ...(changes.length === 0 ? {} : { changesTex: changes.map(({ tex }) => tex) }),
    ...(comparisons === undefined
      ? {}
      : { comparisons: comparisons.map(({ verdict, numbersTex, holds }) => ({ verdict, tex: numbersTex, holds })) }),
    ...(columns === undefined
      ? {}
      : {
          columns: columns.map(({ label, tex, numbersTex }) => ({ label, tex, ...(numbersTex === undefined ? {} : { numbersTex }) })),
        }),
    ...(nested === undefined
      ? {}
      : {
          nested: {
            title: nested.title,
            steps: nested.steps.map((inner) => ({ ...stepView(calculation, inner), valueText: inner.valueText })),
          },
        }),
    ...stepNumbers(step),
  };
}

/** The parts of a step that hold numbers. */
function stepNumbers(step: ExplainedStep): Pick<StepView, 'numbersTex' | 'text' | 'valueText'> {
  return {
    ...(step.numbersTex === undefined ? {} : { numbersTex: step.numbersTex }),
    ...(step.text === undefined ? {} : { text: step.text }),
    valueText: step.valueText,
  };
}

function once<T extends { readonly text: string }>(items: readonly T[]): T[] {
  return items.filter((item, index) => items.findIndex((other) => other.text === item.text) === index);
}

/** Advice that a warning or a result says already in the same words is not repeated. */
function adviceOnce(advice: SuccessView['advice'], said: readonly { readonly text: string }[]): SuccessView['advice'] {
  return once(advice).filter((one) => !said.some((other) => other.text === one.text));
}

/** What the calculation is asked for comes first. */
function answerFirst(values: readonly ValueView[], answer: string): ValueView[] {
  return [...values.filter((value) => value.key === answer), ...values.filter((value) => value.key !== answer)];
}

/** A link may name a unit that the output never had; such a choice is dropped. */
function knownUnits(outputs: Fields, units: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(units).filter(([key, unit]) => {
      const field = Object.hasOwn(outputs, key) ? outputs[key] : undefined;
      return field?.type === 'quantity' && (field.kind.units as readonly string[]).includes(unit);
    }),
  );
}
