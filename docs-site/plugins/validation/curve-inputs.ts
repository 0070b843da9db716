import type { Registry } from '@wallflow/calculation';
import type { MeasuredCurve } from '../../../tests/support/measured-curve.js';
import type { CurveInput } from '../../src/data/evidence.js';
import { fieldsData } from '../calculations/field-data.js';
import { asWritten, inputFields } from './texts.js';

interface Taken {
  readonly key: string;
  readonly label: string;
  readonly text: string;
  readonly from: string;
}

function origin(assumed: string | undefined): string {
  if (assumed === undefined) return 'as published';
  return assumed.startsWith('derived') ? assumed : `assumed: ${assumed}`;
}

function takenBy(curve: MeasuredCurve, model: MeasuredCurve['models'][number], registry: Registry): Taken[] {
  const calculation = registry.get(model.calculation);
  if (calculation === undefined) throw new Error(`${curve.id}: no calculation ${model.calculation}`);
  const given: Record<string, unknown> = { ...curve.inputs, ...model.inputs };
  const fields = inputFields(calculation);
  const stated = Object.entries(given).map(([key, value]) => ({
    key,
    label: fields.get(key)?.label ?? key,
    text: asWritten(fields.get(key), String(value)),
    from: origin(curve.assumed?.[key]),
  }));
  const left = fieldsData(calculation.spec.inputs).flatMap((field) => {
    if (field.default === undefined || Object.hasOwn(given, field.key) || field.key === curve.variable.input) return [];
    const assumed = curve.assumed?.[field.key];
    const reason = assumed === undefined ? '' : `; ${assumed}`;
    return [{ key: field.key, label: field.label, text: field.default, from: `default of the calculation${reason}` }];
  });
  return [...stated, ...left];
}

function statedOnly(curve: MeasuredCurve, registry: Registry): CurveInput[] {
  const known = registry.all.map(inputFields);
  return Object.entries(curve.inputs).map(([key, value]) => {
    const field = known.find((fields) => fields.has(key))?.get(key);
    return { label: field?.label ?? key, text: asWritten(field, String(value)), from: 'as published' };
  });
}

/** Every input that the models of a curve take, given or by default, with where it comes from. */
export function curveInputs(curve: MeasuredCurve, registry: Registry): CurveInput[] {
  if (curve.models.length === 0) return statedOnly(curve, registry);
  const rows = new Map<string, Taken & { readonly models: string[] }>();
  for (const model of curve.models) {
    for (const taken of takenBy(curve, model, registry)) {
      const id = `${taken.key} ${taken.text}`;
      const row = rows.get(id) ?? { ...taken, models: [] };
      row.models.push(model.name);
      rows.set(id, row);
    }
  }
  return [...rows.values()].map(({ label, text, from, models }) => ({
    label,
    text,
    from,
    ...(models.length === curve.models.length ? {} : { models: models.join(', ') }),
  }));
}
