import { type ConstantValues, constant } from '@wallflow/calculation';
import { absolutePressure, dynamicViscosity, length, ratio, temperature } from '@wallflow/units';
import { rawExhaustHeatCapacityRatio } from '../flow/pipe-flow/kernel.js';
import { sutherlandAir } from '../gas/dynamic-viscosity/kernel.js';
import { standardAtmosphereCalculation } from '../gas/standard-atmosphere/definition.js';
import { cfr1065, konstandopoulos2000, konstandopoulos2008 } from '../sources.js';
import { airMolarMass, gasConstant } from '../vocabulary/constants.js';
import { squareChannelFriction } from './clean-pressure-drop/kernel.js';
import { cakeOnset } from './sources.js';

/** Air in Sutherland's formula. */
export const viscosityConstants = {
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

/** Air as an ideal gas; R alone is the flow resistance here. */
export const densityConstants = { gasConstant: { ...gasConstant, symbol: 'R_{\\mathrm{m}}' }, airMolarMass };

/** The pressure at which published permeabilities of fine layers are taken to have been found. */
export const slipReferencePressure = constant(absolutePressure, 101325, {
  symbol: 'p_k',
  label: 'Pressure at which the soot permeability was found',
  source: konstandopoulos2000,
});

export const filterConstants = { ...viscosityConstants, ...densityConstants };
/** What every drop calculation needs: the gas, and sound in it, for what the channels can carry. */
export const dropConstants = {
  ...filterConstants,
  heatCapacityRatio: constant(ratio, rawExhaustHeatCapacityRatio, {
    symbol: '\\gamma',
    label: 'Ratio of specific heats',
    source: cfr1065,
  }),
};

export type DropConstantValues = ConstantValues<typeof dropConstants>;
export type FilterConstantValues = ConstantValues<typeof filterConstants>;

export const channelFriction = constant(ratio, squareChannelFriction, {
  symbol: 'F',
  label: 'Friction factor of a square channel',
  source: konstandopoulos2008,
});

export const coveringThickness = constant(length, 15e-6, {
  symbol: 'w_c',
  label: 'Ash layer that keeps soot out of the wall',
  source: cakeOnset,
});

const { gasConstant: atmosphereGasConstant, molarMass: atmosphereMolarMass, ...layer } = standardAtmosphereCalculation.spec.constants;

/** The standard atmosphere, for a pressure by altitude; its gas constant is the one of 1976. */
export const atmosphereConstants = { ...layer, atmosphereGasConstant, atmosphereMolarMass };
