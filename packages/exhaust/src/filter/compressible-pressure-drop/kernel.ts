import type { LoadedDropParts } from '../loaded-pressure-drop/kernel.js';

/**
 * Drop of a gas that expands on its way from that of an incompressible gas with the density at the outlet, both in Pa:
 * p² - p1² = 2 p1 Δp. Konstandopoulos 2008 Eqs A.3 to A.9 integrate p dp over every part; all of them add up to this.
 */
export function compressibleDrop(incompressibleDrop: number, outletPressure: number): number {
  return outletPressure * (Math.sqrt(1 + (2 * incompressibleDrop) / outletPressure) - 1);
}

/** The incompressible drop, with the density at the outlet, behind a drop of an expanding gas, both in Pa. */
export function incompressibleDrop(compressible: number, outletPressure: number): number {
  return compressible * (1 + compressible / (2 * outletPressure));
}

/** Where the pressure is taken that a volume flow belongs to. */
export type FlowPressure = 'before' | 'middle' | 'behind';

/**
 * Volume flow behind the filter over the one given, from parts computed with the given flow and the density behind the
 * filter; undefined when no pressure drives so much gas through.
 *
 * With p Q the same everywhere the viscous parts v grow with p Q and the inertial parts i with the square of it at even
 * temperature, so that p² - p1² = 2 (pQ v + (pQ²/p1) i), pQ being the pressure that Q belongs to. That is a square equation for
 * pQ = p. For pQ = (p + p1)/2 it becomes p - p1 = v + i pQ/p1: in the middle the incompressible sum is exact.
 */
export function flowBehind(parts: LoadedDropParts, outletPressure: number, at: FlowPressure): number | undefined {
  if (at === 'behind') return 1;
  const { contractionDrop, expansionDrop, forchheimerDrop } = parts;
  const inertial = (contractionDrop + expansionDrop + forchheimerDrop) / outletPressure;
  const viscous = Object.values(parts).reduce((sum: number, part: number) => sum + part, 0) / outletPressure - inertial;
  if (at === 'middle') return inertial < 2 ? 1 + (viscous + inertial) / (2 - inertial) : undefined;
  const left = 1 - 2 * inertial;
  return left > 0 ? (viscous + Math.sqrt(viscous ** 2 + left)) / left : undefined;
}

/** The order in which the gas meets the parts, from the outlet upwards. */
const upwards = [
  'expansionDrop',
  'outletChannelDrop',
  'wallDrop',
  'forchheimerDrop',
  'ashDrop',
  'sootDrop',
  'inletChannelDrop',
  'contractionDrop',
] as const satisfies readonly (keyof LoadedDropParts)[];

/** The same for every part, at the pressure at its place; they sum to the drop of the whole. */
export function compressibleDropParts(parts: LoadedDropParts, outletPressure: number): LoadedDropParts {
  const result: { -readonly [Part in keyof LoadedDropParts]: number } = { ...parts };
  const root = (sum: number) => Math.sqrt(1 + (2 * sum) / outletPressure);
  let below = 0;
  for (const part of upwards) {
    const before = root(below);
    below += parts[part];
    // The difference of the two roots, written so that a small part keeps its digits.
    result[part] = (2 * parts[part]) / (before + root(below));
  }
  return result;
}
