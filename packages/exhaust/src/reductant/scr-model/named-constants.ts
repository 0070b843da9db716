import { constant } from '@wallflow/calculation';
import { molarEnergy, ratio, reactionRate, temperature } from '@wallflow/units';
import { teachingModelSource } from './sources.js';
import { teachingScrModel } from './teaching-model.js';

// Numbers of the teaching model as constants of a definition.

const { adsorption, oxidation, reaction, fastReaction, transport, nitrogenDioxideLoss } = teachingScrModel;
const source = teachingModelSource;
const energy = (value: number, symbol: string, label: string) => constant(molarEnergy, value, { symbol, label, source });
const rate = (value: number, symbol: string, label: string) => constant(reactionRate, value, { symbol, label, source });
const at = (value: number, symbol: string, label: string) => constant(temperature, value, { symbol, label, source });

export const adsorptionConstants = {
  referenceAdsorption: constant(ratio, adsorption.atReference, {
    symbol: 'K_0',
    label: 'Adsorption constant at the reference temperature',
    source,
  }),
  adsorptionEnergy: energy(adsorption.energy, 'E_a', 'Energy of adsorption'),
  referenceTemperature: at(adsorption.reference, 'T_0', 'Reference temperature'),
};

/** Adsorption constant of ammonia at a temperature, as a formula. */
export const equilibriumFormula = (temperature: string) =>
  `referenceAdsorption * exp(-adsorptionEnergy / gasConstant * (1 / ${temperature} - 1 / referenceTemperature))`;

export const rateConstants = {
  slowRateAtReference: rate(reaction.atReference, 'k_{s0}', 'Rate of NO alone at the reference temperature'),
  slowEnergy: energy(reaction.energy, 'E_s', 'Activation energy of NO alone'),
  fastRateAtReference: rate(fastReaction.atReference, 'k_{f0}', 'Rate that the fast reaction adds, at the reference temperature'),
  fastEnergy: energy(fastReaction.energy, 'E_f', 'Activation energy of the fast reaction'),
  nitrogenDioxideLoss: constant(ratio, nitrogenDioxideLoss, { symbol: 'l', label: 'Share of the rate lost on NO2 alone', source }),
  transportRate: rate(transport, 'k_t', 'Transport to the wall'),
  burnRateAtReference: rate(oxidation.atReference, 'k_{b0}', 'Burning of ammonia at its reference temperature'),
  burnEnergy: energy(oxidation.energy, 'E_b', 'Activation energy of burning'),
  burnReferenceTemperature: at(oxidation.reference, 'T_{b0}', 'Reference temperature of burning'),
};
