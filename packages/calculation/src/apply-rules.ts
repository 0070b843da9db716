import type * as z from 'zod/mini';
import { fieldOf, type InputField } from './field.js';
import type { Assumption, Issue, Path, Warning } from './issue.js';
import { pathText } from './issue.js';
import type { OneOf, Together, When } from './rule.js';
import { itemSchema, shapeOf } from './walk.js';
import { say } from './words/say.js';

type Raw = Readonly<Record<string, unknown>>;

/** What the rules among inputs make of what was given. */
export interface Ruled {
  /** What counts of it. */
  readonly raw: unknown;
  readonly issues: readonly Issue[];
  readonly warnings: readonly Warning[];
  readonly assumptions: readonly Assumption[];
  /** Paths of inputs that do not count here, given or not, as text. */
  readonly idle: ReadonlySet<string>;
}

interface Found {
  readonly issues: Issue[];
  readonly warnings: Warning[];
  readonly assumptions: Assumption[];
  readonly idle: Set<string>;
}

const ruled = new WeakMap<z.core.$ZodObject, boolean>();

/** Whether any rule stands in a schema; most have none. */
export function hasRules(schema: z.core.$ZodObject): boolean {
  const known = ruled.get(schema);
  if (known !== undefined) return known;
  const found = shapeOf(schema).some(([, child]) => {
    const rules = fieldOf(child)?.rules;
    const item = itemSchema(child);
    return (
      rules?.oneOf !== undefined || rules?.together !== undefined || rules?.when !== undefined || (item !== undefined && hasRules(item))
    );
  });
  ruled.set(schema, found);
  return found;
}

