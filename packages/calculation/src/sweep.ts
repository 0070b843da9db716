/**
 * One input of a calculation moved from one value to another, and what that makes of its results.
 *
 * @module
 */
import type { Kind, KindName } from '@wallflow/units';
import type * as z from 'zod/mini';
import type { AnyCalculation } from './definition.js';
import { fieldOf, type InputField } from './field.js';
import type { Issue, Path, Warning } from './issue.js';
import type { OutputField, Outputs } from './outputs.js';
import { parseQuantityInput, type UncheckedQuantity } from './quantity-input.js';
import { itemSchema } from './walk.js';

/** What is moved, and how. */
export interface SweepOptions {
  /** Both ends, as text with a unit or as records; whole numbers for a count. The unit of `from` is that of the whole series. */
  readonly from: string | number | { readonly value: number; readonly unit: string };
  readonly to: string | number | { readonly value: number; readonly unit: string };
  /** How many values, both ends among them; 2 to 10 000, else 41. A count takes every whole number, or as many of them. */
  readonly points?: number;
  /** Steps of equal ratio in place of equal difference; both ends are then above zero. */
  readonly logarithmic?: boolean;
  /** Results to keep, outputs and intermediates by key; else all outputs but tables. */
  readonly results?: readonly string[];
  /** Units of results, by key; else the first of each. */
  readonly units?: Readonly<Record<string, string>>;
}

/** Values of the input that was moved. */
export interface SweptInput {
  readonly key: string;
  readonly label: string;
  /** `1` for a count. */
  readonly unit: string;
  readonly values: readonly number[];
}

/** One result along a sweep; `null` where it was refused or does not exist. */
export type SweptResult =
  | {
      readonly type: 'quantity' | 'count';
      readonly label: string;
      readonly unit: string;
      readonly values: readonly (number | null)[];
      /** The value less and plus its ±, where an input has one. */
      readonly low?: readonly (number | null)[];
      readonly high?: readonly (number | null)[];
    }
  | { readonly type: 'choice' | 'text'; readonly label: string; readonly values: readonly (string | null)[] };

/** A sweep as plain data; places in its series are counted from 0. */
export interface Sweep {
  readonly definition: { readonly id: string; readonly version: string };
  readonly input: SweptInput;
  readonly results: Readonly<Record<string, SweptResult>>;
  /** Where there is no result, and why. */
  readonly issues: readonly { readonly at: number; readonly issues: readonly Issue[] }[];
  readonly warnings: readonly { readonly at: number; readonly warnings: readonly Warning[] }[];
  /** Inputs that were left out, because the one that is moved takes their place. */
  readonly replaced: readonly string[];
}

const mostPoints = 10_000;

function pathOf(text: string): Path {
  return text.split(/[.[\]]+/).flatMap((part): (string | number)[] => (part === '' ? [] : /^\d+$/.test(part) ? [Number(part)] : [part]));
}

function fieldAt(calculation: AnyCalculation, path: Path): InputField | undefined {
  let schema: z.core.$ZodObject = calculation.spec.inputs;
  for (const [index, part] of path.entries()) {
    if (typeof part === 'number') continue;
    const { shape } = schema._zod.def;
    const child = Object.hasOwn(shape, part) ? shape[part] : undefined;
    if (child === undefined) return undefined;
    if (path.slice(index + 1).every((rest) => typeof rest === 'number')) return fieldOf(child);
    const item = itemSchema(child);
    if (item === undefined) return undefined;
    schema = item;
  }
  return undefined;
}

/** A copy with one value replaced, and without the inputs that it takes the place of. */
function withValue(input: unknown, path: Path, value: unknown, without: readonly string[]): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const own = (input as Readonly<Record<string | number, unknown>> | undefined)?.[key];
  const inner = rest.length === 0 ? value : withValue(own, rest, value, without);
  if (typeof key === 'number') return Array.isArray(input) ? input.map((one, at) => (at === key ? inner : one)) : input;
  const record = { ...(input as Readonly<Record<string, unknown>> | undefined), [key]: inner };
  return rest.length === 0 ? Object.fromEntries(Object.entries(record).filter(([name]) => !without.includes(name))) : record;
}

