import { type AnyCalculation, fieldOf, itemSchema, shapeOf } from '@wallflow/calculation';
import { prepare } from '@wallflow/calculation/prepare';
import type { Kind, KindName } from '@wallflow/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twinInput } from '../support/arbitrary-input.js';
import { allCalculations } from '../support/calculations.js';

/** Inputs of a row: what is neither a list nor a group. */
function inRow(calculation: AnyCalculation, key: string): boolean {
  const field = fieldOf(calculation.spec.inputs.shape[key]);
  return field?.type !== 'list' && field?.type !== 'group';
}

/** The calculation, with a count of the runs that go the whole way. */
function watched(calculation: AnyCalculation): { readonly calculation: AnyCalculation; readonly whole: () => number } {
  let count = 0;
  const runUnknown = (input: unknown) => {
    count += 1;
    return calculation.runUnknown(input);
  };
  return { calculation: { ...calculation, runUnknown }, whole: () => count };
}

/** The most usual unit of every quantity. */
function unitsOf(calculation: AnyCalculation): Record<string, string> {
  return Object.fromEntries(
    shapeOf(calculation.spec.inputs).flatMap(([key, child]) => {
      const field = fieldOf(child);
      return field?.type === 'quantity' ? [[key, field.units[0] ?? field.kind.baseUnit]] : [];
    }),
  );
}

/** Whether entries of a list or members of a group have rules of their own: their rows are checked the whole way. */
function hasInnerRules(calculation: AnyCalculation): boolean {
  return shapeOf(calculation.spec.inputs).some(([, child]) => {
    const item = itemSchema(child);
    return item !== undefined && shapeOf(item).some(([, inner]) => fieldOf(inner)?.rules !== undefined);
  });
}

interface Example {
  readonly given: Record<string, unknown>;
  readonly row: Record<string, unknown>;
  readonly whole: Record<string, unknown>;
}

/** The same input for `run` and for a row; now and then a number is far out, or there is none. */
function exampleOf(calculation: AnyCalculation, units: Record<string, string>, si: Record<string, unknown>, odd: number): Example {
  const given: Record<string, unknown> = {};
  const row: Record<string, unknown> = {};
  const whole: Record<string, unknown> = {};
  Object.entries(si).forEach(([key, value], index) => {
    const unit = units[key];
    if (!inRow(calculation, key)) given[key] = value;
    else if (unit === undefined) row[key] = value;
    else {
      const kind = (fieldOf(calculation.spec.inputs.shape[key]) as { kind: Kind<KindName> }).kind;
      const number = kind.in(kind.si((value as { value: number }).value), unit as never);
      row[key] = index === odd ? number * 1e6 : index === odd - 20 ? Number.NaN : number;
    }
    whole[key] = unit === undefined ? value : { value: row[key], unit };
  });
  return { given, row, whole };
}

describe.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  it('gives for a prepared row what it gives for a single run: results, warnings and issues', () => {
    const units = unitsOf(calculation);
    const hasRecords = shapeOf(calculation.spec.inputs).some(([key]) => !inRow(calculation, key));
    const seen = watched(calculation);
    const shared = prepare(seen.calculation, { units });
    fc.assert(
      fc.property(twinInput(calculation), fc.nat({ max: 60 }), ({ si }, odd) => {
        const { given, row, whole } = exampleOf(calculation, units, si, odd);
        const prepared = hasRecords ? prepare(seen.calculation, { units, given }) : shared;
        const once = calculation.runUnknown(whole);
        const before = seen.whole();
        const many = prepared.rowUnknown(row);
        if (!once.ok) {
          expect(many).toEqual(once);
          return;
        }
        if (!hasInnerRules(calculation)) expect(seen.whole()).toBe(before);
        const { outputs, intermediates, warnings, method } = once;
        expect(many).toEqual({ ok: true, outputs, intermediates, warnings, method });
      }),
      { numRuns: calculation.spec.dimensional === undefined ? 25 : 3 },
    );
  });

  it('gives its example in columns of one row', () => {
    const columns = Object.fromEntries(
      Object.entries(calculation.example as Record<string, unknown>).map(([key, value]) => [key, [value]]),
    );
    const result = prepare(calculation).columns(columns);
    const { outputs } = calculation.calculate(calculation.example) as { outputs: Record<string, unknown> };
    expect(result.issues).toEqual([]);
    for (const [key, list] of Object.entries(result.results))
      expect(list[0]).toEqual(outputs[key] ?? (list instanceof Float64Array ? NaN : undefined));
  });
});
