import type { Kind, KindName, Quantity } from '@wallflow/units';
import * as z from 'zod';
import { parseQuantityInput, type QuantityInput, type QuantityLimits } from './quantity-input.js';
import type { UsualReason } from './usual-reason.js';

/** What a form, a page or a message needs to know of one input, whatever its type. */
interface FieldText {
  /** Full name as the trade says it. */
  readonly label: string;
  /** One sentence: what it is and where to get it. */
  readonly description?: string;
}

/** Metadata of a quantity input. Texts with units are parsed once, when the definition is made. */
export interface QuantityField<K extends KindName = KindName> extends FieldText {
  readonly type: 'quantity';
  readonly kind: Kind<K>;
  /** TeX symbol. */
  readonly symbol: string;
  readonly limits: QuantityLimits;
  /** Where the source says that the formula holds; outside it the result carries a warning. */
  readonly usual?: readonly [number, number];
  readonly usualReason?: UsualReason;
  readonly example: string;
  readonly default?: string;
  readonly defaultReason?: string;
  /** Units to offer, most usual first. */
  readonly units: readonly string[];
}

/** Metadata of a choice. */
export interface ChoiceField extends FieldText {
  readonly type: 'choice';
  /** Key and the words a person reads for it. */
  readonly options: Readonly<Record<string, string>>;
  readonly example: string;
  readonly default?: string;
  readonly defaultReason?: string;
}

/** Metadata of a whole number. */
export interface CountField extends FieldText {
  readonly type: 'count';
  readonly symbol: string;
  readonly min: number;
  readonly max: number;
  readonly example: number;
  readonly default?: number;
  readonly defaultReason?: string;
}

/** Metadata of a yes or no. */
export interface FlagField extends FieldText {
  readonly type: 'flag';
  readonly example: boolean;
  readonly default?: boolean;
  readonly defaultReason?: string;
}

/** Metadata of a short text. */
export interface TextField extends FieldText {
  readonly type: 'text';
  readonly example: string;
  readonly maxLength: number;
}

/** Metadata of a list of records; `min` and `max` count its entries. */
export interface ListField extends FieldText {
  readonly type: 'list';
  readonly min: number;
  readonly max: number;
  readonly example: readonly Readonly<Record<string, unknown>>[];
  /** There, the list may be left out, and then is empty. */
  readonly default?: readonly [];
}

/** Metadata of any input, told apart by `type`. */
export type InputField = QuantityField | ChoiceField | CountField | FlagField | TextField | ListField;

// Not a zod registry: that would rewrite the type of `kind`, which is a callable.
const fields = new WeakMap<z.core.$ZodType, InputField>();

/** The metadata of an input, looking through optional and default wrappers; undefined for a foreign schema. */
export function fieldOf(schema: z.core.$ZodType): InputField | undefined {
  const own = fields.get(schema);
  if (own !== undefined) return own;
  const inner = (schema._zod.def as { innerType?: z.core.$ZodType }).innerType;
  return inner === undefined ? undefined : fieldOf(inner);
}

/** Whether the input may be left out without a default taking its place. */
export function isOptional(schema: z.core.$ZodType): boolean {
  return schema._zod.def.type === 'optional';
}

/** How a quantity input is described; every value is text with a unit. */
export interface QuantityOptions<K extends KindName> extends FieldText {
  readonly symbol: string;
  /** Least value that makes sense, such as `'0 mbar'`; `above` excludes the value itself. */
  readonly min?: string;
  readonly above?: string;
  readonly max?: string;
  readonly below?: string;
  readonly usual?: readonly [string, string];
  readonly usualReason?: UsualReason;
  readonly example: string;
  readonly units?: readonly Parameters<Kind<K>['in']>[1][];
}

type QuantitySchema<K extends KindName> = z.ZodType<Quantity<K>, QuantityInput>;

function definitionValue<K extends KindName>(kind: Kind<K>, text: string, label: string): number {
  const parsed = kind.parse(text);
  if (!parsed.ok) throw new Error(`${label}: "${text}" is not a ${kind.label}: ${parsed.issue.code}`);
  return parsed.quantity;
}