function valueAt(input: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, key) => (value as Readonly<Record<string | number, unknown>> | undefined)?.[key], input);
}

function spaced(from: number, to: number, count: number, logarithmic: boolean): number[] {
  const at = (index: number) => {
    if (index === 0) return from;
    if (index === count - 1) return to;
    const share = index / (count - 1);
    const value = logarithmic ? from * (to / from) ** share : from + (to - from) * share;
    return Number(value.toPrecision(12));
  };
  return Array.from({ length: count }, (_, index) => at(index));
}

interface Moved {
  readonly unit: string;
  readonly values: readonly number[];
  given(value: number): unknown;
}

function endOf(
  field: Extract<InputField, { type: 'quantity' }>,
  end: SweepOptions['from'],
  unit: string | undefined,
): { value: number; unit: string } {
  // The range is looked at point by point, so that a sweep may run out of it.
  const anywhere = { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY, minInclusive: true, maxInclusive: true };
  const read = parseQuantityInput({ ...field, limits: anywhere }, end as UncheckedQuantity);
  if (!read.ok)
    throw new TypeError(`${field.label}: "${typeof end === 'object' ? `${end.value} ${end.unit}` : end}" is no end of a series`);
  const shownIn = unit ?? read.unit;
  return { value: Number((field.kind as Kind<KindName>).in(read.quantity, shownIn as never).toPrecision(12)), unit: shownIn };
}

function movedBy(field: InputField, options: SweepOptions, given: unknown): Moved {
  const { points, logarithmic = false } = options;
  if (points !== undefined && !(Number.isInteger(points) && points >= 2 && points <= mostPoints)) {
    throw new TypeError(`a series has 2 to ${mostPoints} points, not ${points}`);
  }
  const check = (from: number, to: number) => {
    if (logarithmic && !(from > 0 && to > 0)) throw new TypeError('steps of equal ratio need both ends above zero');
  };
  if (field.type === 'count') {
    const [from, to] = [Number(options.from), Number(options.to)];
    if (!Number.isInteger(from) || !Number.isInteger(to)) throw new TypeError(`${field.label} is a whole number`);
    check(from, to);
    const count = Math.min(points ?? mostPoints, Math.abs(to - from) + 1);
    const values = [...new Set(count === 1 ? [from] : spaced(from, to, count, logarithmic).map(Math.round))];
    return { unit: '1', values, given: (value) => value };
  }
  if (field.type !== 'quantity') throw new TypeError(`${field.label} is no number that can be moved`);
  const from = endOf(field, options.from, undefined);
  const to = endOf(field, options.to, from.unit);
  check(from.value, to.value);
  // A ± that the input had stays beside every value of it.
  const read = given === undefined ? undefined : parseQuantityInput(field, given as UncheckedQuantity);
  const spread = read?.ok === true ? read.uncertainty : undefined;
  return {
    unit: from.unit,
    values: spaced(from.value, to.value, points ?? 41, logarithmic),
    given: (value) => ({
      value,
      unit: from.unit,
      ...(spread === undefined
        ? {}
        : { uncertainty: (field.kind as Kind<KindName>).differenceIn(spread, from.unit as never, siOf(field, value, from.unit)) }),
    }),
  };
}

function siOf(field: Extract<InputField, { type: 'quantity' }>, value: number, unit: string): number {
  const parsed = field.kind.parse(value, unit);
  return parsed.ok ? parsed.quantity : 1;
}

type Values = Readonly<Record<string, unknown>>;
type Point = { readonly values: Values; readonly spread: Readonly<Record<string, number>> } | undefined;

