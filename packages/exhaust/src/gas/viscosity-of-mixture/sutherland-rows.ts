import { type SutherlandConstants, sutherlandViscosity } from '../dynamic-viscosity/kernel.js';
import { type ExhaustSpecies, type PerSpecies, perExhaustSpecies } from '../species.js';

const row = (referenceViscosity: number, referenceTemperature: number, sutherlandTemperature: number): SutherlandConstants => ({
  referenceViscosity,
  referenceTemperature,
  sutherlandTemperature,
});

/**
 * Sutherland constants of the pure gases, 40 CFR 1065.640 Table 4; argon has no row there and is counted as nitrogen.
 *
 * The table states 2 % within its ranges; water from 360 K to 1500 K only.
 */
export const sutherlandRows: Readonly<Record<ExhaustSpecies, SutherlandConstants>> = {
  nitrogen: row(1.663e-5, 273, 107),
  oxygen: row(1.919e-5, 273, 139),
  carbonDioxide: row(1.37e-5, 273, 222),
  water: row(1.12e-5, 350, 1064),
  argon: row(1.663e-5, 273, 107),
};

/** Viscosity in Pa·s of each pure gas by Sutherland's formula. */
export function sutherlandViscosities(temperature: number): PerSpecies {
  return perExhaustSpecies((species) => sutherlandViscosity(temperature, sutherlandRows[species]));
}
