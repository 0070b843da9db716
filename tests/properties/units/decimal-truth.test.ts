import { convertExact, parseExact } from '@wallflow/units/exact';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allUnits, decimalText, info, isFloored, type KindUnit } from './support.js';

const Wide = Decimal.clone({ precision: 60, defaults: true });

/** The factor worked out from its text, apart from the package's own arithmetic. */
function factor(pair: KindUnit): Decimal {
  let value = new Wide(1);
  let divide = false;
  for (const token of info(pair).factor.split(/([*/])/)) {
    if (token === '*' || token === '/') divide = token === '/';
    else value = divide ? value.dividedBy(token) : value.times(token);
  }
  return value;
}

/** The SI value of a decimal number in a unit. */
function truth(pair: KindUnit, text: string): Decimal {
  const { offset, reciprocal } = info(pair);
  const value = new Wide(text);
  return reciprocal === true ? factor(pair).dividedBy(value) : value.plus(offset ?? 0).times(factor(pair));
}

const hasOffset = (pair: KindUnit) => info(pair).offset !== undefined;
const multiplicative = allUnits.filter((pair) => !hasOffset(pair) && pair.kind.kind !== 'temperature');
const temperatures = allUnits.filter((pair) => pair.kind.kind === 'temperature');

function relativeError(ours: number, exact: Decimal): number {
  return exact.isZero() ? Math.abs(ours) : new Wide(ours).minus(exact).dividedBy(exact).abs().toNumber();
}

describe('conversion by doubles', () => {
  it.each(multiplicative)('keeps $unit within 1e-15 of the decimal value, over forty decades', (pair) => {
    const magnitude = isFloored(pair.kind) ? (text: string) => text.replace('-', '') : (text: string) => text;
    fc.assert(
      fc.property(decimalText(15, { min: -35, max: 5 }), (typed) => {
        const text = magnitude(typed);
        const value = Number(text);
        const si = pair.kind(value, pair.unit as never);
        // The double that the text becomes is off by half a bit already; what counts is what conversion adds to it.
        const exact = truth(pair, new Wide(value).toString());
        expect(relativeError(si, exact)).toBeLessThan(1e-15);
        expect(relativeError(pair.kind.in(si, pair.unit as never), new Wide(value))).toBeLessThan(1e-15);
      }),
      { numRuns: 60 },
    );
  });

  it.each(multiplicative)('converts from $unit to every other unit of its kind within 1e-15', (pair) => {
    for (const unit of pair.kind.units) {
      const target = { kind: pair.kind, unit };
      for (const value of [1, 3.6, 360, 0.0127, 98765.4321]) {
        const si = truth(pair, String(value));
        const exact = info(target).reciprocal === true ? factor(target).dividedBy(si) : si.dividedBy(factor(target));
        expect(relativeError(pair.kind.in(pair.kind(value, pair.unit as never), unit), exact)).toBeLessThan(1e-15);
      }
    }
  });

  it.each(temperatures)('keeps temperatures in $unit within 1e-12 K', (pair) => {
    const celsius = fc.integer({ min: -27_315, max: 200_000 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(celsius, (value) => {
        const inUnit = pair.kind.in(pair.kind(value, 'degC' as never), pair.unit as never);
        const back = truth(pair, new Wide(inUnit).toString());
        expect(back.minus(new Wide(value).plus('273.15')).abs().toNumber()).toBeLessThan(1e-12);
      }),
      { numRuns: 200 },
    );
  });
});

describe('conversion by decimals', () => {
  const text = decimalText(20, { min: -12, max: 6 }).map((typed) => typed.replace('-', ''));

  it.each(allUnits)('gives $unit to thirty digits, or exactly', (pair) => {
    fc.assert(
      fc.property(text, (typed) => {
        const converted = convertExact(pair.kind.kind, typed, pair.unit as never, pair.kind.baseUnit as never, { digits: 30 });
        if (!converted.ok) throw new Error(converted.issue.code);
        const exact = truth(pair, typed);
        expect(new Wide(converted.text).minus(exact).abs().lessThanOrEqualTo(exact.abs().times('1e-29'))).toBe(true);
        expect(converted.exact && converted.rounded).toBe(false);
      }),
      { numRuns: 20 },
    );
  });

  it.each(allUnits)('comes back from $unit to the digit', (pair) => {
    fc.assert(
      fc.property(text, (typed) => {
        const there = convertExact(pair.kind.kind, typed, pair.kind.baseUnit as never, pair.unit as never, { digits: 60 });
        if (!there.ok) throw new Error(there.issue.code);
        const back = convertExact(pair.kind.kind, there.text, pair.unit as never, pair.kind.baseUnit as never, { digits: 40 });
        if (!back.ok) throw new Error(back.issue.code);
        expect(new Decimal(back.text).toSignificantDigits(30).equals(new Decimal(typed))).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  it('reads the same quantity as the doubles do', () => {
    fc.assert(
      fc.property(fc.constantFrom(...allUnits), text, (pair, typed) => {
        const written = `${typed} ${info(pair).symbol}`;
        const [exact, double] = [parseExact(pair.kind.kind, written), pair.kind.parse(written)];
        if (!exact.ok || !double.ok) throw new Error(`${written} is not read`);
        expect(exact.unit).toBe(double.unit);
        expect(exact.significantDigits).toBe(double.significantDigits);
        expect(relativeError(double.quantity, new Wide(exact.si.text))).toBeLessThan(1e-15);
      }),
      { numRuns: 500 },
    );
  });
});
