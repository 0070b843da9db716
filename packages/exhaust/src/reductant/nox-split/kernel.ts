import { molarGasConstant } from '../../gas/constants.js';
import { molarMassOfNitricOxide, molarMassOfNitrogenDioxide } from '../constants.js';

export interface NoxMolarMasses {
  /** Molar masses in kg/mol. */
  readonly nitricOxide: number;
  readonly nitrogenDioxide: number;
}

const molarMasses: NoxMolarMasses = { nitricOxide: molarMassOfNitricOxide, nitrogenDioxide: molarMassOfNitrogenDioxide };

/** True mass of NO and NO2 over the mass when all is counted as NO2, from the molar share of NO2. */
export function trueMassShare(nitrogenDioxideShare: number, { nitricOxide, nitrogenDioxide }: NoxMolarMasses = molarMasses): number {
  return ((1 - nitrogenDioxideShare) * nitricOxide) / nitrogenDioxide + nitrogenDioxideShare;
}

export interface MassConcentrationInput {
  readonly moleFraction: number;
  /** Molar mass in kg/mol. */
  readonly molarMass: number;
  /** Absolute pressure in Pa and temperature in K of the reference state. */
  readonly pressure: number;
  readonly temperature: number;
}

/** Mass concentration in kg/m³ of an ideal gas component at a reference state: x M p/(R T). */
export function massConcentrationOf(input: MassConcentrationInput, gasConstant = molarGasConstant): number {
  return (input.moleFraction * input.molarMass * input.pressure) / (gasConstant * input.temperature);
}