function limitsOf<K extends KindName>(kind: Kind<K>, options: QuantityOptions<K>): QuantityLimits {
  const at = (text: string | undefined) => (text === undefined ? undefined : definitionValue(kind, text, options.label));
  const min = at(options.min ?? options.above);
  const max = at(options.max ?? options.below);
  if (min === undefined || max === undefined) {
    throw new Error(`${options.label}: a quantity input states where it stops making sense at both ends`);
  }
  return { min, max, minInclusive: options.min !== undefined, maxInclusive: options.max !== undefined };
}

function quantityField<K extends KindName>(kind: Kind<K>, options: QuantityOptions<K>): QuantityField<K> {
  definitionValue(kind, options.example, options.label);
  const usual = options.usual;
  return {
    type: 'quantity',
    kind,
    symbol: options.symbol,
    label: options.label,
    ...(options.description === undefined ? {} : { description: options.description }),
    limits: limitsOf(kind, options),
    ...(usual === undefined
      ? {}
      : { usual: [definitionValue(kind, usual[0], options.label), definitionValue(kind, usual[1], options.label)] as const }),
    ...(options.usualReason === undefined ? {} : { usualReason: options.usualReason }),
    example: options.example,
    units: options.units ?? kind.units,
  };
}

function quantitySchema<K extends KindName>(field: QuantityField<K>): QuantitySchema<K> {
  const object = z.strictObject({ value: z.number(), unit: z.string(), uncertainty: z.number().optional() });
  const text = z.string();
  // A bare number is let through to the parser, which refuses it with the units to choose from
  // unless the kind has none to name.
  const accepted = z.union([text, object, z.number()]);
  const schema = accepted.transform((raw, context) => {
    const parsed = parseQuantityInput(field, raw);
    if (parsed.ok) return parsed.quantity;
    context.issues.push({ code: 'custom', input: raw, params: { issue: parsed.issue } });
    return z.NEVER;
  });
  return schema.meta({
    title: field.label,
    ...(field.description === undefined ? {} : { description: field.description }),
    'x-kind': field.kind.kind,
    'x-units': field.units,
  }) as unknown as QuantitySchema<K>;
}

/**
 * An input that is a quantity of one kind, typed as `"360 mbar"`, `"360 ± 5 mbar"` or
 * `{ value: 360, unit: "mbar" }`. Leaving it out is an issue.
 */
export function quantity<K extends KindName>(kind: Kind<K>, options: QuantityOptions<K>): QuantitySchema<K> {
  const field = quantityField(kind, options);
  const schema = quantitySchema(field);
  fields.set(schema, field as unknown as InputField);
  return schema;
}

/** A quantity that may be left out; the result then lists the default as an assumption. */
export function quantityWithDefault<K extends KindName>(
  kind: Kind<K>,
  options: QuantityOptions<K> & { readonly default: string; readonly defaultReason: string },
): z.ZodPrefault<QuantitySchema<K>> {
  definitionValue(kind, options.default, options.label);
  const field = { ...quantityField(kind, options), default: options.default, defaultReason: options.defaultReason };
  const schema = quantitySchema(field).prefault(options.default);
  fields.set(schema, field as unknown as InputField);
  return schema as unknown as z.ZodPrefault<QuantitySchema<K>>;
}

interface Default<T> {
  readonly default?: T;
  readonly defaultReason?: string;
}

/** One of a few named possibilities. */
export function choice<const O extends Readonly<Record<string, string>>>(
  options: FieldText & { readonly options: O; readonly example: keyof O & string },
): z.ZodType<keyof O & string, string> {
  const schema = choiceSchema(options.options, options);
  fields.set(schema, { type: 'choice', ...options });
  return schema;
}

