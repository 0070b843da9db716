import { group, itemSchema, listOrNone, text } from '@wallflow/calculation';
import * as z from 'zod/mini';

/** Where something stands in a job file. */
export type Place = readonly string[];

/** How a section of the form stands in the file: one group of entries, many, lines of text, or texts at the head. */
export type SectionKind = 'record' | 'rows' | 'lines' | 'head';

/** One section of a job: form, file, messages and schema are made from it. */
export interface JobSection<Key extends string = string, At extends Place = Place, Value = unknown, As extends SectionKind = SectionKind> {
  readonly key: Key;
  readonly as: As;
  readonly place: At;
  /** The heading over it, and in front of every message about it. */
  readonly title: string;
  /** The fields of one row. */
  readonly fields: z.core.$ZodObject;
  /** The section as an input of a form. */
  readonly form: z.core.$ZodType;
  /** Calculations that read it and so know its inputs; without any, the fields alone say what belongs here. */
  readonly readBy: readonly string[];
  /** Present in every job, even with nothing in it. */
  readonly always: boolean;
  /** An empty list is a finding: it was looked for, and there was none. */
  readonly noneIsFinding: boolean;
  /** For a head: where each of its fields stands in the file. */
  readonly places: Readonly<Record<string, Place>>;
  /** The value in the file, for its type alone. */
  readonly value?: Value;
}

/** Inputs as they were typed: text with unit, or a record of value, unit and ±. */
export type Given<F extends string> = { readonly [Name in F]?: unknown };

interface Words {
  readonly label: string;
  readonly description: string;
}

interface Extras {
  readonly readBy?: readonly string[];
  readonly always?: boolean;
}

const plain = { readBy: [], always: false, noneIsFinding: false, places: {} } as const;

/** A group of entries of which a job has one. */
export function record<const Key extends string, const At extends Place, Fields extends z.core.$ZodObject>(
  key: Key,
  place: At,
  fields: Fields,
  words: Words,
  extras: Extras = {},
): JobSection<Key, At, Given<keyof Fields['_zod']['def']['shape'] & string>, 'record'> {
  const form = group(fields, words);
  return { ...plain, ...extras, key, as: 'record', place, title: words.label, fields, form };
}

/** A list of rows; `form` is the list as a calculation describes it. */
export function rows<const Key extends string, const At extends Place>(
  key: Key,
  place: At,
  title: string,
  form: z.core.$ZodType,
  extras: Extras = {},
): JobSection<Key, At, ReadonlyArray<Readonly<Record<string, unknown>>>, 'rows'> {
  const fields = itemSchema(form) ?? z.strictObject({});
  return { ...plain, ...extras, key, as: 'rows', place, title, fields, form };
}

/** Any number of lines of text. */
export function lines<const Key extends string, const At extends Place>(
  key: Key,
  place: At,
  words: Words & { readonly example: string; readonly noneIsFinding?: boolean },
): JobSection<Key, At, readonly string[], 'lines'> {
  const { label, description, example, noneIsFinding = false } = words;
  const fields = z.strictObject({ line: text({ label, example, maxLength: longText }) });
  const form = listOrNone(fields, { label, description, max: mostLines, example: [{ line: example }] });
  return { ...plain, key, as: 'lines', place, title: label, fields, form, noneIsFinding };
}

/** Texts at the head of the file, each at a place of its own. */
export function head<const Key extends string, const Places extends Readonly<Record<string, Place>>>(
  key: Key,
  places: Places,
  fields: z.core.$ZodObject,
  words: Words,
): JobSection<Key, readonly [], Nested<HeadParts<Places>>, 'head'> {
  const form = group(fields, words);
  return { ...plain, key, as: 'head', place: [], title: words.label, fields, form, places };
}

export const longText = 2000;
export const mostLines = 50;

/** A value at a place, as the type of the nested record. */
export type Put<At extends Place, Value> = At extends readonly [infer First extends string, ...infer Rest extends readonly string[]]
  ? { readonly [Name in First]?: Put<Rest, Value> }
  : Value;

type Intersection<Union> = (Union extends unknown ? (one: Union) => void : never) extends (all: infer All) => void ? All : never;
type HeadParts<Places extends Readonly<Record<string, Place>>> = { [Name in keyof Places]: Put<Places[Name], string> }[keyof Places];
export type Nested<Parts> = Intersection<Parts>;

/** What a list of sections makes of the file, as a type. */
export type FileOf<Sections extends readonly JobSection[]> = Intersection<
  Sections[number] extends infer One ? (One extends JobSection<string, infer At, infer Value> ? Put<At, Value> : never) : never
>;

/** The value at a place of a nested record; only own entries count, since a file may hold anything. */
export function valueAt(from: unknown, place: Place): unknown {
  return place.reduce<unknown>(
    (inner, key) =>
      typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key)
        ? (inner as Readonly<Record<string, unknown>>)[key]
        : undefined,
    from,
  );
}

/** Put a value at a place of a nested record. */
export function putAt(into: Record<string, unknown>, place: Place, value: unknown): void {
  const [key = '', ...rest] = place;
  if (rest.length === 0) into[key] = value;
  else {
    const inner = (into[key] ?? {}) as Record<string, unknown>;
    into[key] = inner;
    putAt(inner, rest, value);
  }
}
