import { cases, formula, quantityOutput } from '@wallflow/calculation';
import { density, dynamicViscosity } from '@wallflow/units';
import { cfr1065, siBrochure } from '../sources.js';
import { densityConstants, viscosityConstants } from './constants.js';

/** Viscosity of air by Sutherland's formula at a temperature. */
export const sutherlandFormula = (temperature: string, reference = 'referenceTemperature') =>
  `referenceViscosity * (${temperature} / ${reference}) ^ 1.5 * (${reference} + sutherlandTemperature) / (${temperature} + sutherlandTemperature)`;

/** Density of air as an ideal gas. */
export const airDensityFormula = (temperature: string, pressure: string) => `${pressure} * airMolarMass / (gasConstant * ${temperature})`;

export const airViscosity = <const Key extends string>(gives: Key, temperature: string, reference?: string) =>
  formula(gives, sutherlandFormula(temperature, reference), cfr1065, '1065.640 Table 4');

export const airDensity = <const Key extends string>(gives: Key, temperature: string, pressure: string) =>
  formula(gives, airDensityFormula(temperature, pressure), siBrochure, 'ideal gas');

/** How viscosity and density of the gas follow from `gasInputs` and `densityInputs`, in every definition alike. */
export const gasViscosity = {
  outputs: { viscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity of the gas', units: ['uPa.s', 'Pa.s'] }) },
  constants: viscosityConstants,
  step: cases('viscosity', { 'known(gasViscosity)': 'gasViscosity', otherwise: airViscosity('viscosity', 'gasTemperature') }),
};

export const gasDensity = {
  outputs: { density: quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', units: ['kg/m3'] }) },
  constants: densityConstants,
  step: cases('density', { 'known(gasDensity)': 'gasDensity', otherwise: airDensity('density', 'gasTemperature', 'gasPressure') }),
};
