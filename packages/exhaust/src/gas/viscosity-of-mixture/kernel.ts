import { type ExhaustSpecies, exhaustSpecies, molarMassOf, type PerSpecies } from '../species.js';
import { diluteViscosities } from './dilute-gas.js';
import { sutherlandViscosities } from './sutherland-rows.js';

/** Wilke 1950: how much one gas hinders another; viscosities in any one unit, molar masses in any one unit. */
export function wilkeFactor(viscosity: number, otherViscosity: number, molarMass: number, otherMolarMass: number): number {
  const root = 1 + Math.sqrt(viscosity / otherViscosity) * (otherMolarMass / molarMass) ** 0.25;
  return root ** 2 / Math.sqrt(8 * (1 + molarMass / otherMolarMass));
}

/** What divides the share of one gas in Wilke's rule: the factors of all gases, by their shares. */
export function wilkeDenominator(gas: ExhaustSpecies, fractions: PerSpecies, viscosities: PerSpecies): number {
  return exhaustSpecies.reduce(
    (sum, other) => sum + fractions[other] * wilkeFactor(viscosities[gas], viscosities[other], molarMassOf[gas], molarMassOf[other]),
    0,
  );
}

/** Property of a mixture from that of its pure gases, weighted by mole fractions and the factors of their viscosities. */
export function mixByWilkeFactors(fractions: PerSpecies, property: PerSpecies, viscosities: PerSpecies): number {
  return exhaustSpecies.reduce((sum, gas) => sum + (fractions[gas] * property[gas]) / wilkeDenominator(gas, fractions, viscosities), 0);
}

/** Viscosity of a mixture in Pa·s from those of its pure gases, by Wilke's rule. */
export function wilkeViscosity(fractions: PerSpecies, viscosities: PerSpecies): number {
  return mixByWilkeFactors(fractions, viscosities, viscosities);
}

/** How the viscosities of the pure gases are had. */
export type ViscosityModel = 'sutherland' | 'dilute-gas';

/** Dynamic viscosity of exhaust in Pa·s at a temperature in K. */
export function exhaustViscosity(fractions: PerSpecies, temperature: number, model: ViscosityModel = 'sutherland'): number {
  return wilkeViscosity(fractions, model === 'sutherland' ? sutherlandViscosities(temperature) : diluteViscosities(temperature));
}
