import { Exact, evaluateFactor, longestEnding, type Rational } from './factor-text.js';
import type { UnitData } from './types.js';

/** A decimal number as text, and how far it can be trusted to the last digit. */
export interface ExactNumber {
  /** Decimal text; with a power of ten where it would have more than 40 zeros. */
  readonly text: string;
  /** True where the text is the exact result: nothing was rounded and no factor is itself a measured or rounded number. */
  readonly exact: boolean;
  /** True where the decimals have no end and were cut to the digits asked for. */
  readonly rounded: boolean;
}

export function rational(over: string, under = '1'): Rational {
  return { over: new Exact(over), under: new Exact(under) };
}

const offsetOf = (unit: UnitData) => new Exact(unit.offset);

/** A value in a unit to SI. */
export function exactToSI(value: Rational, unit: UnitData): Rational {
  const factor = evaluateFactor(unit.factorText);
  if (unit.reciprocal) return { over: factor.over.times(value.under), under: factor.under.times(value.over) };
  const shifted = value.over.plus(offsetOf(unit).times(value.under));
  return { over: shifted.times(factor.over), under: value.under.times(factor.under) };
}

/** An SI value to a unit. */
export function exactFromSI(si: Rational, unit: UnitData): Rational {
  const factor = evaluateFactor(unit.factorText);
  if (unit.reciprocal) return { over: factor.over.times(si.under), under: factor.under.times(si.over) };
  const under = si.under.times(factor.over);
  return { over: si.over.times(factor.under).minus(offsetOf(unit).times(under)), under };
}

/** The width of a small change in a unit, in SI; for reciprocal units at a value in that unit. */
export function exactChangeToSI(change: Rational, unit: UnitData, at: Rational): Rational {
  const factor = evaluateFactor(unit.factorText);
  const plain = { over: change.over.times(factor.over), under: change.under.times(factor.under) };
  if (!unit.reciprocal) return plain;
  return { over: plain.over.times(at.under).times(at.under), under: plain.under.times(at.over).times(at.over) };
}

const defaultDigits = 30;

/** Write a rational number: all of its decimals where they end, otherwise rounded once, halves away from zero. */
export function exactText({ over, under }: Rational, exactFactors: boolean, digits = defaultDigits): ExactNumber {
  const quotient = over.dividedBy(under);
  const ends = quotient.precision() <= longestEnding && quotient.times(under).equals(over);
  const kept = Math.min(1000, Math.max(1, Math.round(digits)));
  const shown = ends ? quotient : quotient.toSignificantDigits(kept);
  const plain = Math.abs(shown.e) <= 40 ? shown.toFixed() : shown.toString();
  return { text: shown.isZero() ? '0' : plain, exact: ends && exactFactors, rounded: !ends };
}

export function hasExactFactor(unit: UnitData): boolean {
  return !unit.factorText.startsWith('~');
}
