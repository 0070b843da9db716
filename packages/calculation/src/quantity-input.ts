import { type Kind, type KindName, parseNumber, type Quantity, type UnitIssue, type UnitOf } from '@wallflow/units';
import type { Issue } from './issue.js';
import { isInverted, limitInUnit } from './limit.js';
import { perStrokeText } from './per-stroke.js';

/**
 * How a quantity crosses the boundary: text with a unit, a record whose numbers may be texts as they were typed, or a bare number for kinds that have one without a unit. A
 * number in SI, branded or not, is none: write its unit beside it.
 */
export type QuantityInput<K extends KindName = KindName> =
  | string
  | ('1' extends UnitOf<K> ? number : never)
  | { readonly value: number | string; readonly unit: UnitOf<K>; readonly uncertainty?: number | string | undefined };

/** The same, as data of unknown origin brings it once its shape has been checked. */
export type UncheckedQuantity =
  | string
  | number
  | { readonly value: number | string; readonly unit: string; readonly uncertainty?: number | string | undefined };

/** Hard limits in SI. */
export interface QuantityLimits {
  readonly min: number;
  readonly max: number;
  readonly minInclusive: boolean;
  readonly maxInclusive: boolean;
}

/** A quantity as it was given: SI value, the unit the user chose, how many digits were typed, its uncertainty. */
export interface GivenQuantity<K extends KindName = KindName> {
  readonly quantity: Quantity<K>;
  readonly unit: string;
  readonly significantDigits: number;
  readonly uncertainty?: number;
  /** What else the spelling of the unit can mean, within the digits typed. */
  readonly alternatives?: readonly string[];
}

interface QuantityTarget<K extends KindName> {
  readonly kind: Kind<K>;
  readonly limits: QuantityLimits;
  readonly example: string;
  readonly units: readonly string[];
}

type ParsedInput<K extends KindName> = ({ readonly ok: true } & GivenQuantity<K>) | { readonly ok: false; readonly issue: Issue };

/** Parse what the user gave for one quantity and check it against its hard limits. Issues carry an empty path. */
export function parseQuantityInput<K extends KindName>(target: QuantityTarget<K>, raw: UncheckedQuantity): ParsedInput<K> {
  const read = readQuantity(target, raw);
  if (!read.ok) return read;
  const issue = rangeIssue(target, read, raw);
  return issue === undefined ? read : { ok: false, issue };
}

function readQuantity<K extends KindName>(target: QuantityTarget<K>, raw: UncheckedQuantity): ParsedInput<K> {
  const { kind } = target;
  const parsed =
    typeof raw === 'string' ? kind.parse(raw) : typeof raw === 'number' ? kind.parse(String(raw)) : kind.parse(raw.value, raw.unit);
  if (!parsed.ok) return { ok: false, issue: unitIssue(target, raw, parsed.issue) };
  const spread = typeof raw === 'object' ? spreadOf(raw.uncertainty, parsed.unit) : undefined;
  if (typeof spread === 'string') return noUncertainty(raw, spread, target.example);
  const uncertainty = spread === undefined ? parsed.uncertainty : spread / kind.differenceIn(1, parsed.unit, parsed.quantity);
  if (uncertainty !== undefined && !Number.isFinite(uncertainty)) return noUncertainty(raw, 'not_finite', target.example);
  return {
    ok: true,
    quantity: parsed.quantity,
    unit: parsed.unit,
    significantDigits: parsed.significantDigits,
    ...(uncertainty === undefined ? {} : { uncertainty }),
    ...(parsed.alternatives === undefined ? {} : { alternatives: parsed.alternatives }),
  };
}

/** The ± of a record as a number in its unit, or why it is none. */
function spreadOf(given: number | string | undefined, unit: string): number | string | undefined {
  const read = typeof given === 'string' ? parseNumber(given, unit) : undefined;
  if (read?.ok === false) return read.reason;
  const spread = read?.value ?? (given as number | undefined);
  return spread !== undefined && spread < 0 ? 'negative_uncertainty' : spread;
}

function noUncertainty(given: UncheckedQuantity, reason: string, example: string): { readonly ok: false; readonly issue: Issue } {
  const part = typeof given === 'object' ? ({ part: 'uncertainty' } as const) : {};
  return { ok: false, issue: { code: 'not_a_number', path: [], given, reason, example, ...part } };
}

function unitIssue<K extends KindName>(target: QuantityTarget<K>, given: UncheckedQuantity, issue: UnitIssue): Issue {
  const path: Issue['path'] = [];
  const example = target.example;
  // Number and unit of a record are two fields of a form.
  const part = typeof given !== 'object' ? {} : ({ part: issue.code === 'not_a_number' ? 'value' : 'unit' } as const);
  switch (issue.code) {
    case 'not_a_number':
      return { code: 'not_a_number', path, given, example, ...part, ...(issue.reason === undefined ? {} : { reason: issue.reason }) };
    case 'missing_unit':
      return { code: 'missing_unit', path, given, candidates: target.units, example, ...part };
    case 'unknown_unit':
    case 'ambiguous_unit':
      // No unit of flow may be offered with the same number for an amount per stroke.
      return {
        code: issue.code,
        path,
        given,
        unit: issue.unit,
        candidates: perStrokeText(issue.unit) === undefined ? issue.candidates : [],
        ...part,
      };
    case 'wrong_kind':
      return {
        code: 'wrong_kind',
        path,
        given,
        unit: issue.unit,
        expected: issue.expected,
        found: issue.found,
        candidates: target.units,
        ...part,
      };
    case 'below_absolute_zero':
      // Below what exists is below what the input allows; of a unit that counts the other way round, it is below its least.
      return outOfRange(target, issue.unit, given, isInverted(target.kind, issue.unit) ? 'max' : 'min');
  }
}

function rangeIssue<K extends KindName>(target: QuantityTarget<K>, read: GivenQuantity<K>, given: UncheckedQuantity): Issue | undefined {
  const { limits } = target;
  const value: number = read.quantity;
  // A limit that was itself typed with a unit may differ from the same number in another unit by rounding.
  const slack = 1e-12 * Math.max(Math.abs(value), 1e-300);
  const tooLow = limits.minInclusive ? value < limits.min - slack : value <= limits.min;
  const tooHigh = limits.maxInclusive ? value > limits.max + slack : value >= limits.max;
  return tooLow || tooHigh ? outOfRange(target, read.unit, given, tooLow ? 'min' : 'max') : undefined;
}

function outOfRange<K extends KindName>(
  { kind, limits }: QuantityTarget<K>,
  unit: string,
  given: UncheckedQuantity,
  end: 'min' | 'max',
): Issue {
  const inclusive = end === 'min' ? limits.minInclusive : limits.maxInclusive;
  const limit = limitInUnit(kind, { si: limits[end], end, inclusive }, unit);
  // mpg and the like count the other way round: the least distance per volume is the most volume per distance.
  const bound = isInverted(kind, limit.unit) ? (end === 'min' ? 'max' : 'min') : end;
  return { code: 'out_of_range', path: [], given, bound, limit };
}