function series(key: string, field: OutputField, points: readonly Point[], unit: string | undefined): SweptResult {
  const at = (point: Point) => point?.values[key];
  if (field.type === 'choice' || field.type === 'text') {
    return { type: field.type, label: field.label, values: points.map((point) => (at(point) as string | undefined) ?? null) };
  }
  if (field.type === 'table') throw new TypeError(`${field.label} is a table and has no series`);
  if (field.type === 'count') {
    return { type: 'count', label: field.label, unit: '1', values: points.map((point) => (at(point) as number | undefined) ?? null) };
  }
  const kind = field.kind as Kind<KindName>;
  const shownIn = unit ?? field.units[0] ?? kind.baseUnit;
  if (!(kind.units as readonly string[]).includes(shownIn)) throw new TypeError(`${field.label} cannot be shown in "${shownIn}"`);
  const shown = (si: number | undefined) => (si === undefined ? null : Number(kind.in(kind.si(si), shownIn as never).toPrecision(12)));
  const moved = (sign: number) =>
    points.map((point) => {
      const value = at(point) as number | undefined;
      return shown(value === undefined ? undefined : value + sign * (point?.spread[key] ?? 0));
    });
  const hasBand = points.some((point) => point?.spread[key] !== undefined);
  // In a unit that counts the other way round the larger number is the lower end.
  const turned = kind.in(kind.si(2), shownIn as never) < kind.in(kind.si(1), shownIn as never);
  return {
    type: 'quantity',
    label: field.label,
    unit: shownIn,
    values: moved(0),
    ...(hasBand ? { low: moved(turned ? 1 : -1), high: moved(turned ? -1 : 1) } : {}),
  };
}

/**
 * Move one input from one value to another and work the calculation out at each: a series for every result, with the band that the ±
 * of the inputs make of it. Values that are refused leave a gap and an issue. Inputs that the moved one takes the place of are left
 * out, as the volume of a filter is where its diameter is moved.
 *
 * @param input - all other inputs, as `run` takes them; a ± of the moved one stays beside each of its values
 * @param key - the input to move; within a list or group its path, such as `readings[0].gasTemperature`
 * @throws `TypeError` for an input, an end, a result or a unit that does not exist
 */
export function sweep(calculation: AnyCalculation, input: unknown, key: string, options: SweepOptions): Sweep {
  const path = pathOf(key);
  const field = fieldAt(calculation, path);
  if (field === undefined) throw new TypeError(`${key} is no input of ${calculation.title}`);
  const moved = movedBy(field, options, valueAt(input, path));
  const fields: Outputs = { ...calculation.spec.intermediates, ...calculation.spec.outputs };
  const outputs = Object.entries(calculation.spec.outputs as Outputs).filter(([, { type }]) => type !== 'table');
  const wanted = options.results ?? outputs.map(([name]) => name);
  const unknown = wanted.find((name) => !Object.hasOwn(fields, name));
  if (unknown !== undefined) throw new TypeError(`${unknown} is no result of ${calculation.title}`);

  const own = String(path.findLast((part) => typeof part === 'string'));
  const alternatives = field.rules?.oneOf?.both === 'allowed' ? [] : (field.rules?.oneOf?.keys ?? []).filter((other) => other !== own);
  const holder = valueAt(input, path.slice(0, -1)) as Values | undefined;
  const replaced = alternatives.filter((other) => holder?.[other] !== undefined);

  const issues: { at: number; issues: readonly Issue[] }[] = [];
  const warnings: { at: number; warnings: readonly Warning[] }[] = [];
  const points = moved.values.map((value, at): Point => {
    const result = calculation.runUnknown(withValue(input, path, moved.given(value), replaced));
    if (!result.ok) {
      issues.push({ at, issues: result.issues });
      return undefined;
    }
    if (result.warnings.length > 0) warnings.push({ at, warnings: result.warnings });
    return { values: { ...result.intermediates, ...result.outputs }, spread: result.uncertainty?.values ?? {} };
  });
  return {
    definition: { id: calculation.id, version: calculation.version },
    input: { key, label: field.label, unit: moved.unit, values: moved.values },
    results: Object.fromEntries(
      wanted.map((name) => [name, series(name, fields[name] as OutputField, points, options.units?.[name])] as const),
    ),
    issues,
    warnings,
    replaced,
  };
}
