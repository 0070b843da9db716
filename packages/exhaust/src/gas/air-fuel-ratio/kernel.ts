import { molarMassOfDryAir } from '../constants.js';
import { atomicMass, dryAir } from '../species.js';

/** A fuel CHαOβ; sulphur and nitrogen of road fuels are too little to count. */
export interface FuelFormula {
  /** Atoms of hydrogen per atom of carbon, α. */
  readonly hydrogenToCarbon: number;
  /** Atoms of oxygen per atom of carbon, β. */
  readonly oxygenToCarbon: number;
}

/** Diesel no. 2, CH1.80, 40 CFR 1065.655 Table 2. */
export const dieselFuel: FuelFormula = { hydrogenToCarbon: 1.8, oxygenToCarbon: 0 };

/** Mass of fuel that holds one mole of carbon, in kg/mol. */
export function fuelMassPerCarbon({ hydrogenToCarbon, oxygenToCarbon }: FuelFormula): number {
  return atomicMass.carbon + hydrogenToCarbon * atomicMass.hydrogen + oxygenToCarbon * atomicMass.oxygen;
}

/** Carbon mass over fuel mass, 40 CFR 1065.655(d). */
export function carbonMassFraction(fuel: FuelFormula): number {
  return atomicMass.carbon / fuelMassPerCarbon(fuel);
}

/** Moles of oxygen that burn one mole of carbon with its hydrogen: 1 + α/4 − β/2. */
export function oxygenDemand({ hydrogenToCarbon, oxygenToCarbon }: FuelFormula): number {
  return 1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2;
}

/** Dry air over fuel by mass in a complete mixture, with the composition of dry air of 40 CFR 1065. */
export function stoichiometricAirFuelRatio(fuel: FuelFormula = dieselFuel, airMolarMass = molarMassOfDryAir): number {
  return ((oxygenDemand(fuel) / dryAir.oxygen) * airMolarMass) / fuelMassPerCarbon(fuel);
}

/** The same after UN Regulation 49, whose rounded 138.0 makes it 0.2 % lower. */
export function stoichiometricAirFuelRatioRegulation49({ hydrogenToCarbon, oxygenToCarbon }: FuelFormula): number {
  const fuelMass = 12.011 + 1.00794 * hydrogenToCarbon + 15.9994 * oxygenToCarbon;
  return (138.0 * (1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2)) / fuelMass;
}
