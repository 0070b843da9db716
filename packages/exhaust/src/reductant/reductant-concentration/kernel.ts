import { densitySlope, referenceTemperature, ureaFractionFromDensityAt20 } from '../solution/density.js';
import { indexSlope, ureaFractionFromIndexAt20 } from '../solution/refractive-index.js';

/** Limits of ISO 22241-1:2019, Table 1; index and density at 20 °C. */
export const iso22241Limits = {
  ureaFraction: [0.318, 0.332],
  refractiveIndex: [1.3814, 1.3843],
  density: [1087, 1093],
} as const;

/** Refractive index per mass fraction of urea near 32.5 %: 0.00165 are one per cent. */
export const indexPerUrea = 0.165;

/** A property read at some temperature and what it comes to at 20 °C. */
export interface ReadingAt20 {
  readonly at20: number;
  /** Uncertainty of the value at 20 °C by the instrument and the shift, in the unit of the property. */
  readonly uncertainty: number;
  readonly ureaFraction: number;
  /** Uncertainty of the mass fraction by the relation, the shift and the instrument. */
  readonly ureaUncertainty: number;
}

/** The slope depends a little on the concentration, which depends on the shifted value: a few rounds settle it. */
function shift(reading: number, temperature: number, slope: (urea: number) => number, inverse: (at20: number) => number): [number, number] {
  let urea = inverse(reading);
  let at20 = reading;
  for (let round = 0; round < 6; round += 1) {
    at20 = reading + slope(Math.min(0.52, Math.max(0, urea))) * (temperature - referenceTemperature);
    urea = inverse(at20);
  }
  return [at20, urea];
}

/** Urea from an index read at a temperature in K by an instrument that reads within ± `instrument`. */
export function concentrationFromIndex(index: number, temperature: number, instrument: number): ReadingAt20 {
  const [at20, ureaFraction] = shift(index, temperature, indexSlope, ureaFractionFromIndexAt20);
  const uncertainty = Math.hypot(instrument, 0.4e-4 * (temperature - referenceTemperature));
  // ±0.0005 is what the published quadratic leaves.
  return { at20, ureaFraction, uncertainty, ureaUncertainty: Math.hypot(0.0005, uncertainty) / indexPerUrea };
}

/** Urea from a density in kg/m³ read at a temperature in K by an instrument that reads within ± `instrument`. */
export function concentrationFromDensity(density: number, temperature: number, instrument: number): ReadingAt20 {
  const [at20, ureaFraction] = shift(density, temperature, densitySlope, ureaFractionFromDensityAt20);
  const uncertainty = Math.hypot(instrument, 0.2 * (temperature - referenceTemperature));
  // The two published relations differ by 2 kg/m³; 2.9 kg/m³ are one per cent of urea.
  return { at20, ureaFraction, uncertainty, ureaUncertainty: Math.hypot(2, uncertainty) / 289 };
}

export type QualityVerdict = 'within' | 'too-weak' | 'too-strong' | 'near-lower-limit' | 'near-upper-limit';

/** Where a value stands to two limits when it is known to ± its uncertainty. */
export function qualityVerdict(value: number, uncertainty: number, [low, high]: readonly [number, number]): QualityVerdict {
  if (value + uncertainty < low) return 'too-weak';
  if (value - uncertainty > high) return 'too-strong';
  if (value - uncertainty < low) return 'near-lower-limit';
  return value + uncertainty > high ? 'near-upper-limit' : 'within';
}
