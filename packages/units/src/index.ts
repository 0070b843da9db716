/**
 * Kinds of quantity, units, parsing, conversion and formatting.
 *
 * @module
 */
import * as all from './generated/kinds.js';
import type { Kind } from './kind.js';
import type { KindName } from './types.js';

export type { FormatOptions } from './format.js';
export { formatNumber } from './format.js';
export * from './generated/kinds.js';
export { differenceInUnit, type UnitInfo, unitInfo, unitSymbol } from './info.js';
export { type NumberProblem, UnitError, type UnitIssue } from './issue.js';
export type { Kind } from './kind.js';
export type { Parsed, ParseResult } from './parse.js';
export { compare, difference, toAbsolute, toGauge } from './relations.js';
export type { Dimension, KindName, Quantity, UnitOf } from './types.js';

/** All kinds by name. */
export const kinds: { readonly [K in KindName]: Kind<K> } = all;

/** A kind by its name, as a program reads it from data; undefined for anything else. */
export function getKind(name: string): Kind<KindName> | undefined {
  return Object.hasOwn(kinds, name) ? (kinds[name as KindName] as unknown as Kind<KindName>) : undefined;
}
