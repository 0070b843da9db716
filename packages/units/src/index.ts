/**
 * Kinds of quantity, units, parsing, conversion and formatting.
 *
 * @module
 */
export { numbersFromSI, numbersToSI } from './converters.js';
export type { FormatOptions } from './format.js';
export * from './generated/kinds.js';
export type { UnitIds } from './generated/unit-ids.js';
export { getKind } from './get-kind.js';
export { differenceInUnit, type UnitInfo, unitInfo, unitSymbol } from './info.js';
export { type NumberProblem, UnitError, type UnitIssue } from './issue.js';
export type { Kind } from './kind.js';
export { kindLabel } from './lookup.js';
export { formatNumber } from './number-format.js';
export type { Parsed, ParseResult } from './parse.js';
export { compare, difference, toAbsolute, toGauge } from './relations.js';
export { typeableNumber } from './thousands.js';
export { parseNumber } from './typed-number.js';
export type { Dimension, KindName, Quantity, UnitOf } from './types.js';
