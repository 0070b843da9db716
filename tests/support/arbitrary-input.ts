import { type AnyCalculation, fieldOf, type InputField, isOptional, itemSchema, shapeOf } from '@wallflow/calculation';
import type { Kind, KindName } from '@wallflow/units';
import fc from 'fast-check';
import type * as z from 'zod/mini';

type QuantityInputField = Extract<InputField, { type: 'quantity' }>;

/** A value between two bounds: log-uniform where they are positive and far apart. */
function between(min: number, max: number): fc.Arbitrary<number> {
  if (min > 0 && max / min > 1e3) {
    return fc
      .double({ min: Math.log(min), max: Math.log(max), noNaN: true, noDefaultInfinity: true })
      .map((x) => Math.min(max, Math.max(min, Math.exp(x))));
  }
  return fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

/** SI values of a quantity where the formula is said to hold, or where it makes sense. */
function siValues(field: QuantityInputField): fc.Arbitrary<number> {
  const { min, max, minInclusive, maxInclusive } = field.limits;
  const [low, high] = field.usual ?? [min, max];
  const span = high - low;
  const from = minInclusive || low > min ? low : low + 1e-3 * span;
  const to = maxInclusive || high < max ? high : high - 1e-3 * span;
  // Denormal or nearly vanishing magnitudes are not physics, nor are such distances from the upper end; zero and the end stay.
  const floor = 1e-12 * Math.max(Math.abs(low), Math.abs(high));
  return between(from, to)
    .map((value) => (Math.abs(value) < floor ? 0 : to - value < floor ? to : value))
    .filter((value) => (minInclusive ? value >= min : value > min));
}

export interface UnitChoice {
  readonly unit: string;
}

/** The same physical input twice: as SI numbers in records, and in randomly chosen units. */
export interface TwinInput {
  readonly si: Record<string, unknown>;
  readonly other: Record<string, unknown>;
}

function quantityTwin(field: QuantityInputField): fc.Arbitrary<{ si: unknown; other: unknown }> {
  const kind = field.kind as Kind<KindName>;
  return fc.tuple(siValues(field), fc.constantFrom(...kind.units)).map(([value, unit]) => {
    const converted = kind.in(kind.si(value), unit as never);
    const usable = Number.isFinite(converted);
    return {
      si: { value, unit: kind.baseUnit },
      other: usable ? { value: converted, unit } : { value, unit: kind.baseUnit },
    };
  });
}

/** Rows of a log, which are refused in any other order. */
function inOrderOfTime(rows: readonly TwinInput[]): readonly TwinInput[] {
  const timeOf = (row: TwinInput) => (row.si.time as { value?: number } | undefined)?.value ?? 0;
  return rows.toSorted((a, b) => timeOf(a) - timeOf(b));
}

function fieldTwin(schema: z.core.$ZodType): fc.Arbitrary<{ si: unknown; other: unknown }> {
  const field = fieldOf(schema);
  const same = <T>(arbitrary: fc.Arbitrary<T>) => arbitrary.map((value) => ({ si: value as unknown, other: value as unknown }));
  switch (field?.type) {
    case 'quantity':
      return quantityTwin(field);
    case 'choice':
      return same(fc.constantFrom(...Object.keys(field.options)));
    case 'count':
      return same(fc.integer({ min: field.min, max: Math.min(field.max, field.min + 200) }));
    case 'flag':
      return same(fc.boolean());
    case 'text':
      return same(fc.string({ minLength: 1, maxLength: 10 }));
    case 'list': {
      const item = itemSchema(schema);
      if (item === undefined) throw new Error(`${field.label}: a list without an item schema`);
      return fc
        .array(objectTwin(item), { minLength: field.min, maxLength: Math.min(field.max, field.min + 4) })
        .map(inOrderOfTime)
        .map((rows) => ({ si: rows.map((row) => row.si), other: rows.map((row) => row.other) }));
    }
    case 'group': {
      const item = itemSchema(schema);
      if (item === undefined) throw new Error(`${field.label}: a group without inputs`);
      return objectTwin(item);
    }
    default:
      throw new Error('an input without field metadata');
  }
}

/** Keys to leave out so that sets of inputs keep their rules: one or, where that is allowed, more of them; all or none. */
function leftOut(schema: z.core.$ZodObject): fc.Arbitrary<ReadonlySet<string>> {
  const rules = shapeOf(schema).map(([, child]) => fieldOf(child)?.rules);
  const choices = [...new Set(rules.flatMap((rule) => rule?.oneOf ?? []))].map(({ keys, required, both }) => {
    const one = fc.constantFrom(...keys).map((kept) => keys.filter((key) => key !== kept));
    const others = [...(required ? [] : [keys]), ...(both === 'refused' ? [] : [[]])].map((out) => fc.constant(out));
    return fc.oneof({ weight: 3, arbitrary: one }, ...others);
  });
  const parts = [...new Set(rules.flatMap((rule) => rule?.together ?? []))].map(({ keys }) => fc.constantFrom<readonly string[]>([], keys));
  return fc.tuple(...choices, ...parts).map((sets) => new Set(sets.flat()));
}

function objectTwin(schema: z.core.$ZodObject): fc.Arbitrary<TwinInput> {
  const entries = shapeOf(schema).map(([key, child]) => {
    const twin = fieldTwin(child);
    const rules = fieldOf(child)?.rules;
    const mayBeMissing = isOptional(child) && rules?.needed !== true && rules?.oneOf === undefined && rules?.together === undefined;
    return [key, mayBeMissing ? fc.option(twin, { nil: undefined, freq: 3 }) : twin] as const;
  });
  return fc.tuple(fc.record(Object.fromEntries(entries)), leftOut(schema)).map(([record, out]) => {
    const present = Object.entries(record).filter(
      (entry): entry is [string, { si: unknown; other: unknown }] => entry[1] !== undefined && !out.has(entry[0]),
    );
    return {
      si: Object.fromEntries(present.map(([key, value]) => [key, value.si])),
      other: Object.fromEntries(present.map(([key, value]) => [key, value.other])),
    };
  });
}

/** Inputs of a calculation, each twice in different units. */
export function twinInput(calculation: AnyCalculation): fc.Arbitrary<TwinInput> {
  return objectTwin(calculation.spec.inputs as z.core.$ZodObject);
}
