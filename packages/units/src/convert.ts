import type { UnitData } from './types.js';

/** A value in a unit to SI. */
export function toSI(value: number, unit: UnitData): number {
  if (unit.reciprocal === true) return unit.factor / value;
  return unit.offset === undefined ? value * unit.factor : (value + unit.offset) * unit.factor;
}

/** An SI value to a unit. Factors below one divide exactly more often by their reciprocal's inverse than they multiply. */
export function fromSI(si: number, unit: UnitData): number {
  if (unit.reciprocal === true) return unit.factor / si;
  return unit.offset === undefined ? si / unit.factor : si / unit.factor - unit.offset;
}

/** Width of a small change in a unit; scale only. For reciprocal units the change at a value. */
export function changeFromSI(change: number, unit: UnitData, at: number): number {
  if (unit.reciprocal === true) return (unit.factor * Math.abs(change)) / (at * at);
  return change / unit.factor;
}

export function changeToSI(change: number, unit: UnitData, value: number): number {
  if (unit.reciprocal === true) return (unit.factor * Math.abs(change)) / (value * value);
  return change * unit.factor;
}
