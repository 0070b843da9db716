import { type AnyCalculation, fieldOf, type InputField, isOptional, itemSchema, shapeOf } from '@wallflow/calculation';
import type * as z from 'zod/mini';

type QuantityInputField = Extract<InputField, { type: 'quantity' }>;
type Random = () => number;

/** Numbers from 0 to 1 that are the same in every run (minimal standard generator of Park and Miller, 1988). */
export function seeded(seed: number): Random {
  let state = seed;
  return () => {
    state = (16807 * state) % 2147483647;
    return state / 2147483647;
  };
}

/** A value near an end of what is accepted, or anywhere between; over decades where the limits are decades apart. */
function anyValue({ limits: { min, max } }: QuantityInputField, random: Random): number {
  const at = [0.001, 0.999, random(), random()][Math.floor(4 * random())] ?? 0.5;
  if (min >= 0 && max / Math.max(min, 1e-9 * max) > 1e3) {
    const low = Math.log(Math.max(min, 1e-9 * max));
    return Math.exp(low + at * (Math.log(max) - low));
  }
  return min + at * (max - min);
}

function exampleValue(field: QuantityInputField, given: unknown): number {
  const read = typeof given === 'string' ? field.kind.parse(given) : undefined;
  const own = field.kind.parse(field.example);
  if (read?.ok === true) return read.quantity;
  if (own.ok) return own.quantity;
  throw new Error(`${field.label}: the example cannot be read`);
}

/** An uncertainty of one per cent, or of a thousandth of the largest value for what is about nothing. */
function record({ kind, limits }: QuantityInputField, value: number) {
  const spread = Math.max(0.01 * Math.abs(value), 1e-6 * Math.max(Math.abs(limits.min), Math.abs(limits.max)));
  return { value, unit: kind.baseUnit, uncertainty: Number.isFinite(spread) ? spread : 0 };
}

/** The rows of an example stretched to as many as a list takes: between its rows in equal steps, so that rising times still rise. */
function stretched(item: z.core.$ZodObject, rows: readonly Record<string, unknown>[], count: number): Record<string, unknown>[] {
  return Array.from({ length: count }, (_, index) => {
    const place = count === 1 ? 0 : (index / (count - 1)) * (rows.length - 1);
    const [before, after] = [rows[Math.floor(place)] ?? {}, rows[Math.ceil(place)] ?? {}];
    const part = place - Math.floor(place);
    const entries = shapeOf(item).flatMap(([key, schema]): [string, unknown][] => {
      const field = fieldOf(schema);
      if (before[key] === undefined) return [];
      if (field?.type !== 'quantity') return [[key, before[key]]];
      const [low, high] = [exampleValue(field, before[key]), exampleValue(field, after[key] ?? before[key])];
      return [[key, record(field, low + part * (high - low))]];
    });
    return Object.fromEntries(entries);
  });
}

/**
 * The example of a calculation with a ± at every number, some inputs moved anywhere within their limits, counts at their greatest,
 * and lists of the greatest length: what takes longest among inputs that are accepted.
 */
export function worstInput(calculation: AnyCalculation, moved: number, random: Random): Record<string, unknown> {
  const example = calculation.example as Record<string, unknown>;
  const shape = shapeOf(calculation.spec.inputs);
  const chosen = new Set(Array.from({ length: moved }, () => shape[Math.floor(random() * shape.length)]?.[0]));
  const entries = shape.flatMap(([key, schema]): [string, unknown][] => {
    const field = fieldOf(schema);
    if (example[key] === undefined && isOptional(schema) && !chosen.has(key)) return [];
    switch (field?.type) {
      case 'quantity':
        return [[key, record(field, chosen.has(key) ? anyValue(field, random) : exampleValue(field, example[key]))]];
      case 'count':
        return [[key, chosen.has(key) ? field.max : (example[key] ?? field.example)]];
      case 'choice': {
        const options = Object.keys(field.options);
        return [[key, chosen.has(key) ? options[Math.floor(random() * options.length)] : (example[key] ?? field.example)]];
      }
      case 'list': {
        const item = itemSchema(schema);
        const rows = (example[key] ?? field.example) as readonly Record<string, unknown>[];
        if (item === undefined) return [];
        return [[key, stretched(item, rows, chosen.has(key) && rows.length > 0 ? field.max : rows.length)]];
      }
      default:
        return example[key] === undefined ? [] : [[key, example[key]]];
    }
  });
  return Object.fromEntries(entries);
}
