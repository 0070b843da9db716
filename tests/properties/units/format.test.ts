import { formatNumber } from '@wallflow/units';
import { convertExact } from '@wallflow/units/exact';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allUnits, decimalText, isFloored, type KindUnit } from './support.js';

/** A number as it is shown, without its unit and without the `1:` of a mix. */
function shownNumber({ kind, unit }: KindUnit, si: number, digits?: number): string {
  return kind.format(kind.si(si), unit as never, digits === undefined ? { unitless: true } : { unitless: true, digits });
}

/** A number typed in one unit of a kind, and another unit of the kind to show it in. */
const conversions = fc.tuple(fc.constantFrom(...allUnits), fc.nat(), decimalText(7, { min: -5, max: 2 })).map(([from, index, text]) => {
  const to = from.kind.units[index % from.kind.units.length] as string;
  return { from, to: { kind: from.kind, unit: to }, text: isFloored(from.kind) ? text.replace('-', '') : text };
});

/** Whether a number lies so close to the middle between two roundings, but not on it, that fifteen digits do not tell the side. */
function nearTie(exact: Decimal, digits: number): boolean {
  if (exact.isZero()) return false;
  const scaled = exact.abs().dividedBy(new Decimal(10).pow(exact.e - digits + 1));
  return scaled.minus(scaled.floor()).minus('0.5').abs().lessThan(scaled.times('6e-15')) && !scaled.times(2).isInteger();
}

describe('a formatted quantity', () => {
  it('shows the decimal truth to twelve digits, and no floating noise', () => {
    fc.assert(
      fc.property(conversions, ({ from, to, text }) => {
        const exact = convertExact(from.kind.kind, text, from.unit as never, to.unit as never, { digits: 60 });
        if (!exact.ok) throw new Error(exact.issue.code);
        const truth = new Decimal(exact.text);
        // A temperature is good to the digits of its distance from absolute zero.
        const offset = from.kind.kind === 'temperature';
        const rounded = offset ? truth.toDecimalPlaces(9).toSignificantDigits(12) : truth.toSignificantDigits(12);
        const shown = shownNumber(to, from.kind(Number(text), from.unit as never));
        if (nearTie(truth, 12) || offset) {
          const apart = new Decimal(shown).minus(rounded).abs().toNumber();
          expect(apart).toBeLessThan(Math.max(2e-9, 2e-11 * rounded.abs().toNumber()));
        } else {
          expect(shown).toBe(formatNumber(rounded.toNumber()));
          expect(new Decimal(shown).equals(rounded)).toBe(true);
        }
      }),
      { numRuns: 4000 },
    );
  });

  it('shows what was typed when it is shown in the unit that was typed', () => {
    const typed = fc.tuple(fc.constantFrom(...allUnits), fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 4 }));
    fc.assert(
      fc.property(typed, ([pair, whole, places]) => {
        const text = new Decimal(whole).dividedBy(10 ** places).toString();
        expect(shownNumber(pair, pair.kind(Number(text), pair.unit as never))).toBe(text);
      }),
      { numRuns: 4000 },
    );
  });

  it('is rounded as a person rounds: halves away from zero, trailing zeros kept', () => {
    fc.assert(
      fc.property(conversions, fc.integer({ min: 1, max: 11 }), ({ from, to, text }, digits) => {
        const exact = convertExact(from.kind.kind, text, from.unit as never, to.unit as never, { digits: 60 });
        if (!exact.ok) throw new Error(exact.issue.code);
        const truth = new Decimal(exact.text);
        if (nearTie(truth, digits) || from.kind.kind === 'temperature') return;
        const shown = shownNumber(to, from.kind(Number(text), from.unit as never), digits);
        expect(new Decimal(shown).equals(truth.toSignificantDigits(digits, Decimal.ROUND_HALF_UP))).toBe(true);
        const significant = shown.replace(/e.*$/, '').replace(/[-.]/g, '').replace(/^0+/, '');
        expect(significant.length).toBeGreaterThanOrEqual(digits);
      }),
      { numRuns: 4000 },
    );
  });

  it('is read back as the same quantity in the same unit', () => {
    fc.assert(
      fc.property(conversions, fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }), ({ from, to, text }, digits) => {
        const { kind } = from;
        const quantity = kind(Number(text), from.unit as never);
        const written = kind.format(quantity, to.unit as never, digits === undefined ? {} : { digits });
        const parsed = kind.parse(written);
        // To one digit -272.15 °C is -300 °C, which does not exist.
        if (!parsed.ok && parsed.issue.code === 'below_absolute_zero' && (digits ?? 12) < 6) return;
        if (!parsed.ok) throw new Error(`${written}: ${parsed.issue.code}`);
        expect(parsed.unit).toBe(to.unit);
        const shown = kind.in(quantity, to.unit as never);
        const slack = kind.kind === 'temperature' ? 1e-9 : 0;
        expect(Math.abs(parsed.value - shown)).toBeLessThanOrEqual(Math.abs(shown) * 0.5001 * 10 ** (1 - (digits ?? 12)) + slack);
        expect(kind.format(parsed.quantity, to.unit as never, digits === undefined ? {} : { digits })).toBe(written);
      }),
      { numRuns: 4000 },
    );
  });

  it('shows an uncertainty with two digits, and the value to the same place', () => {
    const spread = fc.tuple(fc.integer({ min: 10, max: 99 }), fc.integer({ min: -4, max: 1 }));
    const value = fc.tuple(fc.integer({ min: 100, max: 99_999 }), fc.integer({ min: -3, max: 0 }));
    fc.assert(
      fc.property(fc.constantFrom(...allUnits), value, spread, ({ kind, unit }, [whole, exponent], [width, place]) => {
        const number = new Decimal(`${whole}e${exponent}`);
        const text = `${number} ± ${new Decimal(`${width}e${place}`)}`;
        // "1.001 ± 10 rpm" is asked about: its point could part thousands.
        fc.pre(!(['km', 'mi', 'rpm'].includes(unit) && /^[1-9]\d{0,2}\.\d{3} ± [1-9]/.test(text)));
        const parsed = kind.parse(kind.symbol(unit as never) === '' ? text : `${text} ${kind.symbol(unit as never)}`);
        if (!parsed.ok || parsed.uncertainty === undefined) throw new Error(`${text} ${unit} is not read`);
        const shown = kind.format(parsed.quantity, unit as never, { uncertainty: parsed.uncertainty, unitless: true });
        const decimals = Math.max(0, -place);
        const step = new Decimal(10).pow(place);
        expect(shown).toBe(`${number.toNearest(step).toFixed(decimals)} ± ${step.times(width).toFixed(decimals)}`);
      }),
      { numRuns: 2000 },
    );
  });

  it('never shows minus zero, and says plainly what is no number', () => {
    fc.assert(
      fc.property(fc.double(), fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }), (value, digits) => {
        const shown = formatNumber(value, digits);
        expect(Number(shown)).toBe(Number.isFinite(value) ? Number(shown) + 0 : value);
        expect(shown).not.toMatch(/^-0(\.0*)?$/);
        if (Number.isFinite(value)) expect(shown).toMatch(/^-?\d+(\.\d+)?(e-?\d+)?$/);
      }),
      { numRuns: 4000 },
    );
  });
});
