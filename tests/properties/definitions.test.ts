import { type AnyCalculation, checkInputs, isRefusal, mapQuantities, type OutputField } from '@wallflow/calculation';
import { inputJsonSchema } from '@wallflow/calculation/json-schema';
import type { Dimension } from '@wallflow/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type * as z from 'zod/mini';
import { twinInput } from '../support/arbitrary-input.js';
import { allCalculations } from '../support/calculations.js';
import { differing } from '../support/close.js';

/** Runs of slow calculations are fewer; a definition says so by the precision of a step-size control. */
function runsFor(calculation: AnyCalculation): number {
  return calculation.spec.dimensional === undefined ? 60 : 25;
}

function outputsOf(calculation: AnyCalculation): Record<string, OutputField> {
  return { ...calculation.spec.intermediates, ...calculation.spec.outputs };
}

function badNumbers(value: unknown): unknown[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(badNumbers);
}

const json = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom('1e999', 'NaN', '-0', '∞ mbar', '__proto__', '360 mbar', '360', '1:4', '', ' ', '36 kPa ± 5 %', '12 \u0000 kPa'),
);

describe.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  it('runs its own example', () => {
    const result = calculation.run(calculation.example);
    expect(result.ok ? [] : result.issues).toEqual([]);
  });

  it('gives the answer in its working, and every step gives the value of the result', () => {
    const explained = calculation.explain(calculation.example);
    if (!explained.ok) throw new Error('the example is refused');
    const values = { ...explained.result.intermediates, ...explained.result.outputs } as Record<string, unknown>;
    for (const step of explained.steps) expect(step.value).toBe(values[step.gives]);
    const answer = explained.steps.find((step) => step.answer);
    expect(answer === undefined ? undefined : (explained.result.outputs as Record<string, unknown>)[answer.gives]).toBe(answer?.value);
    expect(answer?.value).toBeDefined();
  });

  it('describes its input as JSON Schema', () => {
    const schema = inputJsonSchema(calculation) as { type?: string; properties?: object };
    expect(schema.type).toBe('object');
    expect(Object.keys(schema.properties ?? {})).toEqual(Object.keys(calculation.spec.inputs.shape));
  });

  it('gives the same result in any unit, and never a number that is not finite', () => {
    let accepted = 0;
    fc.assert(
      fc.property(twinInput(calculation), ({ si, other }) => {
        const first = calculation.run(si);
        const second = calculation.run(other);
        expect(second.ok).toBe(first.ok);
        if (!first.ok || !second.ok) {
          if (!first.ok) expect(first.issues.filter((issue) => issue.code === 'no_solution' && issue.cause === 'not_finite')).toEqual([]);
          return;
        }
        accepted += 1;
        expect(badNumbers(first.outputs)).toEqual([]);
        expect(badNumbers(first.intermediates)).toEqual([]);
        const relative = Math.max(1e-9, 10 * (calculation.spec.precision ?? 0));
        const a = { ...first.intermediates, ...first.outputs };
        const b = { ...second.intermediates, ...second.outputs };
        expect(differing(outputsOf(calculation), a, b, relative)).toEqual([]);
      }),
      { numRuns: runsFor(calculation) },
    );
    expect(accepted, 'too few random inputs were accepted to prove anything').toBeGreaterThan(runsFor(calculation) / 20);
  });

  // A formula tied to its units, or a time-stepping tolerance, has no such test; its definition says why.
  if (calculation.spec.dimensional === undefined)
    it('keeps its dimensions when the base units are rescaled', () => {
      const factor = (dimension: Dimension, scales: readonly number[]) => {
        const powers = [dimension.length, dimension.mass, dimension.time, dimension.temperature, dimension.amount, dimension.current];
        return powers.reduce((product, power, index) => product * (scales[index] ?? 1) ** power, 1);
      };
      const scales = fc.array(fc.double({ min: 0.5, max: 2, noNaN: true }), { minLength: 6, maxLength: 6 });
      fc.assert(
        fc.property(twinInput(calculation), scales, ({ si }, scale) => {
          const inputs = calculation.spec.inputs as z.core.$ZodObject;
          const checked = checkInputs(inputs, si);
          if (!checked.ok) return;
          const plain = calculation.evaluate(checked.input);
          if (isRefusal(plain)) return;
          const scaledInput = mapQuantities(inputs, checked.input, (value, field) => value * factor(field.kind.dimension, scale));
          const constants: Record<string, number> = {};
          for (const [key, { kind, value }] of Object.entries(
            calculation.spec.constants as Record<string, { kind: { dimension: Dimension }; value: number }>,
          )) {
            constants[key] = value * factor(kind.dimension, scale);
          }
          const scaled = calculation.evaluate(scaledInput, constants);
          expect(isRefusal(scaled)).toBe(false);
          const relative = Math.max(1e-8, 10 * (calculation.spec.precision ?? 0));
          expect(
            differing(outputsOf(calculation), plain, scaled as object as Record<string, unknown>, relative, (field) =>
              factor(field.kind.dimension, scale),
            ),
          ).toEqual([]);
        }),
        { numRuns: 40 },
      );
    });

  it('answers any JSON with a result or with issues', () => {
    const broken = fc.tuple(fc.constantFrom(...Object.keys(calculation.spec.inputs.shape)), json).map(([key, value]) => ({
      ...(calculation.example as object),
      [key]: value,
    }));
    fc.assert(
      fc.property(fc.oneof(json, broken), (input) => {
        const result = calculation.run(input);
        if (result.ok) expect(badNumbers(result.outputs)).toEqual([]);
        else expect(result.issues.length).toBeGreaterThan(0);
      }),
      { numRuns: 80 },
    );
  });
});
