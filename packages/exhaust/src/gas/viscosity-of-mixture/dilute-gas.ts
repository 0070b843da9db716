import { type DiluteGasConstants, diluteAir, diluteAirViscosity } from '../dynamic-viscosity/kernel.js';
import type { PerSpecies } from '../species.js';

const lemmonJacobsen = (molarMass: number, energy: number, size: number): DiluteGasConstants => ({ ...diluteAir, molarMass, energy, size });

/** Lemmon and Jacobsen 2004, Table I. */
export const diluteNitrogen = lemmonJacobsen(28.01348, 98.94, 0.3656);
export const diluteOxygen = lemmonJacobsen(31.9988, 118.5, 0.3428);
export const diluteArgon = lemmonJacobsen(39.948, 143.2, 0.335);

const carbonDioxideCollision = [0.235156, -0.491266, 5.211155e-2, 5.347906e-2, -1.537102e-2] as const;

/** Viscosity of dilute carbon dioxide in Pa·s, 200 K to 1500 K; Vesovic and others 1990, Fenghour and others 1998, Eqs 3 to 5. */
export function diluteCarbonDioxideViscosity(temperature: number): number {
  const logarithm = Math.log(temperature / 251.196);
  const exponent = carbonDioxideCollision.reduce((sum, coefficient, power) => sum + coefficient * logarithm ** power, 0);
  return (1.00697e-6 * Math.sqrt(temperature)) / Math.exp(exponent);
}

/** Viscosity of dilute water vapour in Pa·s, 253 K to 1173 K; IAPWS R12-08, Eq. 11 and Table 1. */
export function diluteWaterViscosity(temperature: number): number {
  const reduced = temperature / 647.096;
  const sum = 1.67752 + 2.20462 / reduced + 0.6366564 / reduced ** 2 - 0.241605 / reduced ** 3;
  return (100e-6 * Math.sqrt(reduced)) / sum;
}

/** Viscosity in Pa·s of each pure gas by its dilute-gas correlation. */
export function diluteViscosities(temperature: number): PerSpecies {
  return {
    nitrogen: diluteAirViscosity(temperature, diluteNitrogen),
    oxygen: diluteAirViscosity(temperature, diluteOxygen),
    carbonDioxide: diluteCarbonDioxideViscosity(temperature),
    water: diluteWaterViscosity(temperature),
    argon: diluteAirViscosity(temperature, diluteArgon),
  };
}
