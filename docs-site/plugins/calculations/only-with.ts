import { type AnyCalculation, fieldOf, type InputField, isOptional, shapeOf } from '@wallflow/calculation';
import type { FieldData } from '../../src/data/types.js';

type Input = Readonly<Record<string, unknown>>;
type OnlyWith = NonNullable<FieldData['onlyWith']>;

interface Named {
  readonly key: string;
  readonly field: InputField;
  readonly optional: boolean;
}

const mostOptions = 8;

/** The input completed with examples of what it still misses; undefined where that leads to no result. */
function completed(calculation: AnyCalculation, input: Input, examples: Input): Input | undefined {
  let whole = input;
  for (let tries = 0; tries <= Object.keys(examples).length; tries += 1) {
    const result = calculation.run(whole);
    if (result.ok) return whole;
    const missing = result.issues.flatMap((issue) => (issue.code === 'missing_input' ? [String(issue.path[0])] : []));
    const more = missing.filter((key) => whole[key] === undefined && examples[key] !== undefined);
    if (more.length === 0) return undefined;
    whole = { ...whole, ...Object.fromEntries(more.map((key) => [key, examples[key]])) };
  }
  return undefined;
}

function answers(calculation: AnyCalculation, input: Input): string | undefined {
  const result = calculation.run(input);
  if (!result.ok) return undefined;
  // A calculation that says itself that it does not use an input answers as it does without.
  const warnings = result.warnings.filter(({ code }: { readonly code: string }) => code !== 'input_not_used');
  return JSON.stringify([result.outputs, result.intermediates, warnings]);
}

/**
 * Inputs that count with some options of a choice only, as the manifold pressure does where air is worked out from speed
 * and density. A definition does not list them, so the calculation itself is asked: an input is listed when it is missed
 * with some options, and changes nothing of the result, warnings included, with all others.
 */
export function onlyWith(calculation: AnyCalculation): ReadonlyMap<string, OnlyWith> {
  const all = shapeOf(calculation.spec.inputs).flatMap(([key, schema]): Named[] => {
    const field = fieldOf(schema);
    return field === undefined ? [] : [{ key, field, optional: isOptional(schema) }];
  });
  const example = calculation.example as Input;
  const examples: Input = Object.fromEntries(
    all.flatMap(({ key, field }) => {
      const value = example[key] ?? (field.type === 'list' ? undefined : field.example);
      return value === undefined ? [] : [[key, value]];
    }),
  );
  const open = all.filter(
    ({ field, optional }) => optional && field.type !== 'list' && !('default' in field && field.default !== undefined),
  );
  const needed = Object.fromEntries(
    all.filter(({ optional }) => !optional).flatMap(({ key }) => (examples[key] === undefined ? [] : [[key, examples[key]]])),
  );
  const found = new Map<string, OnlyWith>();
  for (const choice of all) {
    if (choice.field.type !== 'choice' || Object.keys(choice.field.options).length > mostOptions) continue;
    const wholes = Object.keys(choice.field.options).flatMap((option) => {
      const whole = completed(calculation, { ...needed, [choice.key]: option }, examples);
      return whole === undefined ? [] : [{ option, whole }];
    });
    if (wholes.length < 2) continue;
    for (const { key } of open) {
      const missed = wholes.filter(({ whole }) => whole[key] !== undefined);
      const others = wholes.filter(({ whole }) => whole[key] === undefined);
      if (key === choice.key || found.has(key) || missed.length === 0 || others.length === 0) continue;
      const ignored = others.every(({ whole }) => answers(calculation, whole) === answers(calculation, { ...whole, [key]: examples[key] }));
      if (ignored) found.set(key, { choice: choice.key, options: missed.map(({ option }) => option) });
    }
  }
  return found;
}

/** The fields, each with the options without which it is ignored. */
export function withOnlyWith(fields: readonly FieldData[], found: ReadonlyMap<string, OnlyWith>): FieldData[] {
  return fields.map((field) => {
    const only = found.get(field.key);
    return only === undefined ? field : { ...field, onlyWith: only };
  });
}
