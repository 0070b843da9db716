import type * as z from 'zod/mini';
import { fieldOf, type InputField } from './field.js';
import { givenData } from './given-data.js';
import type { Issue, Path } from './issue.js';
import { nearest } from './nearest.js';
import { itemSchema } from './walk.js';

function valueAt(raw: unknown, path: Path): unknown {
  let value = raw;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<string | number, unknown>)[key];
  }
  return value;
}

function schemaAt(schema: z.core.$ZodType, path: Path): z.core.$ZodType | undefined {
  let current: z.core.$ZodType | undefined = schema;
  for (const key of path) {
    if (current === undefined) return undefined;
    if (typeof key === 'number') current = itemSchema(current);
    else {
      const shape: Readonly<Record<string, z.core.$ZodType>> | undefined = (current as unknown as z.core.$ZodObject)._zod.def.shape;
      current = shape !== undefined && Object.hasOwn(shape, key) ? shape[key] : undefined;
    }
  }
  return current;
}

function expectedOf(field: InputField | undefined): string {
  switch (field?.type) {
    case 'quantity':
      return `${field.kind.label} with a unit`;
    case 'choice':
      return 'one of the choices';
    case 'count':
      return 'a whole number';
    case 'flag':
      return 'yes or no';
    case 'list':
      return 'a list';
    case 'text':
      return 'text';
    case 'group':
      return 'a record of inputs by name';
    default:
      return 'an object with the inputs by name';
  }
}

function exampleOf(field: InputField | undefined): { example: string } | Record<never, never> {
  return field === undefined || field.type === 'list' || field.type === 'group' ? {} : { example: String(field.example) };
}

/** The part of a record that is a number, and not a finite one. */
function notFinitePart(given: unknown): 'value' | 'uncertainty' | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const record = given as Readonly<Record<string, unknown>>;
  const bad = (part: string) => typeof record[part] === 'number' && !Number.isFinite(record[part]);
  return (['value', 'uncertainty'] as const).find(bad);
}

/** Turn what zod found into our own issues, with what the user gave and what would be right. */
export function issuesFromZod(schema: z.core.$ZodObject, raw: unknown, error: z.core.$ZodError): Issue[] {
  return error.issues.flatMap((found): Issue[] => {
    const path = found.path.map((part) => (typeof part === 'symbol' ? String(part) : part));
    return issuesAt(schema, raw, path, found).map((issue) =>
      'given' in issue && issue.code !== 'list_length' ? { ...issue, given: givenData(issue.given) } : issue,
    );
  });
}

function issuesAt(schema: z.core.$ZodObject, raw: unknown, path: Path, found: z.core.$ZodIssue): Issue[] {
  const target = schemaAt(schema, path);
  const field = target === undefined ? undefined : fieldOf(target);
  const given = valueAt(raw, path);
  if (found.code === 'custom') {
    const issue = (found.params as { issue?: Issue } | undefined)?.issue;
    if (issue !== undefined) return [{ ...issue, path }];
  }
  if (found.code === 'unrecognized_keys') {
    const known = Object.keys((target as unknown as z.core.$ZodObject | undefined)?._zod.def.shape ?? {});
    return found.keys.map((key) => ({
      code: 'unknown_input',
      path: [...path, key],
      given: valueAt(raw, [...path, key]),
      candidates: nearest(key, known),
    }));
  }
  if (given === undefined && path.length > 0) return [{ code: 'missing_input', path, ...exampleOf(field) }];
  if (field?.type === 'choice') return [{ code: 'not_a_choice', path, given, candidates: Object.keys(field.options) }];
  if (field?.type === 'list' && Array.isArray(given) && (found.code === 'too_small' || found.code === 'too_big')) {
    const bound = found.code === 'too_small' ? 'min' : 'max';
    return [{ code: 'list_length', path, given: given.length, bound, limit: bound === 'min' ? field.min : field.max }];
  }
  if (field?.type === 'count' && (found.code === 'too_small' || found.code === 'too_big')) {
    const bound = found.code === 'too_small' ? 'min' : 'max';
    const value = bound === 'min' ? field.min : field.max;
    return [{ code: 'out_of_range', path, given, bound, limit: { value, unit: '1', text: String(value), inclusive: true } }];
  }
  if (field?.type === 'quantity' && typeof given === 'number') {
    return [{ code: 'not_a_number', path, given, reason: 'not_finite', example: field.example }];
  }
  if (field?.type === 'quantity') {
    const part = notFinitePart(given);
    if (part !== undefined) return [{ code: 'not_a_number', path, part, given, reason: 'not_finite', example: field.example }];
  }
  return [{ code: 'wrong_type', path, given, expected: expectedOf(field), ...exampleOf(field) }];
}

/** A refusal by a calculation names a missing input by its path only; the example stands in the field. */
export function withExample(schema: z.core.$ZodObject, issue: Issue): Issue {
  if (issue.code !== 'missing_input' || issue.example !== undefined) return issue;
  const target = schemaAt(schema, issue.path);
  return { ...issue, ...exampleOf(target === undefined ? undefined : fieldOf(target)) };
}
