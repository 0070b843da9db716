import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AnyCalculation, Registry, Warning } from '@wallflow/calculation';
import * as z from 'zod';
import { sourceSchema } from './reference-case.js';

/** A curve that somebody measured and published, and the models it is compared with. */
const measuredCurve = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  title: z.string(),
  source: sourceSchema,
  /** What was measured, and how the points came off the page. */
  reading: z.string(),
  /** What the axis is called; the input of the models that it sets. */
  variable: z.strictObject({ input: z.string(), label: z.string() }),
  measuredLabel: z.string(),
  /** Everything else that the models need, as published unless `assumed` says otherwise. */
  inputs: z.record(z.string(), z.unknown()),
  assumed: z.record(z.string(), z.string()).optional(),
  /** Measured values and models are compared as ratios to their own first point. */
  relativeToFirst: z.boolean().optional(),
  models: z.array(
    z.strictObject({ name: z.string(), calculation: z.string(), output: z.string(), inputs: z.record(z.string(), z.unknown()).optional() }),
  ),
  points: z.array(z.strictObject({ at: z.string(), measured: z.string(), published: z.record(z.string(), z.string()).optional() })).min(1),
  /** What the comparison shows, where a model fails included. */
  findings: z.array(z.string()).min(1),
  /** Why no model can be run, where the publication leaves inputs out. */
  notComputable: z.string().optional(),
  /** What the tests hold the models to: relative difference within a band, or a warning of the calculation. */
  checks: z.array(
    z.strictObject({
      model: z.string(),
      from: z.number().int(),
      to: z.number().int(),
      least: z.number().optional(),
      most: z.number().optional(),
      warning: z.string().optional(),
    }),
  ),
});

export type MeasuredCurve = z.infer<typeof measuredCurve>;

export interface ModelValue {
  /** In the unit of the measured value, or a ratio to the first point. */
  readonly value: number;
  /** Model over measured, less one. */
  readonly difference: number;
  /** What the calculation warned of here. */
  readonly warnings: readonly Warning[];
}

export interface CurveRow {
  readonly at: string;
  readonly measured: number;
  readonly unit: string;
  /** By name of the model, in the order of the curve. */
  readonly models: Readonly<Record<string, ModelValue>>;
}

const root = fileURLToPath(new URL('../reference/measured/', import.meta.url));

/** All measured curves, checked against the format. */
export function readMeasuredCurves(): MeasuredCurve[] {
  return readdirSync(root)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const parsed = measuredCurve.safeParse(JSON.parse(readFileSync(join(root, name), 'utf8')));
      if (!parsed.success) throw new Error(`${name}: ${z.prettifyError(parsed.error)}`);
      return parsed.data;
    });
}

interface Evaluated {
  readonly value: number;
  readonly measured: number;
  readonly unit: string;
  readonly warnings: readonly Warning[];
}

function evaluate(curve: MeasuredCurve, model: MeasuredCurve['models'][number], calculation: AnyCalculation, index: number): Evaluated {
  const point = curve.points[index];
  if (point === undefined) throw new Error(`${curve.id} has no point ${index}`);
  const result = calculation.run({ ...curve.inputs, ...model.inputs, [curve.variable.input]: point.at });
  if (!result.ok) throw new Error(`${curve.id}, ${model.name} at ${point.at}: ${JSON.stringify(result.issues)}`);
  const field = { ...calculation.spec.intermediates, ...calculation.spec.outputs }[model.output];
  if (field?.type !== 'quantity') throw new Error(`${calculation.id} has no quantity ${model.output}`);
  const values = { ...result.intermediates, ...result.outputs } as Record<string, number>;
  const { warnings } = result;
  const measured = field.kind.parse(point.measured);
  if (!measured.ok) {
    // A published value in a unit of its own: only ratios can be compared.
    if (!curve.relativeToFirst) throw new Error(`${curve.id}: "${point.measured}" is not a ${field.kind.label}`);
    return { value: values[model.output] ?? Number.NaN, measured: Number(point.measured), unit: '', warnings };
  }
  const value = field.kind.in(field.kind.si(values[model.output] ?? Number.NaN), measured.unit);
  return { value, measured: measured.value, unit: measured.unit, warnings };
}

/** Measured, every model and the difference, point by point; for the tests and for the site. */
export function compareCurve(curve: MeasuredCurve, registry: Registry): CurveRow[] {
  if (curve.notComputable !== undefined) return [];
  const columns = curve.models.map((model) => {
    const calculation = registry.get(model.calculation);
    if (calculation === undefined) throw new Error(`${curve.id}: no calculation ${model.calculation}`);
    return curve.points.map((_, index) => evaluate(curve, model, calculation, index));
  });
  return curve.points.map(({ at }, index) => {
    const relative = (evaluated: Evaluated[], pick: (entry: Evaluated) => number) => {
      const [first, here] = [evaluated[0], evaluated[index]];
      if (first === undefined || here === undefined) return Number.NaN;
      return curve.relativeToFirst === true ? pick(here) / pick(first) : pick(here);
    };
    const models: Record<string, ModelValue> = {};
    for (const [column, model] of curve.models.entries()) {
      const evaluated = columns[column] ?? [];
      const value = relative(evaluated, (entry) => entry.value);
      const measured = relative(evaluated, (entry) => entry.measured);
      models[model.name] = { value, difference: value / measured - 1, warnings: evaluated[index]?.warnings ?? [] };
    }
    const first = columns[0] ?? [];
    return { at, measured: relative(first, (entry) => entry.measured), unit: first[index]?.unit ?? '', models };
  });
}
