import type * as z from 'zod/mini';
import { fieldOf, type InputField } from './field.js';
import type { Path } from './issue.js';

/** Fields of an object schema in order of definition. */
export function shapeOf(schema: z.core.$ZodObject): [string, z.core.$ZodType][] {
  return Object.entries(schema._zod.def.shape);
}

/** The object schema of a list's items, or of a group. */
export function itemSchema(schema: z.core.$ZodType): z.core.$ZodObject | undefined {
  const def = schema._zod.def as { type: string; element?: z.core.$ZodType; innerType?: z.core.$ZodType };
  if (def.type === 'array' && def.element?._zod.def.type === 'object') return def.element as unknown as z.core.$ZodObject;
  if (def.type === 'object') return schema as unknown as z.core.$ZodObject;
  return def.innerType === undefined ? undefined : itemSchema(def.innerType);
}

function own(record: unknown, key: string): unknown {
  return typeof record === 'object' && record !== null && Object.hasOwn(record, key) ? (record as Record<string, unknown>)[key] : undefined;
}

/** Visit every input with the raw value given for it: of a list that is given its items, of one that is not the list itself. */
export function visitInputs(
  schema: z.core.$ZodObject,
  raw: unknown,
  visit: (field: InputField, value: unknown, path: Path) => void,
  path: Path = [],
): void {
  for (const [key, child] of shapeOf(schema)) {
    const field = fieldOf(child);
    const value = own(raw, key);
    if (field === undefined) continue;
    if (field.type === 'group') {
      const inner = itemSchema(child);
      if (inner !== undefined) visitInputs(inner, value, visit, [...path, key]);
      continue;
    }
    if (field.type !== 'list') {
      visit(field, value, [...path, key]);
      continue;
    }
    if (value === undefined) visit(field, value, [...path, key]);
    const item = itemSchema(child);
    if (item === undefined || !Array.isArray(value)) continue;
    value.forEach((entry, index) => {
      visitInputs(item, entry, visit, [...path, key, index]);
    });
  }
}

/** A copy of checked input with every number of a quantity replaced. */
export function mapQuantities<T extends object>(
  schema: z.core.$ZodObject,
  input: T,
  map: (value: number, field: Extract<InputField, { type: 'quantity' }>, path: Path) => number,
  path: Path = [],
): T {
  const copy: Record<string, unknown> = { ...(input as Record<string, unknown>) };
  for (const [key, child] of shapeOf(schema)) {
    const field = fieldOf(child);
    const value = copy[key];
    if (field === undefined || value === undefined) continue;
    if (field.type === 'quantity') copy[key] = map(value as number, field, [...path, key]);
    const inner = field.type === 'group' ? itemSchema(child) : undefined;
    if (inner !== undefined) copy[key] = mapQuantities(inner, value as object, map, [...path, key]);
    const item = field.type === 'list' ? itemSchema(child) : undefined;
    if (item !== undefined) {
      copy[key] = (value as object[]).map((entry, index) => mapQuantities(item, entry, map, [...path, key, index]));
    }
  }
  return copy as T;
}
