import type { ExhaustSpecies } from '../species.js';

/** Seven coefficients below and above the common temperature of 1000 K, and the range they were fitted for in K. */
export interface NasaPolynomial {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly range: readonly [number, number];
}

export const nasaBreakTemperature = 1000;

/**
 * cp/R = a1 + a2 T + a3 T² + a4 T³ + a5 T⁴ and h/R = a1 T + a2 T²/2 + … + a6.
 *
 * Nitrogen: NASA TM-4513 (1993); oxygen, carbon dioxide, water and argon: GRI-Mech 3.0 thermodynamic data.
 */
export const nasaPolynomials: Readonly<Record<ExhaustSpecies, NasaPolynomial>> = {
  nitrogen: {
    range: [200, 6000],
    low: [3.53100528, -1.23660987e-4, -5.02999437e-7, 2.43530612e-9, -1.40881235e-12, -1046.97628],
    high: [2.95257626, 1.39690057e-3, -4.92631691e-7, 7.86010367e-11, -4.60755321e-15, -923.948645],
  },
  oxygen: {
    range: [200, 3500],
    low: [3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12, -1063.94356],
    high: [3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14, -1088.45772],
  },
  carbonDioxide: {
    range: [200, 3500],
    low: [2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13, -48371.9697],
    high: [3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14, -48759.166],
  },
  water: {
    range: [200, 3500],
    low: [4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12, -30293.7267],
    high: [3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14, -30004.2971],
  },
  argon: { range: [200, 5000], low: [2.5, 0, 0, 0, 0, -745.375], high: [2.5, 0, 0, 0, 0, -745.375] },
};

function coefficients(polynomial: NasaPolynomial, temperature: number): readonly number[] {
  return temperature < nasaBreakTemperature ? polynomial.low : polynomial.high;
}

/** Molar heat capacity over the gas constant at a temperature in K. */
export function nasaHeatCapacity(polynomial: NasaPolynomial, temperature: number): number {
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0] = coefficients(polynomial, temperature);
  return a1 + temperature * (a2 + temperature * (a3 + temperature * (a4 + temperature * a5)));
}

/** Molar enthalpy over the gas constant in K, enthalpy of formation included, at a temperature in K. */
export function nasaEnthalpy(polynomial: NasaPolynomial, temperature: number): number {
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0, a6 = 0] = coefficients(polynomial, temperature);
  return a6 + temperature * (a1 + temperature * (a2 / 2 + temperature * (a3 / 3 + temperature * (a4 / 4 + (temperature * a5) / 5))));
}
