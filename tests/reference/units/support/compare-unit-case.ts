import { getKind } from '@wallflow/units';
import { convertExact } from '@wallflow/units/exact';
import { Decimal } from 'decimal.js';
import type { UnitCase } from './unit-case.js';

export interface UnitComparison {
  /** What reading and converting gives in doubles. */
  readonly double: Decimal;
  /** The same by decimal arithmetic. */
  readonly exact: Decimal;
  readonly tolerance: Decimal;
  /** Whether each of the two lies within the tolerance. */
  readonly within: readonly [double: boolean, exact: boolean];
  readonly agrees: boolean;
}

function halfLastDigit(printed: string): Decimal {
  const [mantissa = '', exponent = '0'] = printed.split('E');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return new Decimal(10).pow(Number(exponent) - decimals).dividedBy(2);
}

function allowed(reference: UnitCase): Decimal {
  const relative = reference.tolerance?.relative;
  return relative === undefined ? halfLastDigit(reference.expected) : new Decimal(reference.expected).abs().times(relative);
}

function convert(reference: UnitCase): { readonly double: Decimal; readonly exact: Decimal } {
  const kind = getKind(reference.kind);
  const parsed = kind?.parse(reference.given);
  if (kind === undefined || parsed?.ok !== true) throw new Error(`${reference.given} is not read: ${JSON.stringify(parsed)}`);
  const converted = convertExact(reference.kind, String(parsed.value), parsed.unit, reference.unit as never);
  if (!converted.ok) throw new Error(converted.issue.code);
  return { double: new Decimal(kind.in(parsed.quantity, reference.unit as never)), exact: new Decimal(converted.text) };
}

/** A published value beside ours; for the tests and for the site. */
export function compareUnitCase(reference: UnitCase): UnitComparison {
  const { double, exact } = convert(reference);
  const tolerance = allowed(reference);
  // An exact half of the last digit may have been rounded either way; a double lies within 1e-12 of it.
  const limit = tolerance.times('1.000001').plus('1e-12');
  const near = (value: Decimal) => value.minus(reference.expected).abs().lessThanOrEqualTo(limit);
  return { double, exact, tolerance, within: [near(double), near(exact)], agrees: near(double) && near(exact) };
}
