import { type AnyCalculation, checkInputs, fieldOf, type InputField, itemSchema, type Path, shapeOf } from '@wallflow/calculation';
import type { Kind, KindName } from '@wallflow/units';
import { describe, expect, it } from 'vitest';
import type * as z from 'zod/mini';
import { allCalculations } from '../support/calculations.js';
import { countingInputs } from '../support/counting-inputs.js';

type QuantityField = Extract<InputField, { type: 'quantity' }>;
interface Place {
  readonly path: Path;
  readonly field: QuantityField;
}

function quantitiesOf(schema: z.core.$ZodObject, path: Path = []): Place[] {
  return shapeOf(schema).flatMap(([key, child]): Place[] => {
    const field = fieldOf(child);
    if (field?.type === 'quantity') return [{ path: [...path, key], field }];
    const item = itemSchema(child);
    if (item === undefined) return [];
    return quantitiesOf(item, field?.type === 'list' ? [...path, key, 0] : [...path, key]);
  });
}

/** What the check says of one value alone; other inputs are left out on purpose. */
function limitIssue(calculation: AnyCalculation, { path }: Place, value: unknown) {
  const inner = path.reduceRight<unknown>((record, key) => (typeof key === 'number' ? [record] : { [key]: record }), value);
  const input = { ...countingInputs(calculation.spec.inputs, String(path[0])), ...(inner as object) };
  const checked = checkInputs(calculation.spec.inputs, input);
  const issues = checked.ok ? [] : checked.issues;
  const found = issues.find((issue) => issue.path.join('.') === path.join('.'));
  if (found !== undefined && found.code !== 'out_of_range') throw new Error(`${path.join('.')}: ${JSON.stringify(found)}`);
  return found;
}

/** Values on both sides of the allowed range, in a unit; undefined where the unit has no number for it. */
function outside(kind: Kind<KindName>, { min, max }: QuantityField['limits'], unit: string): number[] {
  const reach = Math.max(Math.abs(min), Math.abs(max));
  const inUnit = (si: number) => kind.in(kind.si(si), unit as never);
  return [min - 0.1 * reach, max + 0.1 * reach].map(inUnit).filter((value) => Number.isFinite(value) && value !== 0);
}

describe.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('a limit of %s', (_, calculation) => {
  it('that a message names is accepted, or the least bit inside where it is excluded, in every unit', () => {
    const refused: string[] = [];
    for (const place of quantitiesOf(calculation.spec.inputs)) {
      const kind = place.field.kind as Kind<KindName>;
      for (const unit of kind.units) {
        for (const value of outside(kind, place.field.limits, unit)) {
          const issue = limitIssue(calculation, place, { value, unit });
          expect(issue, `${place.path.join('.')} ${value} ${unit}`).toBeDefined();
          if (issue === undefined) continue;
          const { limit, bound } = issue;
          const inwards = (bound === 'min' ? 1 : -1) * Math.max(Math.abs(limit.value) * 1e-9, 1e-300);
          const typed = limit.inclusive ? limit.text : { value: limit.value + inwards, unit: limit.unit };
          if (limitIssue(calculation, place, typed) !== undefined) refused.push(`${place.path.join('.')}: ${limit.text}`);
          // Six digits at most, and no noise.
          expect(limit.value, limit.text).toBe(Number(limit.value.toPrecision(7)));
        }
      }
    }
    expect(refused).toEqual([]);
  });
});
