import type { Kind, KindName, Quantity } from '@wallflow/units';
import * as z from 'zod/mini';
import { $ZodObject } from 'zod/v4/core';
import { exampleOf } from './example.js';
import { describeField, type FieldText, type InputField, type QuantityField } from './field.js';
import { parseQuantityInput, type QuantityInput, type QuantityLimits, type UncheckedQuantity } from './quantity-input.js';
import { readRange } from './range.js';
import type { InputRecord } from './rules.js';
import type { UsualReason } from './usual-reason.js';

/** A value that stands in where nothing is given, and why it may. */
type WithReason<T> = readonly [value: T, reason: string];

/** How a quantity input is described; every value is text with a unit. */
export interface QuantityOptions<K extends KindName> extends FieldText {
  readonly symbol: string;
  /** Where the input stops making sense at both ends, such as `'0 < x <= 10000 m3/h'` or `'-60 <= T <= 1500 degC'`. */
  readonly range?: string;
  /** The same in parts: least value, such as `'0 mbar'`; `above` excludes the value itself. */
  readonly min?: string;
  readonly above?: string;
  readonly max?: string;
  readonly below?: string;
  /** Where the source says that the formula holds, and why it warns outside. */
  readonly usual?: readonly [from: string, to: string] | readonly [from: string, to: string, reason: UsualReason];
  /** Left out where there is a default, which is then the example too. */
  readonly example?: string;
  readonly units?: readonly Parameters<Kind<K>['in']>[1][];
}

type QuantitySchema<K extends KindName> = z.core.$ZodType<Quantity<K>, QuantityInput<K>>;

function definitionValue<K extends KindName>(kind: Kind<K>, text: string, label: string): number {
  const parsed = kind.parse(text);
  if (!parsed.ok) throw new Error(`${label}: "${text}" is not a ${kind.label}: ${parsed.issue.code}`);
  return parsed.quantity;
}

function limitsOf<K extends KindName>(kind: Kind<K>, options: QuantityOptions<K>): QuantityLimits {
  if (options.range !== undefined) {
    const { min, max, minInclusive, maxInclusive } = readRange(options.range, options.label);
    return {
      min: definitionValue(kind, min, options.label),
      max: definitionValue(kind, max, options.label),
      minInclusive,
      maxInclusive,
    };
  }
  const at = (text: string | undefined) => (text === undefined ? undefined : definitionValue(kind, text, options.label));
  const min = at(options.min ?? options.above);
  const max = at(options.max ?? options.below);
  if (min === undefined || max === undefined) {
    throw new Error(`${options.label}: a quantity input states where it stops making sense at both ends`);
  }
  return { min, max, minInclusive: options.min !== undefined, maxInclusive: options.max !== undefined };
}

type DefaultOptions = { readonly default?: WithReason<string> | undefined };

function defaultOf<T>({ default: given }: { readonly default?: WithReason<T> | undefined }) {
  return given === undefined ? {} : { default: given[0], defaultReason: given[1] };
}

/** The example, or the default in its place. */
function shownExample<T>(options: FieldText & { readonly example?: T }, standard: T | undefined): T {
  const example = options.example ?? standard;
  if (example === undefined) throw new Error(`${options.label}: an input without a default has an example`);
  return example;
}

function quantityField<K extends KindName>(kind: Kind<K>, options: QuantityOptions<K> & DefaultOptions): QuantityField<K> {
  const standard = defaultOf<string>(options);
  const example = shownExample(options, standard.default);
  const limits = limitsOf(kind, options);
  for (const text of [example, ...(standard.default === undefined ? [] : [standard.default])]) {
    const { min, max, minInclusive, maxInclusive } = limits;
    const value = definitionValue(kind, text, options.label);
    const slack = 1e-12 * Math.abs(value);
    const low = minInclusive ? value < min - slack : value <= min;
    if (low || (maxInclusive ? value > max + slack : value >= max))
      throw new Error(`${options.label}: "${text}" is outside its own limits`);
  }
  const usual = options.usual;
  const usualReason = usual?.[2];
  return {
    type: 'quantity',
    kind,
    symbol: options.symbol,
    label: options.label,
    ...(options.description === undefined ? {} : { description: options.description }),
    limits,
    ...(usual === undefined
      ? {}
      : { usual: [definitionValue(kind, usual[0], options.label), definitionValue(kind, usual[1], options.label)] as const }),
    ...(usualReason === undefined ? {} : { usualReason }),
    example,
    ...standard,
    units: options.units ?? kind.units,
  };
}

/** What a JSON Schema says of an input in words. */
function named<S extends z.core.$ZodType>(schema: S, text: FieldText, others: Readonly<Record<string, unknown>> = {}): S {
  const description = text.description === undefined ? {} : { description: text.description };
  z.globalRegistry.add(schema, { title: text.label, ...description, ...others });
  return schema;
}

