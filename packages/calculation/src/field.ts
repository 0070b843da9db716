import type { Kind, KindName } from '@wallflow/units';
import type * as z from 'zod/mini';
import type { QuantityLimits } from './quantity-input.js';
import type { FieldRules } from './rule.js';
import type { UsualReason } from './usual-reason.js';

/** What a form, a page or a message needs to know of one input, whatever its type. */
export interface FieldText {
  /** Full name as the trade says it. */
  readonly label: string;
  /** One sentence: what it is and where to get it. */
  readonly description?: string;
}

/** What is true of any input beside its type. */
interface FieldBase extends FieldText {
  /** How it goes with other inputs, and where a form shows it. */
  readonly rules?: FieldRules;
}

/** Metadata of a quantity input. Texts with units are parsed once, when the definition is made. */
export interface QuantityField<K extends KindName = KindName> extends FieldBase {
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
export interface ChoiceField extends FieldBase {
  readonly type: 'choice';
  /** Key and the words a person reads for it. */
  readonly options: Readonly<Record<string, string>>;
  readonly example: string;
  readonly default?: string;
  readonly defaultReason?: string;
}

/** Metadata of a whole number. */
export interface CountField extends FieldBase {
  readonly type: 'count';
  readonly symbol: string;
  readonly min: number;
  readonly max: number;
  readonly example: number;
  readonly default?: number;
  readonly defaultReason?: string;
}

/** Metadata of a yes or no. */
export interface FlagField extends FieldBase {
  readonly type: 'flag';
  readonly example: boolean;
  readonly default?: boolean;
  readonly defaultReason?: string;
}

/** Metadata of a short text. */
export interface TextField extends FieldBase {
  readonly type: 'text';
  readonly example: string;
  readonly maxLength: number;
}

/** Metadata of a list of records; `min` and `max` count its entries. */
export interface ListField extends FieldBase {
  readonly type: 'list';
  readonly min: number;
  readonly max: number;
  readonly example: readonly Readonly<Record<string, unknown>>[];
  /** There, the list may be left out, and then is empty. */
  readonly default?: readonly [];
}

/** Metadata of a record of inputs within the input. */
export interface GroupField extends FieldBase {
  readonly type: 'group';
  readonly example: Readonly<Record<string, unknown>>;
}

/** Metadata of any input, told apart by `type`. */
export type InputField = QuantityField | ChoiceField | CountField | FlagField | TextField | ListField | GroupField;

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
  if (schema._zod.def.type !== 'optional') return false;
  const field = fieldOf(schema);
  return field === undefined || !('default' in field) || field.default === undefined;
}

/** Remember what a schema is to people. */
export function describeField<S extends z.core.$ZodType>(schema: S, field: InputField): S {
  fields.set(schema, field);
  return schema;
}
