import {
  type AnyCalculation,
  type Issue,
  type OutputField,
  type Path,
  type Presented,
  pathText,
  present,
  presentValue,
  type Success,
} from '@wallflow/calculation';
import { unitSymbol } from '@wallflow/units';
import type {
  BudgetView,
  FieldData,
  IssueView,
  QuantityFieldData,
  ResultView,
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

function tableView(key: string, field: Extract<OutputField, { type: 'table' }>, shown: Extract<Presented, { type: 'table' }>): TableView {
  return {
    key,
    label: field.label,
    ...(field.description === undefined ? {} : { description: field.description }),
    columns: Object.entries(field.columns).map(([name, column]) => {
      const unit = shown.columns[name]?.unit;
      const symbol = column.type === 'quantity' && unit !== undefined ? unitSymbol(column.kind.kind, unit) : '';
      return { key: name, label: column.label, ...(symbol === '' || symbol === '1' ? {} : { unit: symbol }) };
    }),
    rows: shown.rows,
    ...(shown.plot === undefined ? {} : { plot: shown.plot }),
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

/** The sentence of an issue with the field's label in place of its key. */
function labelledText(issue: Issue, inputs: readonly FieldData[]): string {
  const text = issueTextFor(quantityAt(inputs, issue.path), issue);
  const path = pathText(issue.path);
  const label = fieldLabel(inputs, issue.path);
  if (path === '' || label === undefined || !text.startsWith(path)) return text;
  return `${label}${text.slice(path.length)}`;
}

function issueView(issue: Issue, inputs: readonly FieldData[]): IssueView {
  const paths: readonly Path[] = issue.code === 'inconsistent_inputs' ? issue.paths : [issue.path];
  const text =
    issue.code === 'inconsistent_inputs'
      ? `${issue.paths.map((path) => fieldLabel(inputs, path) ?? pathText(path)).join(' and ')} do not go together: ${issue.reason}${/[.!?]$/.test(issue.reason) ? '' : '.'}`
      : labelledText(issue, inputs);
  return {
    code: issue.code,
    fields: paths.map(pathText).filter((path) => path !== ''),
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
  const explained = calculation.explain(input);
  if (!explained.ok) return { ok: false, issues: explained.issues.map((issue) => issueView(issue, inputs)) };
  const { result, steps } = explained;
  const shown = present(calculation, result, { units: knownUnits(calculation.spec.outputs, units) });
  const outputs = splitShown(calculation.spec.outputs, shown.outputs);
  const intermediates = splitShown(calculation.spec.intermediates, shown.intermediates);
  const view: SuccessView = {
    ok: true,
    method: result.method,
    values: answerFirst(outputs.values, steps.at(-1)?.gives),
    intermediates: intermediates.values,
    tables: [...outputs.tables, ...intermediates.tables],
    warnings: result.warnings.map((warning) => ({
      text: warning.text,
      ...(warning.path === undefined ? {} : { field: pathText(warning.path) }),
    })),
    assumptions: result.assumptions.map((assumption) => assumption.text),
    advice: result.advice,
    budget: budgetViews(calculation, result, inputs),
    steps: steps.map((step) => ({
      label: step.label,
      ...(step.symbol === undefined ? {} : { symbolTex: step.symbol }),
      ...(step.tex === undefined ? {} : { tex: step.tex }),
      ...(step.numbersTex === undefined ? {} : { numbersTex: step.numbersTex }),
      ...(step.text === undefined ? {} : { text: step.text }),
      ...(step.source === undefined ? {} : { source: step.source }),
      valueText: step.valueText,
    })),
  };
  return view;
}

/** The last step of the working gives the answer itself; it comes first. */
function answerFirst(values: readonly ValueView[], lastStep: string | undefined): ValueView[] {
  return [...values.filter((value) => value.key === lastStep), ...values.filter((value) => value.key !== lastStep)];
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
