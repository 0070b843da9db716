import { molarGasConstant } from '../constants.js';
import { molarMassOfMixture, moleMean, type PerSpecies, perExhaustSpecies } from '../species.js';
import { nasaEnthalpy, nasaHeatCapacity, nasaPolynomials } from './nasa.js';

/** Temperature in K that sensible enthalpies count from. */
export const enthalpyReferenceTemperature = 298.15;

/** Molar heat capacity of a mixture at constant pressure in J/(mol·K); temperature in K. */
export function molarHeatCapacityOfMixture(fractions: PerSpecies, temperature: number, gasConstant = molarGasConstant): number {
  return (
    gasConstant *
    moleMean(
      fractions,
      perExhaustSpecies((species) => nasaHeatCapacity(nasaPolynomials[species], temperature)),
    )
  );
}

/** Molar enthalpy of a mixture above 25 °C in J/mol, the water staying vapour; temperature in K. */
export function sensibleEnthalpyOfMixture(fractions: PerSpecies, temperature: number, gasConstant = molarGasConstant): number {
  const above = perExhaustSpecies(
    (species) => nasaEnthalpy(nasaPolynomials[species], temperature) - nasaEnthalpy(nasaPolynomials[species], enthalpyReferenceTemperature),
  );
  return gasConstant * moleMean(fractions, above);
}

/** Heat capacity of a mixture at constant pressure in J/(kg·K); temperature in K. */
export function specificHeatCapacityOfMixture(fractions: PerSpecies, temperature: number, gasConstant = molarGasConstant): number {
  return molarHeatCapacityOfMixture(fractions, temperature, gasConstant) / molarMassOfMixture(fractions);
}

/** Enthalpy of a mixture above 25 °C in J/kg; temperature in K. */
export function specificEnthalpyOfMixture(fractions: PerSpecies, temperature: number, gasConstant = molarGasConstant): number {
  return sensibleEnthalpyOfMixture(fractions, temperature, gasConstant) / molarMassOfMixture(fractions);
}

/** Ratio of specific heats cp/cv of an ideal gas. */
export function heatCapacityRatio(molarHeatCapacity: number, gasConstant = molarGasConstant): number {
  return molarHeatCapacity / (molarHeatCapacity - gasConstant);
}