/** The schema, or with a standard value one that takes it where nothing is given. */
function orDefault(schema: z.core.$ZodType, standard: unknown): z.core.$ZodType {
  return standard === undefined ? schema : z.prefault(schema, standard);
}

let quantityForms: z.core.$ZodType<UncheckedQuantity> | undefined;

/** The forms in which any quantity is given; one schema for all inputs, as making one takes longer than reading a definition. */
function acceptedForms(): z.core.$ZodType<UncheckedQuantity> {
  const typed = z.union([z.number(), z.string()]);
  // A bare number is let through to the parser, which refuses it with the units to choose from
  // unless the kind has none to name.
  quantityForms ??= z.union([
    z.string(),
    z.strictObject({ value: typed, unit: z.string(), uncertainty: z.optional(typed) }),
    z.number(),
  ]) as z.core.$ZodType<UncheckedQuantity>;
  return quantityForms;
}

function quantitySchema<K extends KindName>(field: QuantityField<K>): QuantitySchema<K> {
  const read = z.transform((raw: UncheckedQuantity, context) => {
    const parsed = parseQuantityInput(field, raw);
    if (parsed.ok) return parsed.quantity;
    context.issues.push({ code: 'custom', input: raw, params: { issue: parsed.issue } });
    return z.NEVER;
  });
  return named(z.pipe(acceptedForms(), read), field, {
    'x-kind': field.kind.kind,
    'x-units': field.units,
  }) as unknown as QuantitySchema<K>;
}

/**
 * An input that is a quantity of one kind, typed as `"95 mbar"`, `"95 ± 2 mbar"` or
 * `{ value: 360, unit: "mbar" }`. Leaving it out is an issue, unless it has a default with a reason,
 * `default: ['20 °C', 'room temperature']`, which the result then lists as an assumption.
 */
export function quantity<K extends KindName>(
  kind: Kind<K>,
  options: QuantityOptions<K> & { readonly default: WithReason<string> },
): z.core.$ZodPrefault<QuantitySchema<K>>;
export function quantity<K extends KindName>(
  kind: Kind<K>,
  options: QuantityOptions<K> & { readonly example: string; readonly default?: undefined },
): QuantitySchema<K>;
export function quantity<K extends KindName>(kind: Kind<K>, options: QuantityOptions<K> & DefaultOptions): z.core.$ZodType {
  const field = quantityField(kind, options);
  const schema = quantitySchema(field);
  return describeField(orDefault(schema, field.default), field as unknown as InputField);
}

/** A quantity that may be left out; the result then lists the default as an assumption. */
export function quantityWithDefault<K extends KindName>(
  kind: Kind<K>,
  options: QuantityOptions<K> & { readonly default: string; readonly defaultReason: string },
): z.core.$ZodPrefault<QuantitySchema<K>> {
  const { default: standard, defaultReason, ...others } = options;
  return quantity(kind, { ...others, default: [standard, defaultReason] });
}

type ChoiceSchema<O> = z.core.$ZodType<keyof O & string, keyof O & string>;

/** One of a few named possibilities; with `default: ['none', 'not stated']` it may be left out. */
export function choice<const O extends Readonly<Record<string, string>>>(
  options: FieldText & { readonly options: O; readonly example?: keyof O & string; readonly default: WithReason<keyof O & string> },
): z.core.$ZodPrefault<ChoiceSchema<O>>;
export function choice<const O extends Readonly<Record<string, string>>>(
  options: FieldText & { readonly options: O; readonly example: keyof O & string; readonly default?: undefined },
): ChoiceSchema<O>;
export function choice(
  options: FieldText & {
    readonly options: Readonly<Record<string, string>>;
    readonly example?: string;
    readonly default?: WithReason<string> | undefined;
  },
): z.core.$ZodType {
  const { default: given, ...others } = options;
  const standard = given === undefined ? {} : defaultOf<string>({ default: given });
  const schema = choiceSchema(options.options, options);
  return describeField(orDefault(schema, standard.default), {
    type: 'choice',
    ...others,
    example: shownExample(options, standard.default),
    ...standard,
  });
}

function choiceSchema<O extends Readonly<Record<string, string>>>(options: O, text: FieldText): ChoiceSchema<O> {
  const keys = Object.keys(options) as [string, ...string[]];
  return named(z.enum(keys), text) as unknown as ChoiceSchema<O>;
}

/** What an input stands at where nothing is given, with its reason; it is then the example too. */
interface Default<T> {
  readonly example?: T;
  readonly default?: WithReason<T>;
}

