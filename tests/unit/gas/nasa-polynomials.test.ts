import { type ExhaustSpecies, molarGasConstant, nasaEnthalpy, nasaHeatCapacity, nasaPolynomials } from '@wallflow/exhaust';
import { describe, expect, it } from 'vitest';

// JANAF tables, 4th edition, Chase 1998 (from memory): cp at 298.15 K in J/(mol·K), h(1000 K) − h(298.15 K) in kJ/mol.
const janaf: readonly (readonly [ExhaustSpecies, number, number])[] = [
  ['nitrogen', 29.124, 21.463],
  ['oxygen', 29.376, 22.703],
  ['carbonDioxide', 37.129, 33.397],
  ['water', 33.59, 26.0],
  ['argon', 20.786, 14.589],
];

// Enthalpies of formation at 298.15 K in kJ/mol, the same tables.
const formation: readonly (readonly [ExhaustSpecies, number, number])[] = [
  ['nitrogen', 0, 0.005],
  ['oxygen', 0, 0.005],
  ['carbonDioxide', -393.522, 0.03],
  ['water', -241.826, 0.03],
];

describe('NASA polynomials against the JANAF tables', () => {
  it.each(janaf)('%s', (species, heatCapacity, rise) => {
    const polynomial = nasaPolynomials[species];
    expect(Math.abs((molarGasConstant * nasaHeatCapacity(polynomial, 298.15)) / heatCapacity - 1)).toBeLessThan(5e-4);
    const ours = (molarGasConstant * (nasaEnthalpy(polynomial, 1000) - nasaEnthalpy(polynomial, 298.15))) / 1000;
    expect(Math.abs(ours / rise - 1)).toBeLessThan(7e-4);
  });

  it.each(formation)('enthalpy of formation of %s', (species, published, tolerance) => {
    const ours = (molarGasConstant * nasaEnthalpy(nasaPolynomials[species], 298.15)) / 1000;
    expect(Math.abs(ours - published)).toBeLessThan(tolerance);
  });

  it.each(janaf.map(([species]) => [species]))('%s joins at 1000 K', (species) => {
    const polynomial = nasaPolynomials[species];
    const step = nasaHeatCapacity(polynomial, 1000) / nasaHeatCapacity(polynomial, 1000 - 1e-9) - 1;
    expect(Math.abs(step)).toBeLessThan(1e-4);
    expect(Math.abs(nasaEnthalpy(polynomial, 1000) - nasaEnthalpy(polynomial, 1000 - 1e-9))).toBeLessThan(0.1);
  });
});
