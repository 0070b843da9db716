import { type AnyCalculation, fieldOf, shapeOf } from '@wallflow/calculation';
import type { FieldData } from '../../src/data/types.js';

type OnlyWith = NonNullable<FieldData['onlyWith']>;

/** Inputs that count with some options of a choice only, as the manifold pressure does where air is worked out from speed and density. */
export function onlyWith(calculation: AnyCalculation): ReadonlyMap<string, OnlyWith> {
  const fields = new Map(shapeOf(calculation.spec.inputs).map(([key, schema]) => [key, fieldOf(schema)]));
  return new Map(
    [...fields].flatMap(([key, field]) => {
      const when = field?.rules?.when?.find((rule) => rule.is !== undefined && fields.get(rule.key)?.type === 'choice');
      return when?.is === undefined ? [] : [[key, { choice: when.key, options: when.is.map(String) }] as const];
    }),
  );
}

/** The fields, each with the options without which it is ignored. */
export function withOnlyWith(fields: readonly FieldData[], found: ReadonlyMap<string, OnlyWith>): FieldData[] {
  return fields.map((field) => {
    const only = found.get(field.key);
    return only === undefined ? field : { ...field, onlyWith: only };
  });
}
