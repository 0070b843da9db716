import type * as z from 'zod/mini';
import { fieldOf } from './field.js';
import type { Issue, Path } from './issue.js';
import { itemSchema, shapeOf } from './walk.js';

/** What a person calls the input at a path, as in `Readings, row 2: Gas temperature`; undefined where there is none. */
export function labelAt(schema: z.core.$ZodObject, [key, ...rest]: Path): string | undefined {
  const child = shapeOf(schema).find(([name]) => name === key)?.[1];
  const field = child === undefined ? undefined : fieldOf(child);
  if (child === undefined || field === undefined) return undefined;
  const [row, ...columns] = rest;
  const isRow = field.type === 'list' && typeof row === 'number';
  const inside = isRow ? columns : rest;
  // A list of one is a section of its own.
  const own = isRow && field.max > 1 ? `${field.label}, row ${row + 1}` : field.label;
  const item = inside.length === 0 ? undefined : itemSchema(child);
  const inner = item === undefined ? undefined : labelAt(item, inside);
  return inner === undefined ? own : `${own}: ${inner}`;
}

/** An issue with the labels of the inputs that it is about, so that its sentence needs no key. */
export function withLabels(schema: z.core.$ZodObject, issue: Issue): Issue {
  // What is no input has no label; it is named as it was written.
  const label = issue.code === 'unknown_input' ? undefined : labelAt(schema, issue.path);
  const paths = 'paths' in issue ? issue.paths : undefined;
  const labels = paths?.map((path) => labelAt(schema, path));
  return {
    ...issue,
    ...(label === undefined ? {} : { label }),
    ...(labels?.every((one) => one !== undefined) === true ? { labels } : {}),
  };
}
