import type { OutputField, Registry } from '@wallflow/calculation';
import { unitSymbol } from '@wallflow/units';
import { type CurveRow, compareCurve, type MeasuredCurve } from '../../../tests/support/measured-curve.js';
import { fromInput } from '../../src/calculator/form-input.js';
import { toHash } from '../../src/calculator/permalink.js';
import type { CurveModel, CurvePoint, CurveView } from '../../src/data/evidence.js';
import type { PlotView } from '../../src/data/types.js';
import { fieldsData } from '../calculations/field-data.js';
import { curveInputs } from './curve-inputs.js';
import { inputFields, percent, rounded, sourceText } from './texts.js';

function range(curve: MeasuredCurve, from: number, to: number): string {
  const [first, last] = [curve.points[from]?.at ?? '', curve.points[to]?.at ?? ''];
  return from === to ? first : `${first} to ${last}`;
}

/** What a calculation says along the curve, each text once, with the points where it says so. */
function warningLines(curve: MeasuredCurve, rows: readonly CurveRow[], name: string): string[] {
  const places = new Map<string, string[]>();
  for (const row of rows) {
    for (const { text } of row.models[name]?.warnings ?? []) places.set(text, [...(places.get(text) ?? []), row.at]);
  }
  return [...places].map(([text, at]) => {
    const where =
      at.length === curve.points.length ? 'at every point' : at.length > 2 ? `at ${at[0]} to ${at.at(-1)}` : `at ${at.join(' and ')}`;
    return `${where}: ${text}`;
  });
}

function modelView(
  curve: MeasuredCurve,
  rows: readonly CurveRow[],
  model: MeasuredCurve['models'][number],
  registry: Registry,
): CurveModel {
  const calculation = registry.get(model.calculation);
  if (calculation === undefined) throw new Error(`${curve.id}: no calculation ${model.calculation}`);
  const differences = rows.map((row) => row.models[model.name]?.difference ?? Number.NaN);
  const fields = fieldsData(calculation.spec.inputs);
  const last = { ...curve.inputs, ...model.inputs, [curve.variable.input]: curve.points.at(-1)?.at };
  return {
    name: model.name,
    calculation: calculation.id,
    title: calculation.title,
    hash: toHash(fields, { version: calculation.version, values: fromInput(fields, last) }),
    differences: `${percent(Math.min(...differences))} to ${percent(Math.max(...differences))}`,
    warnings: warningLines(curve, rows, model.name),
  };
}

/** A warning that every point has says nothing about one of them. */
function everywhere(rows: readonly CurveRow[], name: string, code: string): boolean {
  return rows.every((row) => row.models[name]?.warnings.some((warning) => warning.code === code) === true);
}

function points(curve: MeasuredCurve, rows: readonly CurveRow[], publishedColumns: readonly string[]): CurvePoint[] {
  return curve.points.map((point, index) => {
    const row = rows[index];
    const models = curve.models.flatMap(({ name }) => {
      const found = row?.models[name];
      if (found === undefined) return [];
      const here = found.warnings.filter(({ code }) => !everywhere(rows, name, code));
      return [{ value: rounded(found.value), difference: percent(found.difference), warns: here.length > 0 }];
    });
    const ratio = curve.relativeToFirst === true && row !== undefined;
    return {
      at: point.at,
      ...(ratio ? { printed: point.measured } : {}),
      measured: ratio ? rounded(row.measured) : row === undefined ? point.measured : (point.measured.split(' ')[0] ?? ''),
      models,
      published: publishedColumns.map((column) => point.published?.[column] ?? '–'),
    };
  });
}

/** What the curve and the models give, in the words of the calculation. */
function outputLabel(curve: MeasuredCurve, registry: Registry): string {
  const model = curve.models[0];
  const outputs = registry.get(model?.calculation ?? '')?.spec.outputs as Readonly<Record<string, OutputField>> | undefined;
  return outputs?.[model?.output ?? '']?.label ?? curve.measuredLabel;
}