function isRecord(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What an input comes to for a condition: as given, its default otherwise; `"yes"` of a form is yes. */
function valueFor(field: InputField | undefined, given: unknown): unknown {
  const value = given ?? (field !== undefined && 'default' in field ? field.default : undefined);
  if (field?.type === 'flag' && typeof value === 'string') return /^\s*(yes|true)\s*$/i.test(value);
  return field?.type === 'count' && typeof value === 'string' ? Number(value) : value;
}

/** Apply what a definition says of inputs among each other: which count, which are missing, which exclude each other. */
export function applyRules(schema: z.core.$ZodObject, raw: unknown): Ruled {
  const found: Found = { issues: [], warnings: [], assumptions: [], idle: new Set() };
  if (!hasRules(schema) || !isRecord(raw)) return { raw, ...found };
  return { raw: recordRuled(schema, raw, [], [], found), ...found };
}

function recordRuled(schema: z.core.$ZodObject, raw: Raw, path: Path, outer: readonly [z.core.$ZodObject, Raw][], found: Found): Raw {
  const records = [[schema, raw] as [z.core.$ZodObject, Raw], ...outer];
  const shape = shapeOf(schema);
  const kept: Record<string, unknown> = { ...raw };
  const given = (key: string) => Object.hasOwn(raw, key) && raw[key] !== undefined;
  const counts = new Map<string, boolean>();
  const holds = (when: When): boolean => [when.key, ...(when.or ?? [])].some((key) => holdsFor({ ...when, key }));
  const holdsFor = (when: When): boolean => {
    const [own, values] = records.find(([one]) => Object.hasOwn(one._zod.def.shape, when.key)) ?? [schema, raw];
    // A condition on an input that does not count itself does not hold.
    if (own === schema && counts.get(when.key) === false) return false;
    const child = own._zod.def.shape[when.key];
    const value = valueFor(
      child === undefined ? undefined : fieldOf(child),
      Object.hasOwn(values, when.key) ? values[when.key] : undefined,
    );
    return when.is === undefined ? value !== undefined : when.is.includes(value as string);
  };
  for (const [key, child] of shape) {
    const field = fieldOf(child);
    const counting = (field?.rules?.when ?? []).every(holds);
    counts.set(key, counting);
    if (counting) {
      if (field?.rules?.needed === true && !given(key))
        found.issues.push({ code: 'missing_input', path: [...path, key], ...exampleIn(field) });
      continue;
    }
    found.idle.add(pathText([...path, key]));
    if (given(key) && field !== undefined) {
      found.assumptions.push({ code: 'not_used', path: [...path, key], text: say`${field.label}: not used with what is chosen` });
    }
    delete kept[key];
  }
  const member = (keys: readonly string[]) => keys.filter((key) => counts.get(key) !== false);
  for (const rule of setsOf(shape, (field) => field.rules?.oneOf))
    choose(rule, member(rule.keys), member(rule.keys).filter(given), schema, path, kept, found);
  for (const rule of setsOf(shape, (field) => field.rules?.together))
    join(rule, member(rule.keys), member(rule.keys).filter(given), schema, path, kept, found);
  for (const [key, child] of shape) {
    const item = itemSchema(child);
    const value = kept[key];
    if (item === undefined || !hasRules(item)) continue;
    if (Array.isArray(value)) {
      kept[key] = value.map((row, index) => (isRecord(row) ? recordRuled(item, row, [...path, key, index], records, found) : row));
    } else if (isRecord(value)) kept[key] = recordRuled(item, value, [...path, key], records, found);
  }
  return kept;
}

function exampleIn(field: InputField | undefined): { example: string } | Record<never, never> {
  return field === undefined || field.type === 'list' || field.type === 'group' ? {} : { example: String(field.example) };
}

/** Every set once, in the order of its first input. */
function setsOf<T>(shape: readonly (readonly [string, z.core.$ZodType])[], of: (field: InputField) => T | undefined): T[] {
  const found = shape.flatMap(([, child]) => {
    const field = fieldOf(child);
    const rule = field === undefined ? undefined : of(field);
    return rule === undefined ? [] : [rule];
  });
  return [...new Set(found)];
}

function labelOf(schema: z.core.$ZodObject, key: string): string {
  const child = schema._zod.def.shape[key];
  return (child === undefined ? undefined : fieldOf(child)?.label) ?? key;
}

function choose(
  rule: OneOf,
  keys: readonly string[],
  given: readonly string[],
  schema: z.core.$ZodObject,
  path: Path,
  kept: Record<string, unknown>,
  found: Found,
): void {
  const [first] = keys;
  if (first === undefined) return;
  const paths = keys.map((key) => [...path, key]);
  const child = schema._zod.def.shape[first];
  if (given.length === 0 && rule.required) {
    found.issues.push({
      code: 'missing_input',
      path: [...path, first],
      paths,
      ...exampleIn(child === undefined ? undefined : fieldOf(child)),
    });
  }
  if (given.length < 2 || rule.both === 'allowed') return;
  if (rule.both === 'refused') {
    found.issues.push({
      code: 'inconsistent_inputs',
      path: [...path, given[0] ?? first],
      paths: given.map((key) => [...path, key]),
      reason: say`enter only one of them`,
    });
    return;
  }
  const { use } = rule.both;
  const used = given.includes(use) ? use : given[0];
  for (const key of given) {
    if (key === used) continue;
    delete kept[key];
    found.idle.add(pathText([...path, key]));
    found.warnings.push({
      code: 'given_twice',
      path: [...path, key],
      text: say`${labelOf(schema, key)} was not used, because ${labelOf(schema, used ?? first)} was entered too.`,
    });
  }
}

function join(
  rule: Together,
  keys: readonly string[],
  given: readonly string[],
  schema: z.core.$ZodObject,
  path: Path,
  kept: Record<string, unknown>,
  found: Found,
): void {
  if (given.length === 0 || given.length === keys.length) return;
  const missing = keys.filter((key) => !given.includes(key));
  if (rule.otherwise !== undefined) {
    for (const key of given) {
      delete kept[key];
      found.idle.add(pathText([...path, key]));
    }
    found.warnings.push({ ...rule.otherwise, path: [...path, missing[0] ?? ''] });
    return;
  }
  for (const key of missing) {
    const child = schema._zod.def.shape[key];
    found.issues.push({ code: 'missing_input', path: [...path, key], ...exampleIn(child === undefined ? undefined : fieldOf(child)) });
  }
}
