import { molarMassOfUrea, standardUreaFraction } from '../constants.js';
import { relativeExcessDensity } from './density.js';

/** Refractive index of water at 20 °C for the sodium D line, relative to air (handbook value). */
export const waterIndexAt20 = 1.33299;

/** Middle of the range 1.3814 to 1.3843 of ISO 22241-1, for 32.5 % of urea at 20 °C. */
export const standardReductantIndex = 1.38285;

/** Density of water at 25 °C in kg/m³ (Tanaka et al. 2001). */
export const waterDensityAt25 = 997.047;

/** Molar concentration of urea in mol/L at 25 °C from the index above that of water (Pace 1986, after Warren and Gordon 1966). */
export function molarityFromIndexDifference(difference: number): number {
  return 117.66 * difference + 29.753 * difference ** 2 + 185.56 * difference ** 3;
}

/** Molar concentration in mol/L of a solution with this mass fraction of urea, at 25 °C. */
export function ureaMolarity(ureaFraction: number): number {
  return (ureaFraction * waterDensityAt25 * (1 + relativeExcessDensity(ureaFraction))) / (1000 * molarMassOfUrea);
}

/** Value of `x` where an increasing, nearly straight function meets a target; Newton's method with a numerical slope. */
function invert(increasing: (x: number) => number, target: number, start: number): number {
  let x = start;
  for (let step = 0; step < 20; step += 1) {
    const slope = (increasing(x + 1e-6) - increasing(x - 1e-6)) / 2e-6;
    const change = (target - increasing(x)) / slope;
    x += change;
    if (Math.abs(change) < 1e-14) break;
  }
  return x;
}

/** Index above that of water at 25 °C from the mass fraction of urea. */
export function indexDifference(ureaFraction: number): number {
  return invert(molarityFromIndexDifference, ureaMolarity(ureaFraction), 0.15 * ureaFraction);
}

/** Brings the relation, measured at 25 °C, to the middle of the range of ISO 22241-1 at 20 °C; it is 1.014. */
export const indexScale = (standardReductantIndex - waterIndexAt20) / indexDifference(standardUreaFraction);

/** Refractive index at 20 °C, sodium D line, from the mass fraction of urea, 0 to 0.5. */
export function refractiveIndexAt20(ureaFraction: number): number {
  return waterIndexAt20 + indexScale * indexDifference(ureaFraction);
}

/** Index above that of water at 25 °C by the relation, from the index at 20 °C. */
export function indexDifferenceAt20(index: number): number {
  return (index - waterIndexAt20) / indexScale;
}

/** Mass fraction of urea from the refractive index at 20 °C; undoes `refractiveIndexAt20`. */
export function ureaFractionFromIndexAt20(index: number): number {
  const molarity = molarityFromIndexDifference(indexDifferenceAt20(index));
  return invert(ureaMolarity, molarity, molarity / 18);
}

/**
 * Loss of index per K near 20 °C: water 0.9e-4 (handbook), reductant about 1.6e-4. The latter follows from the
 * Lorentz–Lorenz equation, dn/dT = (n² − 1)(n² + 2)/(6 n) dρ/(ρ dT), with 0.4 kg/m³ per K.
 */
export function indexSlope(ureaFraction: number): number {
  return 0.9e-4 + (0.7e-4 * ureaFraction) / standardUreaFraction;
}