function plotOf(curve: MeasuredCurve, rows: readonly CurveRow[], unit: string, registry: Registry): PlotView | undefined {
  const calculation = registry.get(curve.models[0]?.calculation ?? '');
  const field = calculation === undefined ? undefined : inputFields(calculation).get(curve.variable.input);
  if (field?.type !== 'quantity') return undefined;
  const places = curve.points.map(({ at }) => field.kind.parse(at));
  const first = places[0];
  if (first?.ok !== true) return undefined;
  const names = curve.models.map(({ name }) => name);
  const yUnit = unit === '' ? { unit: 'ratio' } : { unit };
  return {
    key: curve.id,
    label: curve.title,
    columns: [
      { key: 'at', label: curve.variable.label, unit: unitSymbol(field.kind.kind, first.unit) },
      ...names.map((name) => ({ key: name, label: name, ...yUnit })),
      { key: 'measured', label: curve.measuredLabel, ...yUnit },
    ],
    rows: rows.map((row, index) => {
      const place = places[index];
      return {
        at: place?.ok === true ? place.value : null,
        ...Object.fromEntries(names.map((name) => [name, row.models[name]?.value ?? null])),
        measured: row.measured,
      };
    }),
    plot: { x: 'at', y: [...names, 'measured'], marks: ['measured'], up: outputLabel(curve, registry) },
  };
}

/** What the authors say of their own model, where none of ours can be run. */
function publishedPlot(curve: MeasuredCurve, publishedColumns: readonly string[]): PlotView | undefined {
  if (curve.notComputable === undefined || publishedColumns.length === 0) return undefined;
  const unit = curve.points[0]?.measured.split(' ')[1] ?? '';
  return {
    key: curve.id,
    label: `Error of the authors’ own estimates: ${curve.title}`,
    columns: [{ key: 'measured', label: curve.measuredLabel, unit }, ...publishedColumns.map((key) => ({ key, label: key, unit: '%' }))],
    rows: curve.points.map(({ measured, published }) => ({
      measured: Number.parseFloat(measured),
      ...Object.fromEntries(publishedColumns.map((key) => [key, Number.parseFloat(published?.[key] ?? '')])),
    })),
    plot: { x: 'measured', y: [...publishedColumns], up: 'Error of the estimate' },
  };
}

function band(least: number | undefined, most: number | undefined): string {
  if (least !== undefined && most !== undefined) return `difference from ${percent(least)} to ${percent(most)}`;
  if (least !== undefined) return `difference ${percent(least)} or more`;
  return most === undefined ? '' : `difference ${percent(most)} or less`;
}

function checkLines(curve: MeasuredCurve, rows: readonly CurveRow[]): string[] {
  return curve.checks.map(({ model, from, to, least, most, warning }) => {
    const said = rows[from]?.models[model]?.warnings.find(({ code }) => code === warning)?.text;
    const warns = warning === undefined ? '' : `warns “${said ?? warning}”`;
    return `${model}, ${range(curve, from, to)}: ${[band(least, most), warns].filter((part) => part !== '').join('; ')}`;
  });
}

/** A measured curve beside the models, as the site shows it. */
export function curveView(curve: MeasuredCurve, registry: Registry): CurveView {
  const rows = compareCurve(curve, registry);
  const publishedColumns = [...new Set(curve.points.flatMap(({ published }) => Object.keys(published ?? {})))];
  const unit = curve.relativeToFirst === true ? '' : (rows[0]?.unit ?? '');
  const plot = publishedPlot(curve, publishedColumns) ?? plotOf(curve, rows, unit, registry);
  return {
    id: curve.id,
    title: curve.title,
    source: sourceText(curve.source),
    mark: curve.source.mark,
    reading: curve.reading,
    variable: curve.variable.label,
    measuredLabel: curve.measuredLabel,
    unit,
    inputs: curveInputs(curve, registry),
    models: rows.length === 0 ? [] : curve.models.map((model) => modelView(curve, rows, model, registry)),
    publishedColumns,
    points: points(curve, rows, publishedColumns),
    ...(plot === undefined ? {} : { plot }),
    findings: curve.findings,
    ...(curve.notComputable === undefined ? {} : { notComputable: curve.notComputable }),
    checks: checkLines(curve, rows),
  };
}
