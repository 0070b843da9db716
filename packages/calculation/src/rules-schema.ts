import type * as z from 'zod/mini';
import { fieldOf, type InputField } from './field.js';
import type { OneOf, Together, When } from './rule.js';
import { shapeOf } from './walk.js';

type Keywords = Record<string, unknown>;
type Fields = ReadonlyMap<string, InputField>;

function valuesOf(field: InputField, is: readonly (string | number | boolean)[]): unknown[] {
  // A form or a command line says yes in words.
  return field.type === 'flag' ? is.flatMap((value) => [value, ...(value === true ? ['yes', 'true'] : ['no', 'false'])]) : [...is];
}

function conditionFor(when: When, key: string, fields: Fields): Keywords | undefined {
  const field = fields.get(key);
  // What another record says cannot be asked about here.
  if (field === undefined) return undefined;
  const standard = 'default' in field ? field.default : undefined;
  const own = (field.rules?.when ?? []).map((outer) => condition(outer, fields));
  if (own.includes(undefined)) return undefined;
  const asked: Keywords =
    when.is === undefined
      ? standard === undefined
        ? { required: [key] }
        : {}
      : {
          properties: { [key]: { enum: valuesOf(field, when.is) } },
          ...(when.is.includes(standard as string) ? {} : { required: [key] }),
        };
  return own.length === 0 ? asked : { allOf: [...own, asked] };
}

function condition(when: When, fields: Fields): Keywords | undefined {
  const any = [when.key, ...(when.or ?? [])].map((key) => conditionFor(when, key, fields));
  if (any.includes(undefined)) return undefined;
  return any.length === 1 ? any[0] : { anyOf: any };
}

/** A rule that counts only under conditions; undefined where the schema cannot ask for them. */
function under(whens: readonly When[], rule: Keywords, fields: Fields): Keywords[] {
  if (whens.length === 0) return [rule];
  const asked = whens.map((when) => condition(when, fields));
  if (asked.includes(undefined)) return [];
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema; nothing awaits it
  return [{ if: asked.length === 1 ? asked[0] : { allOf: asked }, then: rule }];
}

function oneOfRule({ keys, required, both }: OneOf): Keywords | undefined {
  const each = keys.map((key) => ({ required: [key] }));
  if (both !== 'refused') return required ? { anyOf: each } : undefined;
  if (required) return { oneOf: each };
  const pairs = keys.flatMap((key, index) => keys.slice(index + 1).map((other) => ({ required: [key, other] })));
  return { not: pairs.length === 1 ? pairs[0] : { anyOf: pairs } };
}

function togetherRule({ keys, otherwise }: Together): Keywords | undefined {
  if (otherwise !== undefined) return undefined;
  return { dependentRequired: Object.fromEntries(keys.map((key) => [key, keys.filter((other) => other !== key)])) };
}

/** Conditions that all inputs of a set share; undefined where they differ. */
function shared(keys: readonly string[], fields: Fields): readonly When[] | undefined {
  const [first = '', ...others] = keys.map((key) => JSON.stringify(fields.get(key)?.rules?.when ?? []));
  return others.every((other) => other === first) ? (JSON.parse(first) as When[]) : undefined;
}

/** What a JSON Schema can say of inputs among each other: `oneOf`, `dependentRequired`, `if` and `then`. */
export function ruleKeywords(schema: z.core.$ZodObject): Keywords {
  const fields: Fields = new Map(
    shapeOf(schema).flatMap(([key, child]) => {
      const field = fieldOf(child);
      return field === undefined ? [] : [[key, field] as const];
    }),
  );
  const rules = [...fields].map(([key, field]) => [key, field.rules] as const);
  const needed = rules.flatMap(([key, rule]) => (rule?.needed === true ? under(rule.when ?? [], { required: [key] }, fields) : []));
  const ofSet = (keys: readonly string[], rule: Keywords | undefined) => {
    const whens = shared(keys, fields);
    return rule === undefined || whens === undefined ? [] : under(whens, rule, fields);
  };
  const oneOfs = [...new Set(rules.flatMap(([, rule]) => rule?.oneOf ?? []))].flatMap((rule) => ofSet(rule.keys, oneOfRule(rule)));
  const togethers = [...new Set(rules.flatMap(([, rule]) => rule?.together ?? []))].flatMap((rule) => ofSet(rule.keys, togetherRule(rule)));
  const all = [...needed, ...oneOfs, ...togethers];
  return all.length === 0 ? {} : { allOf: all };
}
