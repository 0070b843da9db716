import { type FuelFormula, fuelMassPerCarbon, oxygenDemand } from '../air-fuel-ratio/kernel.js';
import { molarMassOfDryAir } from '../constants.js';
import { dryAir, exhaustSpecies, molarMassOf, type PerSpecies, perExhaustSpecies } from '../species.js';

export interface ExhaustCompositionInput {
  /** Air over the air that the fuel needs, 1 or more. */
  readonly lambda: number;
  readonly fuel: FuelFormula;
  /** Moles of water per mole of dry intake air. */
  readonly waterPerDryAir: number;
}

/** Moles of water per mole of dry air from mass of water per mass of dry air. */
export function waterPerDryAirOfHumidity(
  humidityRatio: number,
  airMolarMass = molarMassOfDryAir,
  waterMolarMass = molarMassOf.water,
): number {
  return (humidityRatio * airMolarMass) / waterMolarMass;
}

/** Moles of dry intake air per mole of carbon burnt. */
export function airPerCarbon({ lambda, fuel }: Pick<ExhaustCompositionInput, 'lambda' | 'fuel'>): number {
  return (lambda * oxygenDemand(fuel)) / dryAir.oxygen;
}

/** Moles of each gas in the wet exhaust per mole of carbon burnt completely. */
export function exhaustPerCarbon(input: ExhaustCompositionInput): PerSpecies {
  const air = airPerCarbon(input);
  return {
    nitrogen: air * dryAir.nitrogen,
    oxygen: (input.lambda - 1) * oxygenDemand(input.fuel),
    carbonDioxide: 1 + air * dryAir.carbonDioxide,
    water: input.fuel.hydrogenToCarbon / 2 + air * input.waterPerDryAir,
    argon: air * dryAir.argon,
  };
}

/** Mole fractions of wet exhaust after complete combustion, by atom balance. */
export function exhaustComposition(input: ExhaustCompositionInput): PerSpecies {
  const moles = exhaustPerCarbon(input);
  const total = exhaustSpecies.reduce((sum, species) => sum + moles[species], 0);
  return perExhaustSpecies((species) => moles[species] / total);
}

/** Moles of wet exhaust per kg of fuel. */
export function exhaustMolesPerFuelMass(input: ExhaustCompositionInput): number {
  const moles = exhaustPerCarbon(input);
  return exhaustSpecies.reduce((sum, species) => sum + moles[species], 0) / fuelMassPerCarbon(input.fuel);
}

/** Mole fractions without the water. */
export function dryBasis(wet: PerSpecies): PerSpecies {
  return perExhaustSpecies((species) => (species === 'water' ? 0 : wet[species] / (1 - wet.water)));
}
