import { diluteAirViscosity } from '../dynamic-viscosity/kernel.js';

/** Thermal conductivity of air in W/(m·K) at a temperature in K, US Standard Atmosphere 1976, Eq. 53. */
export function airConductivityStandardAtmosphere(temperature: number): number {
  return (2.64638e-3 * temperature ** 1.5) / (temperature + 245.4 * 10 ** (-12 / temperature));
}

/** Thermal conductivity of dilute air in W/(m·K) at a temperature in K, Lemmon and Jacobsen 2004, Eq. 5. */
export function diluteAirConductivity(temperature: number): number {
  const tau = 132.6312 / temperature;
  const microPascalSeconds = diluteAirViscosity(temperature) * 1e6;
  return (1.308 * microPascalSeconds + 1.405 * tau ** -1.1 - 1.036 * tau ** -0.3) * 1e-3;
}
