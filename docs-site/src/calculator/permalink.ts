import type { FieldData, FormValues } from '../data/types.js';
import { fromInput, toInput } from './form-input.js';

/** What a link to a calculation holds. */
export interface Permalink {
  /** Version of the definition that the link was made with. */
  readonly version?: string;
  readonly values: FormValues;
  /** Units chosen for results, by output. */
  readonly units: Readonly<Record<string, string>>;
  /** Results that the link states, by output, as they were shown when it was made. */
  readonly stated: Readonly<Record<string, string>>;
  /** What the link holds that this calculation does not ask for today, name and value as they stand in it. */
  readonly unread: readonly string[];
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

function flatten(input: Readonly<Record<string, unknown>>, prefix = ''): [string, string][] {
  return Object.entries(input).flatMap(([key, value]): [string, string][] => {
    if (!Array.isArray(value)) return [[`${prefix}${key}`, String(value)]];
    return value.flatMap((row: Record<string, unknown>, index) => flatten(row, `${prefix}${key}.${index + 1}.`));
  });
}

/** Inputs with their units, the version of the definition, chosen units and, for a citation, the stated results. */
export function toHash(
  fields: readonly FieldData[],
  link: { readonly version: string } & Pick<Permalink, 'values'> & Partial<Pick<Permalink, 'units' | 'stated'>>,
): string {
  const pairs: [string, string][] = [['version', link.version], ...flatten(toInput(fields, link.values))];
  for (const [key, unit] of Object.entries(link.units ?? {})) pairs.push([`show.${key}`, unit]);
  for (const [key, text] of Object.entries(link.stated ?? {})) pairs.push([`result.${key}`, text]);
  return `#${pairs.map(([key, value]) => `${encode(key)}=${encode(value)}`).join('&')}`;
}

const mostRows = 1000;

/** Put `points.2.flow` where it belongs; false for a key that is no input. */
function place(input: Record<string, unknown>, fields: readonly FieldData[], key: string, value: string): boolean {
  const [name = '', row, ...rest] = key.split('.');
  const field = fields.find((candidate) => candidate.key === name);
  if (field === undefined) return false;
  if (field.type !== 'list') {
    if (row !== undefined) return false;
    input[name] = value;
    return true;
  }
  const index = Number(row) - 1;
  if (!Number.isInteger(index) || index < 0 || index >= Math.min(field.max, mostRows)) return false;
  const rows = (input[name] ?? []) as Record<string, unknown>[];
  while (rows.length <= index) rows.push({});
  input[name] = rows;
  return place(rows[index] as Record<string, unknown>, field.item, rest.join('.'), value);
}

/** Read a link; undefined when the hash is empty or names a place on the page. */
export function fromHash(fields: readonly FieldData[], hash: string): Permalink | undefined {
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
    values: fromInput(fields, input),
    units: Object.fromEntries(units),
    stated: Object.fromEntries(stated),
    unread,
  };
}
