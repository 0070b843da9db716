import { constant } from '@wallflow/calculation';
import { dynamicViscosity, molarHeatCapacity, molarMass, temperature } from '@wallflow/units';
import { molarGasConstant, molarMassOfDryAir } from '../gas/constants.js';
import { sutherlandAir } from '../gas/dynamic-viscosity/kernel.js';
import { cfr1065, siBrochure } from '../sources.js';

// Constants that several definitions name. Each carries its kind, symbol, label and source.

export const gasConstant = constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: siBrochure });

export const airMolarMass = constant(molarMass, molarMassOfDryAir, {
  symbol: 'M_{air}',
  label: 'Molar mass of dry air',
  source: cfr1065,
});

/** Air in Sutherland's formula. */
export const sutherlandConstants = {
  referenceViscosity: constant(dynamicViscosity, sutherlandAir.referenceViscosity, {
    symbol: '\\mu_{ref}',
    label: 'Viscosity of air at the reference temperature',
    source: cfr1065,
  }),
  referenceTemperature: constant(temperature, sutherlandAir.referenceTemperature, {
    symbol: 'T_{ref}',
    label: 'Reference temperature',
    source: cfr1065,
  }),
  sutherlandTemperature: constant(temperature, sutherlandAir.sutherlandTemperature, {
    symbol: 'S',
    label: 'Sutherland temperature of air',
    source: cfr1065,
  }),
};

/** Viscosity of air at `gasTemperature` by these constants, as a formula. */
export const sutherlandFormula =
  'referenceViscosity * (gasTemperature / referenceTemperature) ^ 1.5 * (referenceTemperature + sutherlandTemperature) / (gasTemperature + sutherlandTemperature)';