/** A choice with a default that the result lists as an assumption. */
export function choiceWithDefault<const O extends Readonly<Record<string, string>>>(
  options: FieldText & {
    readonly options: O;
    readonly example: keyof O & string;
    readonly default: keyof O & string;
    readonly defaultReason: string;
  },
): z.ZodPrefault<z.ZodType<keyof O & string, string>> {
  const schema = choiceSchema(options.options, options).prefault(options.default);
  fields.set(schema, { type: 'choice', ...options });
  return schema as unknown as z.ZodPrefault<z.ZodType<keyof O & string, string>>;
}

function choiceSchema<O extends Readonly<Record<string, string>>>(options: O, text: FieldText): z.ZodType<keyof O & string, string> {
  const keys = Object.keys(options) as [string, ...string[]];
  return z.enum(keys).meta({
    title: text.label,
    ...(text.description === undefined ? {} : { description: text.description }),
  }) as unknown as z.ZodType<keyof O & string, string>;
}

/** A whole number: cylinders, passes, cells. A string of digits is accepted, as a form gives it. */
export function count(
  options: FieldText & { readonly symbol: string; readonly min: number; readonly max: number; readonly example: number } & Default<number>,
): z.ZodType<number, number | string> {
  const base = z
    .union([
      z.number(),
      z
        .string()
        .max(20)
        .regex(/^\s*[+-]?\d+\s*$/),
    ])
    .transform((raw) => Number(raw))
    .pipe(z.int().min(options.min).max(options.max))
    .meta({
      title: options.label,
      ...(options.description === undefined ? {} : { description: options.description }),
    });
  const schema = options.default === undefined ? base : base.prefault(options.default);
  fields.set(schema, { type: 'count', ...options });
  return schema as unknown as z.ZodType<number, number | string>;
}

// Without a flag, which a JSON Schema has no place for.
const yesOrNo = /^\s*(?:[Yy][Ee][Ss]|[Nn][Oo]|[Tt][Rr][Uu][Ee]|[Ff][Aa][Ll][Ss][Ee])\s*$/;

/** Yes or no. A form's or a command line's `"yes"`, `"no"`, `"true"`, `"false"` are accepted, in upper and lower case. */
export function flag(options: FieldText & { readonly example: boolean } & Default<boolean>): z.ZodType<boolean, boolean | string> {
  const base = z
    .union([z.boolean(), z.string().max(20).regex(yesOrNo)])
    .transform((raw) => raw === true || (typeof raw === 'string' && /yes|true/i.test(raw)))
    .meta({
      title: options.label,
      ...(options.description === undefined ? {} : { description: options.description }),
    });
  const schema = options.default === undefined ? base : base.prefault(options.default);
  fields.set(schema, { type: 'flag', ...options });
  return schema as unknown as z.ZodType<boolean, boolean | string>;
}

/** A short text that the calculation passes on, such as the name of a sample. */
export function text(options: FieldText & { readonly example: string; readonly maxLength?: number }): z.ZodType<string, string> {
  const maxLength = options.maxLength ?? 200;
  const schema = z.string().max(maxLength).meta({ title: options.label });
  fields.set(schema, { type: 'text', ...options, maxLength });
  return schema;
}

/** A list of records, each with inputs of its own: measured points, containers, steps of a schedule. */
export function list<S extends z.ZodObject>(
  item: S,
  options: FieldText & { readonly min: number; readonly max: number; readonly example: readonly z.input<S>[] },
): z.ZodArray<S> {
  const schema = z
    .array(item)
    .min(options.min)
    .max(options.max)
    .meta({
      title: options.label,
      ...(options.description === undefined ? {} : { description: options.description }),
    });
  fields.set(schema, { type: 'list', ...options } as unknown as InputField);
  return schema as unknown as z.ZodArray<S>;
}

/** A list that may be left out; it is then empty, and the result lists that as an assumption. */
export function listOrNone<S extends z.ZodObject>(
  item: S,
  options: FieldText & { readonly max: number; readonly example: readonly z.input<S>[] },
): z.ZodPrefault<z.ZodArray<S>> {
  const schema = list(item, { ...options, min: 0 }).prefault([]);
  fields.set(schema, { type: 'list', ...options, min: 0, default: [] } as unknown as InputField);
  return schema;
}
