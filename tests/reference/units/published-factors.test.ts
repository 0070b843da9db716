import { getKind } from '@wallflow/units';
import { convertExact } from '@wallflow/units/exact';
import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { readUnitCases, type UnitCase } from './support/unit-case.js';

const files = readUnitCases();

function halfLastDigit(printed: string): Decimal {
  const [mantissa = '', exponent = '0'] = printed.split('E');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return new Decimal(10).pow(Number(exponent) - decimals).dividedBy(2);
}

function allowed(reference: UnitCase): Decimal {
  const relative = reference.tolerance?.relative;
  return relative === undefined ? halfLastDigit(reference.expected) : new Decimal(reference.expected).abs().times(relative);
}

/** What reading and converting gives, and the same by decimal arithmetic. */
function convert(reference: UnitCase): { readonly double: Decimal; readonly exact: Decimal } {
  const kind = getKind(reference.kind);
  const parsed = kind?.parse(reference.given);
  if (kind === undefined || parsed?.ok !== true) throw new Error(`${reference.given} is not read: ${JSON.stringify(parsed)}`);
  const converted = convertExact(reference.kind, String(parsed.value), parsed.unit, reference.unit as never);
  if (!converted.ok) throw new Error(converted.issue.code);
  return { double: new Decimal(kind.in(parsed.quantity, reference.unit as never)), exact: new Decimal(converted.text) };
}

describe.each(files)('$source.title, $source.mark ($name)', ({ cases }) => {
  it.each(cases)('$given is $expected $unit: $locator', (reference) => {
    const { double, exact } = convert(reference);
    // An exact half of the last digit may have been rounded either way; a double lies within 1e-12 of it.
    const limit = allowed(reference).times('1.000001');
    const agrees = [double, exact].map((value) => value.minus(reference.expected).abs().lessThanOrEqualTo(limit.plus('1e-12')));
    const shouldAgree = reference.disagreement === undefined;
    expect(agrees, `gives ${exact}`).toEqual([shouldAgree, shouldAgree]);
  });
});

describe('the cases', () => {
  const all = files.flatMap((file) => file.cases);

  it('have ids of their own within a file', () => {
    for (const { cases } of files) expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
  });

  it('give a reason for every tolerance of their own', () => {
    const silent = all.filter(({ tolerance, toleranceReason }) => (tolerance === undefined) !== (toleranceReason === undefined));
    expect(silent).toEqual([]);
  });

  it('hold every factor that does not follow from a definition, as a printed table gives it', () => {
    const printed = files.filter(({ origin }) => origin === 'published-table').flatMap(({ cases }) => cases);
    for (const unit of ['inH2O_4C', 'inH2O_60F', 'ftH2O_4C', 'inHg_32F', 'inHg_60F']) {
      expect(printed.some(({ given }) => given === `1 ${unit}`)).toBe(true);
    }
  });
});
