import { molarGasConstant } from '../constants.js';
import { nasaHeatCapacity, nasaPolynomials } from '../heat-capacity/nasa.js';
import { exhaustSpecies, molarMassOf, type PerSpecies, perSpecies } from '../species.js';
import { diluteViscosities } from '../viscosity-of-mixture/dilute-gas.js';
import { wilkeFactor } from '../viscosity-of-mixture/kernel.js';

/** Conductivity of a pure gas in W/(m·K): modified Eucken, Poling and others 2001, Eq. 10-3.3; argon by the monatomic form. */
function euckenConductivities(viscosities: PerSpecies, temperature: number): PerSpecies {
  return perSpecies((species) => {
    const heatCapacity = nasaHeatCapacity(nasaPolynomials[species], temperature) - 1;
    const factor = species === 'argon' ? 2.5 * heatCapacity : 1.32 * heatCapacity + 1.77;
    return (factor * molarGasConstant * viscosities[species]) / molarMassOf[species];
  });
}

/** Conductivity of a mixture in W/(m·K) at a temperature in K: Wassiljewa with the factors of Mason and Saxena, Poling and others 2001, Eq. 10-6.2. */
export function conductivityOfMixture(fractions: PerSpecies, temperature: number): number {
  const viscosities = diluteViscosities(temperature);
  const conductivities = euckenConductivities(viscosities, temperature);
  let mixture = 0;
  for (const gas of exhaustSpecies) {
    let denominator = 0;
    for (const other of exhaustSpecies) {
      denominator += fractions[other] * wilkeFactor(viscosities[gas], viscosities[other], molarMassOf[gas], molarMassOf[other]);
    }
    mixture += (fractions[gas] * conductivities[gas]) / denominator;
  }
  return mixture;
}