/** A whole number: cylinders, passes, cells. A string of digits is accepted, as a form gives it. */
export function count(
  options: FieldText & { readonly symbol: string; readonly min: number; readonly max: number } & Default<number>,
): z.core.$ZodType<number, number | string> {
  const accepted = z.union([z.number(), z.string().check(z.maxLength(20), z.regex(/^\s*[+-]?\d+\s*$/))]);
  const whole = z.int().check(z.gte(options.min), z.lte(options.max));
  const read = z.transform((raw: number | string) => Number(raw));
  const base = named(z.pipe(z.pipe(accepted, read), whole), options);
  const { default: _, ...others } = options;
  const standard = defaultOf<number>(options);
  const schema = orDefault(base, standard.default);
  describeField(schema, { type: 'count', ...others, example: shownExample(options, standard.default), ...standard });
  return schema as unknown as z.core.$ZodType<number, number | string>;
}

// Without a flag, which a JSON Schema has no place for.
const yesOrNo = /^\s*(?:[Yy][Ee][Ss]|[Nn][Oo]|[Tt][Rr][Uu][Ee]|[Ff][Aa][Ll][Ss][Ee])\s*$/;

/** Yes or no. A form's or a command line's `"yes"`, `"no"`, `"true"`, `"false"` are accepted, in upper and lower case. */
export function flag(options: FieldText & Default<boolean>): z.core.$ZodType<boolean, boolean | string> {
  const accepted = z.union([z.boolean(), z.string().check(z.maxLength(20), z.regex(yesOrNo))]);
  const read = z.transform((raw: boolean | string) => raw === true || (typeof raw === 'string' && /yes|true/i.test(raw)));
  const base = named(z.pipe(accepted, read), options);
  const { default: _, ...others } = options;
  const standard = defaultOf<boolean>(options);
  const schema = orDefault(base, standard.default);
  describeField(schema, { type: 'flag', ...others, example: shownExample(options, standard.default), ...standard });
  return schema as unknown as z.core.$ZodType<boolean, boolean | string>;
}

/** A short text that the calculation passes on, such as the name of a sample. */
export function text(options: FieldText & { readonly example: string; readonly maxLength?: number }): z.core.$ZodType<string, string> {
  const maxLength = options.maxLength ?? 200;
  const schema = named(z.string().check(z.maxLength(maxLength)), { label: options.label });
  return describeField(schema, { type: 'text', ...options, maxLength });
}

/** Inputs as a record, or as an object schema of one. */
export type Shape = InputRecord | z.core.$ZodObject;
/** The object schema of a record of inputs. */
export type ObjectOf<S> = S extends z.core.$ZodObject
  ? S
  : S extends InputRecord
    ? z.core.$ZodObject<{ -readonly [Key in keyof S]: S[Key] }, z.core.$strict>
    : never;
/** What a record of inputs gives once it is checked: branded SI numbers, keys of choices, lists. */
export type CheckedOf<S> = z.output<ObjectOf<S>>;
/** What is accepted for a record of inputs. */
export type GivenOf<S> = z.input<ObjectOf<S>>;

/** The object schema of inputs, which no other keys may join. */
export function objectOf<S extends Shape>(shape: S): ObjectOf<S> {
  return (shape instanceof $ZodObject ? shape : z.strictObject(shape as z.core.$ZodLooseShape)) as ObjectOf<S>;
}

/** A list of records, each with inputs of its own: measured points, containers, steps of a schedule. */
export function list<const S extends Shape>(
  item: S,
  options: FieldText & { readonly min: number; readonly max: number; readonly example: readonly GivenOf<S>[] },
): z.core.$ZodArray<ObjectOf<S>> {
  const schema = named(z.array(objectOf(item)).check(z.minLength(options.min), z.maxLength(options.max)), options);
  describeField(schema, { type: 'list', ...options } as unknown as InputField);
  return schema as unknown as z.core.$ZodArray<ObjectOf<S>>;
}

/** A list that may be left out; it is then empty, and the result lists that as an assumption. */
export function listOrNone<const S extends Shape>(
  item: S,
  options: FieldText & { readonly max: number; readonly example: readonly GivenOf<S>[] },
): z.core.$ZodPrefault<z.core.$ZodArray<ObjectOf<S>>> {
  const schema = orDefault(list(item, { ...options, min: 0 }), []);
  describeField(schema, { type: 'list', ...options, min: 0, default: [] } as unknown as InputField);
  return schema as unknown as z.core.$ZodPrefault<z.core.$ZodArray<ObjectOf<S>>>;
}

/** A record of inputs within the input, with a heading of its own: `ambient: group({ temperature: …, pressure: … }, …)`. */
export function group<const S extends Shape>(fields: S, options: FieldText): ObjectOf<S> {
  const schema = named(z.clone(objectOf(fields) as z.core.$ZodObject), options);
  describeField(schema, { type: 'group', ...options, example: exampleOf(schema) });
  return schema as unknown as ObjectOf<S>;
}
