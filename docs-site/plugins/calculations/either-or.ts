import { type AnyCalculation, fieldOf, isOptional, shapeOf } from '@wallflow/calculation';
import type { FieldData } from '../../src/data/types.js';

type Input = Readonly<Record<string, unknown>>;

function missingIn(calculation: AnyCalculation, input: Input): string[] {
  const result = calculation.run(input);
  if (result.ok) return [];
  return result.issues.flatMap((issue) => (issue.code === 'missing_input' ? [String(issue.path[0])] : []));
}

/**
 * Inputs that may each stay empty, but not all of them, as diameter and volume. A definition does not list them, so the
 * calculation itself is asked: without any optional input, which does it miss, and which others does it take instead?
 */
export function eitherOr(calculation: AnyCalculation): readonly (readonly string[])[] {
  const optional = shapeOf(calculation.spec.inputs).flatMap(([key, schema]) => {
    const field = fieldOf(schema);
    const scalar =
      field !== undefined && field.type !== 'list' && isOptional(schema) && !('default' in field && field.default !== undefined);
    return scalar ? [{ key, example: field.example }] : [];
  });
  if (optional.length < 2) return [];
  const example = calculation.example as Input;
  const bare = Object.fromEntries(Object.entries(example).filter(([key]) => !optional.some((one) => one.key === key)));
  return missingIn(calculation, bare).flatMap((wanted) => {
    const helps = (key: string, value: unknown) => missingIn(calculation, { ...bare, [key]: example[key] ?? value }).length === 0;
    const group = optional.filter((one) => helps(one.key, one.example)).map((one) => one.key);
    return group.length > 1 && group.includes(wanted) ? [group] : [];
  });
}

/** The fields with the others that may be given in their place. */
export function withEitherOr(fields: readonly FieldData[], groups: readonly (readonly string[])[]): FieldData[] {
  return fields.map((field) => {
    const group = groups.find((keys) => keys.includes(field.key));
    return group === undefined || field.type === 'list' ? field : { ...field, insteadOf: group.filter((key) => key !== field.key) };
  });
}
