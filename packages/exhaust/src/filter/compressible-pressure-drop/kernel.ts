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

/** The same for every part, at the pressure that reigns there; they sum to the drop of the whole. */
export function compressibleDropParts(parts: LoadedDropParts, outletPressure: number): LoadedDropParts {
  const result: { -readonly [Part in keyof LoadedDropParts]: number } = { ...parts };
  let below = 0;
  for (const part of upwards) {
    const before = compressibleDrop(below, outletPressure);
    below += parts[part];
    result[part] = compressibleDrop(below, outletPressure) - before;
  }
  return result;
}
