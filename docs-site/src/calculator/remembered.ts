import { rememberedInputs } from '../data/remembered-inputs.js';
import type { Entry, FieldData, FormValues } from '../data/types.js';
import { isRows } from './form-values.js';

/** A value of the filter or the engine as it was typed, with what it is a value of. */
export interface RememberedValue {
  /** Kind of quantity, or the type of an input that is none. */
  readonly kind: string;
  readonly text: string;
  readonly unit: string;
}

export type Remembered = Readonly<Record<string, RememberedValue>>;

const longest = 60;

function isValue(value: unknown): value is RememberedValue {
  if (typeof value !== 'object' || value === null) return false;
  const { kind, text, unit } = value as Partial<Record<keyof RememberedValue, unknown>>;
  return [kind, text, unit].every((part) => typeof part === 'string' && part.length <= longest) && text !== '';
}

/** What is usable of what was stored; anything else counts as nothing. */
export function usable(stored: unknown): Remembered {
  if (typeof stored !== 'object' || stored === null) return {};
  const pairs = Object.entries(stored).filter(([key, value]) => rememberedInputs.has(key) && isValue(value));
  return Object.fromEntries(pairs) as Remembered;
}

function kindOf(field: FieldData): string {
  return field.type === 'quantity' ? field.kind : field.type;
}

function entryOf(values: FormValues, key: string): Entry | undefined {
  const entry = values[key];
  return entry === undefined || isRows(entry) ? undefined : entry;
}

/** What was typed here about the filter and the engine, and was not refused. */
export function typedHere(fields: readonly FieldData[], values: FormValues, refused: ReadonlyMap<string, string>): Remembered {
  const own = fields.flatMap((field): [string, RememberedValue][] => {
    const entry = entryOf(values, field.key);
    if (!rememberedInputs.has(field.key) || entry?.own !== true || entry.text.trim() === '' || refused.has(field.key)) return [];
    return [[field.key, { kind: kindOf(field), text: entry.text.trim(), unit: entry.unit }]];
  });
  return Object.fromEntries(own.filter(([, value]) => isValue(value)));
}

function same(first: RememberedValue | undefined, second: RememberedValue | undefined): boolean {
  return first?.kind === second?.kind && first?.text === second?.text && first?.unit === second?.unit;
}

/**
 * What is remembered after `typed` was typed. A value that differs from one that another page brought means another
 * filter: then only what was typed here is kept, so that no two filters are ever mixed.
 */
export function merged(before: Remembered, typed: Remembered, fromHere: ReadonlySet<string>): Remembered {
  const another = Object.entries(typed).some(([key, value]) => {
    return before[key] !== undefined && !fromHere.has(key) && !same(before[key], value);
  });
  return another ? typed : { ...before, ...typed };
}

/** The remembered values that this form asks for: same key and same kind. */
export function fitting(fields: readonly FieldData[], remembered: Remembered): Remembered {
  const pairs = fields.flatMap((field): [string, RememberedValue][] => {
    const value = remembered[field.key];
    if (value === undefined || value.kind !== kindOf(field)) return [];
    if (field.type === 'choice' && !field.options.some((option) => option.key === value.text)) return [];
    return [[field.key, value]];
  });
  return Object.fromEntries(pairs);
}

/** Whether the form already says all that is remembered. */
export function stands(values: FormValues, remembered: Remembered): boolean {
  return Object.entries(remembered).every(([key, { text, unit }]) => {
    const entry = entryOf(values, key);
    return entry?.text === text && entry.unit === unit;
  });
}

/** The form with the remembered values. What replaces another input, as the volume replaces the diameter, empties it. */
export function withRemembered(fields: readonly FieldData[], values: FormValues, remembered: Remembered): FormValues {
  const instead = fields.filter(
    ({ key, insteadOf = [] }) => remembered[key] === undefined && insteadOf.some((other) => remembered[other] !== undefined),
  );
  const emptied = instead.map(({ key }) => [key, { text: '', unit: entryOf(values, key)?.unit ?? '' }] as const);
  const taken = Object.entries(remembered).map(([key, { text, unit }]) => [key, { text, unit }] as const);
  return { ...values, ...Object.fromEntries(emptied), ...Object.fromEntries(taken) };
}
