import { constant } from '@wallflow/calculation';
import { dynamicViscosity, molarHeatCapacity, molarMass, temperature } from '@wallflow/units';
import { molarGasConstant, molarMassOfDryAir } from '../gas/constants.js';
import { sutherlandAir } from '../gas/dynamic-viscosity/kernel.js';
import { cfr1065, siBrochure } from '../sources.js';

// Constants that several definitions name. Each carries its kind, symbol, label and source. Marked as pure, so that a bundle leaves
// out those that its calculations do not name.

export const gasConstant = /* @__PURE__ */ constant(molarHeatCapacity, molarGasConstant, {
  symbol: 'R',
  label: 'Molar gas constant',
  source: siBrochure,
});

export const airMolarMass = /* @__PURE__ */ constant(molarMass, molarMassOfDryAir, {
  symbol: 'M_{air}',
  label: 'Molar mass of dry air',
  source: cfr1065,
});

/** Air in Sutherland's formula. */
export const sutherlandConstants = {
  referenceViscosity: /* @__PURE__ */ constant(dynamicViscosity, sutherlandAir.referenceViscosity, {
    symbol: '\\mu_{ref}',
    label: 'Viscosity of air at the reference temperature',
    source: cfr1065,
  }),
  referenceTemperature: /* @__PURE__ */ constant(temperature, sutherlandAir.referenceTemperature, {
    symbol: 'T_{ref}',
    label: 'Reference temperature',
    source: cfr1065,
  }),
  sutherlandTemperature: /* @__PURE__ */ constant(temperature, sutherlandAir.sutherlandTemperature, {
    symbol: 'S',
    label: 'Sutherland temperature of air',
    source: cfr1065,
  }),
};

/** Viscosity of air at `gasTemperature` by these constants, as a formula. */
export const sutherlandFormula =
  'referenceViscosity * (gasTemperature / referenceTemperature) ^ 1.5 * (referenceTemperature + sutherlandTemperature) / (gasTemperature + sutherlandTemperature)';
