import { molarGasConstant } from '../constants.js';

export interface GasDensityInput {
  /** Absolute pressure in Pa. */
  readonly pressure: number;
  /** Temperature in K. */
  readonly temperature: number;
  /** Molar mass in kg/mol. */
  readonly molarMass: number;
}

/**
 * Density of an ideal gas in kg/m³: p M / (R T).
 *
 * At exhaust pressures and temperatures the ideal law is within 0.1 % of real air.
 */
export function gasDensity({ pressure, temperature, molarMass }: GasDensityInput, gasConstant = molarGasConstant): number {
  return (pressure * molarMass) / (gasConstant * temperature);
}
