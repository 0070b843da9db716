import { constant, formula, quantityOutput } from '@wallflow/calculation';
import { molarEnergy, molarMass, specificEnergy, temperatureDifference } from '@wallflow/units';
import { molarMassOfCarbon } from '../soot/oxidation/kernel.js';
import { siBrochure } from '../sources.js';
import { heatOfCarbonToDioxide, heatOfCarbonToMonoxide } from './simulation/kernel-adiabatic.js';
import { adiabaticBalance, carbonHeats } from './sources.js';

/** What the heat of burning soot follows from, the same in every calculation that burns soot. */
export const heatConstants = {
  heatToDioxide: constant(molarEnergy, heatOfCarbonToDioxide, {
    symbol: '\\Delta H_{CO_2}',
    label: 'Heat of carbon to carbon dioxide',
    source: carbonHeats,
  }),
  heatToMonoxide: constant(molarEnergy, heatOfCarbonToMonoxide, {
    symbol: '\\Delta H_{CO}',
    label: 'Heat of carbon to carbon monoxide',
    source: carbonHeats,
  }),
  carbonMolarMass: constant(molarMass, molarMassOfCarbon, { symbol: 'M_C', label: 'Molar mass of carbon', source: siBrochure }),
};

export const heatOfCombustionOutput = quantityOutput(specificEnergy, {
  symbol: '\\Delta h',
  label: 'Heat of burning soot',
  digits: 4,
  units: ['MJ/kg'],
});

export const heatOfCombustionStep = formula(
  'heatOfCombustion',
  '((1 - carbonMonoxideShare) * heatToDioxide + carbonMonoxideShare * heatToMonoxide) / carbonMolarMass',
  carbonHeats,
);

export const adiabaticRiseOutput = quantityOutput(temperatureDifference, {
  symbol: '\\Delta T_{ad}',
  label: 'Temperature rise if all the soot burnt without cooling',
  digits: 4,
  units: ['K'],
});

export const adiabaticRiseStep = formula(
  'adiabaticRise',
  'sootLoad * heatOfCombustion / (honeycombDensity * honeycombHeatCapacity)',
  adiabaticBalance,
);
