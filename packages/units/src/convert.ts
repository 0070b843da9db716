import type { UnitData } from './types.js';

/** A value in a unit to SI. */
export function toSI(value: number, unit: UnitData): number {
  return unit.reciprocal ? unit.factor / value : (value + unit.offset) * unit.factor;
}

/** An SI value to a unit. */
export function fromSI(si: number, unit: UnitData): number {
  return unit.reciprocal ? unit.factor / si : si / unit.factor - unit.offset;
}

/** The width of a small change given in SI, in a unit: scale only. For reciprocal units the change at a value in SI. */
export function changeFromSI(change: number, unit: UnitData, at: number): number {
  return unit.reciprocal ? (unit.factor * Math.abs(change)) / (at * at) : change / unit.factor;
}

/** The width of a small change given in a unit, in SI: scale only. For reciprocal units the change at a value in that unit. */
export function changeToSI(change: number, unit: UnitData, at: number): number {
  return unit.reciprocal ? (unit.factor * Math.abs(change)) / (at * at) : change * unit.factor;
}
