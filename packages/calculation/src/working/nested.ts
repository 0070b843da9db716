import { fieldOf } from '../field.js';
import { evaluate } from '../formula/evaluate.js';
import type { OutputField } from '../outputs.js';
import type { How } from '../step.js';
import { itemSchema } from '../walk.js';
import { unitChanges } from './changes.js';
import type { ExplainedStep } from './explained.js';
import type { Run } from './run.js';
import { scopeOf } from './scope.js';
import type { AnySpec } from './spec.js';

type Shape = AnySpec['inputs']['_zod']['def']['shape'];

/** A value of this definition as the other calculation takes it: quantities as records in SI. */
function asGiven(schema: Shape[string] | undefined, value: unknown): unknown {
  const field = schema === undefined ? undefined : fieldOf(schema);
  if (field?.type === 'quantity' && typeof value === 'number') return { value, unit: field.kind.baseUnit };
  const item = schema === undefined ? undefined : itemSchema(schema);
  if (item === undefined || !Array.isArray(value)) return value;
  return value.map((row: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(
      Object.entries(row).flatMap(([key, one]) => (one === undefined ? [] : [[key, asGiven(item._zod.def.shape[key], one)]])),
    ),
  );
}

/** The working of the calculation that made a value, and that value as it gives it. */
export function nestedWorking(how: Extract<How, { type: 'nested' }>, field: OutputField, run: Run): Partial<ExplainedStep> {
  const { calculation, inputs, output } = how;
  const scope = scopeOf(run.names, field);
  const shape = (calculation.spec as AnySpec).inputs._zod.def.shape;
  const given = Object.fromEntries(
    Object.entries(inputs).flatMap(([key, input]) => {
      if ('is' in input) return [[key, input.is]];
      const value = evaluate(input, scope);
      return value === undefined ? [] : [[key, asGiven(shape[key], value)]];
    }),
  );
  const changes = unitChanges(
    Object.values(inputs).flatMap((input) => ('is' in input ? [] : [input])),
    run,
  );
  const explained = calculation.explain(given as never);
  // Where the other calculation refuses what this one takes, there is no working to unfold; the test of all workings says so.
  if (!explained.ok) return { changes };
  const { intermediates, outputs } = explained.result as { intermediates: object; outputs: object };
  const values: Readonly<Record<string, unknown>> = { ...intermediates, ...outputs };
  return {
    changes,
    recomputed: values[output],
    nested: { definition: explained.definition, title: calculation.title, steps: explained.steps },
  };
}
