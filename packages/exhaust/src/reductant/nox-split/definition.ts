import { constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import {
  absolutePressure,
  fraction,
  massConcentration,
  molarHeatCapacity,
  molarMass,
  moleFraction,
  ratio,
  temperature,
} from '@wallflow/units';
import * as z from 'zod';
import { molarGasConstant } from '../../gas/constants.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { molarMassOfNitricOxide, molarMassOfNitrogenDioxide } from '../constants.js';
import { ammoniaPerNox, reactionShares } from '../reductant-demand/stoichiometry.js';
import { scrReactions } from '../sources.js';
import { massConcentrationOf, trueMassShare } from './kernel.js';

export const noxSplitCalculation = defineCalculation({
  id: 'nox-split',
  version: '1.0.0',
  subject: 'reductant',
  title: 'NO and NO2 in the NOx',
  purpose: 'How much of the NOx is NO and NO2, which SCR reactions does that allow, and what is it in mg per cubic metre?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['NO', 'NO2', 'NOx', 'fast SCR', 'mg/m3'],
  method: 'shares by moles',
  inputs: z.strictObject({
    noxMoleFraction: quantity(moleFraction, {
      symbol: 'x_{NOx}',
      label: 'NOx',
      min: '0 ppm',
      max: '10000 ppm',
      example: '400 ppm',
      units: ['ppm'],
    }),
    nitrogenDioxideShare: quantityWithDefault(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      description: 'A raw engine gives 5 % to 15 %; behind an oxidation catalyst it depends on temperature.',
      min: '0 %',
      max: '100 %',
      example: '25 %',
      units: ['%'],
      default: '25 %',
      defaultReason: '40 CFR 1065.655 takes 75 % NO and 25 % NO2 where nothing was measured',
    }),
    referencePressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_0',
      label: 'Pressure for mg/m³',
      min: '50 kPa',
      max: '200 kPa',
      example: '101.325 kPa',
      units: ['kPa', 'mbar'],
      default: '101.325 kPa',
      defaultReason: 'standard atmosphere',
    }),
    referenceTemperature: quantityWithDefault(temperature, {
      symbol: 'T_0',
      label: 'Temperature for mg/m³',
      description: 'Workplace tables use 20 °C or 25 °C, emission rules 0 °C.',
      min: '-40 °C',
      max: '600 °C',
      example: '20 °C',
      units: ['degC', 'K'],
      default: '20 °C',
      defaultReason: 'the state of 40 CFR 1065 and of European workplace tables',
    }),
  }),
  intermediates: {
    standardShare: quantityOutput(fraction, {
      symbol: 's_s',
      label: 'Share left to the standard reaction (NO alone)',
      digits: 3,
      units: ['%'],
    }),
    fastShare: quantityOutput(fraction, { symbol: 's_f', label: 'Share of the fast reaction (NO with NO2)', digits: 3, units: ['%'] }),
    nitrogenDioxideReactionShare: quantityOutput(fraction, {
      symbol: 's_2',
      label: 'Share left to the NO2 reaction',
      digits: 3,
      units: ['%'],
    }),
    trueMassShare: quantityOutput(fraction, { symbol: 'm', label: 'True mass over mass counted as NO2', digits: 4, units: ['%'] }),
  },
  outputs: {
    nitricOxide: quantityOutput(moleFraction, { symbol: 'x_{NO}', label: 'NO', digits: 4, units: ['ppm'] }),
    nitrogenDioxide: quantityOutput(moleFraction, { symbol: 'x_{NO_2}', label: 'NO2', digits: 4, units: ['ppm'] }),
    ammoniaPerNox: quantityOutput(ratio, { symbol: 's', label: 'Ammonia per converted NOx, by moles', digits: 4 }),
    nitricOxideMass: quantityOutput(massConcentration, { symbol: 'c_{NO}', label: 'NO by mass', digits: 5, units: ['mg/m3'] }),
    nitrogenDioxideMass: quantityOutput(massConcentration, { symbol: 'c_{NO_2}', label: 'NO2 by mass', digits: 5, units: ['mg/m3'] }),
  },
  constants: {
    nitricOxideMolarMass: constant(molarMass, molarMassOfNitricOxide, { symbol: 'M_{NO}', label: 'Molar mass of NO', source: 'cfr1065' }),
    nitrogenDioxideMolarMass: constant(molarMass, molarMassOfNitrogenDioxide, {
      symbol: 'M_{NO_2}',
      label: 'Molar mass of NO2',
      source: 'cfr1065',
    }),
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    { gives: 'fastShare', tex: '[[fastShare]] = 2\\min([[nitrogenDioxideShare]],\\,1-[[nitrogenDioxideShare]])', source: 'scrReactions' },
    { gives: 'standardShare', tex: '[[standardShare]] = \\max(0,\\,1-2\\,[[nitrogenDioxideShare]])', source: 'scrReactions' },
    {
      gives: 'nitrogenDioxideReactionShare',
      tex: '[[nitrogenDioxideReactionShare]] = \\max(0,\\,2\\,[[nitrogenDioxideShare]]-1)',
      source: 'scrReactions',
    },
    {
      gives: 'ammoniaPerNox',
      tex: '[[ammoniaPerNox]] = \\max\\left(1,\\ \\frac{2+2\\,[[nitrogenDioxideShare]]}{3}\\right)',
      source: 'scrReactions',
    },
    {
      gives: 'trueMassShare',
      tex: '[[trueMassShare]] = (1-[[nitrogenDioxideShare]])\\,\\frac{[[nitricOxideMolarMass]]}{[[nitrogenDioxideMolarMass]]}+[[nitrogenDioxideShare]]',
    },
    {
      gives: 'nitricOxide',
      tex: '[[nitricOxide]] = (1-[[nitrogenDioxideShare]])\\,[[noxMoleFraction]]',
      source: 'cfr1065',
      locator: '1065.655, default split',
    },
    {
      gives: 'nitricOxideMass',
      tex: '[[nitricOxideMass]] = \\frac{[[nitricOxide]]\\,[[nitricOxideMolarMass]]\\,[[referencePressure]]}{[[gasConstant]]\\,[[referenceTemperature]]}',
      source: 'siBrochure',
    },
    {
      gives: 'nitrogenDioxideMass',
      tex: '[[nitrogenDioxideMass]] = \\frac{[[nitrogenDioxideShare]]\\,[[noxMoleFraction]]\\,[[nitrogenDioxideMolarMass]]\\,[[referencePressure]]}{[[gasConstant]]\\,[[referenceTemperature]]}',
      source: 'siBrochure',
    },
    { gives: 'nitrogenDioxide', tex: '[[nitrogenDioxide]] = [[nitrogenDioxideShare]]\\,[[noxMoleFraction]]' },
  ],
  assumptions: [{ code: 'ideal_gas', text: 'The gas is ideal, which is exact enough here.' }],
  limits: [{ code: 'sensor_blind', text: 'A NOx sensor in the pipe cannot tell NO from NO2.' }],
  cautions: [],
  sources: { cfr1065, scrReactions, siBrochure },
  compute({ noxMoleFraction, nitrogenDioxideShare, referencePressure: pressure, referenceTemperature: temperature }, { constants, warn }) {
    const shares = reactionShares(nitrogenDioxideShare);
    const nitricOxide = (1 - nitrogenDioxideShare) * noxMoleFraction;
    const nitrogenDioxide = nitrogenDioxideShare * noxMoleFraction;
    const { nitricOxideMolarMass, nitrogenDioxideMolarMass, gasConstant } = constants;
    if (nitrogenDioxideShare > 0.5)
      warn('more_no2_than_no', 'Above half of the NOx, NO2 slows the catalyst and takes a third more ammonia.', ['nitrogenDioxideShare']);
    return {
      nitricOxide,
      nitrogenDioxide,
      standardShare: shares.standard,
      fastShare: shares.fast,
      nitrogenDioxideReactionShare: shares.nitrogenDioxide,
      ammoniaPerNox: ammoniaPerNox(nitrogenDioxideShare),
      trueMassShare: trueMassShare(nitrogenDioxideShare, { nitricOxide: nitricOxideMolarMass, nitrogenDioxide: nitrogenDioxideMolarMass }),
      nitricOxideMass: massConcentrationOf(
        { moleFraction: nitricOxide, molarMass: nitricOxideMolarMass, pressure, temperature },
        gasConstant,
      ),
      nitrogenDioxideMass: massConcentrationOf(
        { moleFraction: nitrogenDioxide, molarMass: nitrogenDioxideMolarMass, pressure, temperature },
        gasConstant,
      ),
    };
  },
});
