import { type LinkField, linkHash, readLinkHash } from '@wallflow/calculation/link';
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

function linkFields(fields: readonly FieldData[]): readonly LinkField[] {
  return fields.map((field) => {
    if (field.type === 'list') return { key: field.key, max: field.max, inner: linkFields(field.item) };
    return field.type === 'group' ? { key: field.key, inner: linkFields(field.item) } : { key: field.key };
  });
}

/** Inputs with their units, the version of the definition, chosen units and, for a citation, the stated results. */
export function toHash(
  fields: readonly FieldData[],
  link: { readonly version: string } & Pick<Permalink, 'values'> & Partial<Pick<Permalink, 'units' | 'stated'>>,
): string {
  const { values, ...others } = link;
  return linkHash({ ...others, input: toInput(fields, values) });
}

/** Read a link; undefined when the hash is empty or names a place on the page. */
export function fromHash(fields: readonly FieldData[], hash: string): Permalink | undefined {
  const link = readLinkHash(linkFields(fields), hash);
  if (link === undefined) return undefined;
  const { input, ...others } = link;
  return { ...others, values: fromInput(fields, input) };
}
