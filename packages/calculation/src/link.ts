/**
 * An input in a link: readable, with its units, the version of the definition, and results as they were shown.
 *
 * @module
 */
import type { Form, FormField } from './form.js';

/** What a link to a calculation holds. */
export interface LinkData {
  /** Version of the definition that the link was made with. */
  readonly version?: string;
  /** Inputs as `run` takes them, all of them texts. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Units chosen for results, by output. */
  readonly units: Readonly<Record<string, string>>;
  /** Results that the link states, by output, as they were shown when it was made. */
  readonly stated: Readonly<Record<string, string>>;
  /** What the link holds that this calculation does not ask for today, name and value as they stand in it. */
  readonly unread: readonly string[];
}

/** An input as far as a link needs to know it; a `FormField` of a form is one. */
export interface LinkField {
  readonly key: string;
  /** Fields of the entries of a list, or of a group. */
  readonly inner?: readonly LinkField[];
  /** Most entries of a list; a group has none. */
  readonly max?: number;
}

/** The inputs of a form, as a link needs them. */
export function linkFields(form: Form): readonly LinkField[] {
  return form.fields.map(({ key, field, inner }: FormField) => ({
    key,
    ...(inner === undefined ? {} : { inner: linkFields(inner) }),
    ...(field.type === 'list' ? { max: field.max } : {}),
  }));
}

/** Percent-encode only what a hash cannot hold, so that a link stays readable: `airFlow=120+kg/h`. */
function encode(text: string): string {
  return encodeURIComponent(text)
    .replaceAll('%20', '+')
    .replaceAll('%2F', '/')
    .replaceAll('%3A', ':')
    .replaceAll('%2C', ',')
    .replaceAll('%C2%B0', '°')
    .replaceAll('%C2%B1', '±');
}

function decode(text: string): string {
  const spaced = text.replaceAll('+', ' ');
  try {
    return decodeURIComponent(spaced);
  } catch {
    return spaced;
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function quantityText({ value, unit, uncertainty }: Readonly<Record<string, unknown>>): string {
  return `${value}${uncertainty === undefined ? '' : ` ± ${uncertainty}`} ${unit}`;
}

function flatten(input: Readonly<Record<string, unknown>>, prefix = ''): [string, string][] {
  return Object.entries(input).flatMap(([key, value]): [string, string][] => {
    if (value === undefined) return [];
    if (Array.isArray(value)) return value.flatMap((row: Record<string, unknown>, index) => flatten(row, `${prefix}${key}.${index + 1}.`));
    if (isRecord(value)) {
      return 'unit' in value && 'value' in value ? [[`${prefix}${key}`, quantityText(value)]] : flatten(value, `${prefix}${key}.`);
    }
    return [[`${prefix}${key}`, String(value)]];
  });
}

/** The hash of a link: inputs with their units, the version of the definition, chosen units and, for a citation, stated results. */
export function linkHash(
  link: { readonly version: string; readonly input: LinkData['input'] } & Partial<Pick<LinkData, 'units' | 'stated'>>,
): string {
  const pairs: [string, string][] = [['version', link.version], ...flatten(link.input)];
  for (const [key, unit] of Object.entries(link.units ?? {})) pairs.push([`show.${key}`, unit]);
  for (const [key, text] of Object.entries(link.stated ?? {})) pairs.push([`result.${key}`, text]);
  return `#${pairs.map(([key, value]) => `${encode(key)}=${encode(value)}`).join('&')}`;
}

const mostRows = 1000;

/** Put `points.2.flow` where it belongs; false for a key that is no input. */
function place(input: Record<string, unknown>, fields: readonly LinkField[], key: string, value: string): boolean {
  const [name = '', ...rest] = key.split('.');
  const field = fields.find((candidate) => candidate.key === name);
  if (field === undefined) return false;
  if (field.inner === undefined) {
    if (rest.length > 0) return false;
    input[name] = value;
    return true;
  }
  if (field.max === undefined) {
    const group = (input[name] ?? {}) as Record<string, unknown>;
    if (!place(group, field.inner, rest.join('.'), value)) return false;
    input[name] = group;
    return true;
  }
  const [row, ...within] = rest;
  const index = Number(row) - 1;
  if (!Number.isInteger(index) || index < 0 || index >= Math.min(field.max, mostRows)) return false;
  const rows = (input[name] ?? []) as Record<string, unknown>[];
  while (rows.length <= index) rows.push({});
  input[name] = rows;
  return place(rows[index] as Record<string, unknown>, field.inner, within.join('.'), value);
}

/** Read the hash of a link; undefined when it is empty or names a place on a page. Never throws. */
export function readLinkHash(fields: readonly LinkField[], hash: string): LinkData | undefined {
  const text = hash.replace(/^#/, '');
  if (!text.includes('=')) return undefined;
  const input: Record<string, unknown> = {};
  const units = new Map<string, string>();
  const stated = new Map<string, string>();
  const unread: string[] = [];
  let version: string | undefined;
  for (const pair of text.split('&')) {
    const at = pair.indexOf('=');
    if (at < 1) continue;
    const key = decode(pair.slice(0, at));
    const value = decode(pair.slice(at + 1));
    if (key === 'version') version = value;
    else if (key.startsWith('show.')) units.set(key.slice(5), value);
    else if (key.startsWith('result.')) stated.set(key.slice(7), value);
    else if (!place(input, fields, key, value)) unread.push(`${key} = ${value}`);
  }
  return {
    ...(version === undefined ? {} : { version }),
    input,
    units: Object.fromEntries(units),
    stated: Object.fromEntries(stated),
    unread,
  };
}
