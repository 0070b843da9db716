import type { PerSpecies } from '../species.js';
import { diluteViscosities } from '../viscosity-of-mixture/dilute-gas.js';
import { mixByWilkeFactors } from '../viscosity-of-mixture/kernel.js';
import { diluteConductivities } from './dilute-gas.js';

/** Thermal conductivity of air in W/(m·K) at a temperature in K, US Standard Atmosphere 1976, Eq. 53. */
export function airConductivityStandardAtmosphere(temperature: number): number {
  return (2.64638e-3 * temperature ** 1.5) / (temperature + 245.4 * 10 ** (-12 / temperature));
}

/**
 * Thermal conductivity of exhaust in W/(m·K) at a temperature in K from its mole fractions.
 *
 * Wassiljewa's rule with the factors of Mason and Saxena, Poling and others 2001, Eq. 10-6.2.
 */
export function exhaustConductivity(fractions: PerSpecies, temperature: number): number {
  return mixByWilkeFactors(fractions, diluteConductivities(temperature), diluteViscosities(temperature));
}
