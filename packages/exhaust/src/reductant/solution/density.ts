import { standardReductantDensity, standardUreaFraction } from '../constants.js';

/** 20 °C in K, to which the limits of ISO 22241-1 refer. */
export const referenceTemperature = 293.15;

/** Density of water at 20 °C in kg/m³ (Tanaka et al., Metrologia 38, 301–309, 2001). */
export const waterDensityAt20 = 998.207;

/** Density of urea solution over that of water, minus one, at 25 °C, from the mass fraction of urea (Pace 1986). */
export function relativeExcessDensity(ureaFraction: number): number {
  return 0.2658 * ureaFraction + 0.033 * ureaFraction ** 2;
}

/**
 * Brings the relation, measured at 25 °C, to the middle of the range that ISO 22241-1 gives for 32.5 % at 20 °C.
 * It is 1.023, so the two sources differ by 2 kg/m³ at 32.5 %.
 */
export const densityScale = (standardReductantDensity / waterDensityAt20 - 1) / relativeExcessDensity(standardUreaFraction);

/** Density of urea solution at 20 °C in kg/m³ from the mass fraction of urea, 0 to 0.5. */
export function ureaSolutionDensityAt20(ureaFraction: number): number {
  return waterDensityAt20 * (1 + densityScale * relativeExcessDensity(ureaFraction));
}

/** Loss of density in kg/m³ per K near 20 °C: water 0.21 (Tanaka et al. 2001), reductant about 0.4 (common practice). */
export function densitySlope(ureaFraction: number): number {
  return 0.21 + (0.19 * ureaFraction) / standardUreaFraction;
}

/** Density of urea solution in kg/m³ at a temperature in K, linear about 20 °C; from −5 °C to 45 °C. */
export function ureaSolutionDensity(ureaFraction: number, temperature: number): number {
  return ureaSolutionDensityAt20(ureaFraction) - densitySlope(ureaFraction) * (temperature - referenceTemperature);
}

/** Density over that of water, minus one, at 25 °C by the relation, from the density at 20 °C in kg/m³. */
export function excessFromDensityAt20(density: number): number {
  return (density / waterDensityAt20 - 1) / densityScale;
}

/** Mass fraction of urea from the density at 20 °C in kg/m³; undoes `ureaSolutionDensityAt20`. */
export function ureaFractionFromDensityAt20(density: number): number {
  const excess = excessFromDensityAt20(density);
  return (Math.sqrt(0.2658 ** 2 + 4 * 0.033 * excess) - 0.2658) / (2 * 0.033);
}
