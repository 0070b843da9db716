import { choiceWithDefault, defineCalculation, optional, quantityOutput, relevantWhen } from '@wallflow/calculation';
import { fraction, thermalConductivity } from '@wallflow/units';
import * as z from 'zod';
import { gasTemperatureField } from '../fields.js';
import { mixtureOf } from '../mixture.js';
import { mixtureFields } from '../mixture-fields.js';
import { iapwsConductivity, lemmonJacobsen2004, polingPrausnitz, standardAtmosphere, vesovic1990 } from '../sources.js';
import { diluteAirConductivity } from './dilute-gas.js';
import { airConductivityStandardAtmosphere, exhaustConductivity } from './kernel.js';

const conductivityOutput = (symbol: string, label: string) =>
  quantityOutput(thermalConductivity, { symbol, label, digits: 4, units: ['mW/(m.K)', 'W/(m.K)'] });

export const thermalConductivityCalculation = defineCalculation({
  id: 'thermal-conductivity',
  version: '1.0.0',
  subject: 'gas',
  title: 'Thermal conductivity of exhaust gas',
  purpose: 'How well does the gas conduct heat at its temperature?',
  usedBy: ['developer', 'trainer'],
  keywords: ['thermal conductivity', 'heat transfer'],
  method: 'dilute air, Lemmon and Jacobsen 2004',
  inputs: z.strictObject({
    gasTemperature: gasTemperatureField({
      range: '200 <= T <= 1500 K',
      usual: ['250 K', '1173 K', 'the correlations are checked up to about here'],
    }),
    model: choiceWithDefault({
      label: 'Model',
      options: {
        'dilute-air': 'as air: dilute gas, Lemmon and Jacobsen 2004',
        'standard-atmosphere': 'as air: US Standard Atmosphere 1976',
        mixture: 'by composition: dilute-gas correlations, Mason and Saxena',
      },
      example: 'dilute-air',
      default: 'dilute-air',
      defaultReason: 'needs no composition; exhaust of lambda 2 is 7 % lower at 300 K, 2 % lower at 600 K and 1 % higher at 1000 K',
    }),
    ...relevantWhen('model', 'mixture', mixtureFields),
  }),
  intermediates: {
    diluteAir: conductivityOutput('k_0', 'Dilute air'),
    standardAtmosphere: conductivityOutput('k_{SA}', 'Air by the standard atmosphere'),
    byComposition: optional(conductivityOutput('k_m', 'By composition')),
    modelDifference: quantityOutput(fraction, {
      symbol: '\\delta',
      label: 'Standard atmosphere against dilute air',
      digits: 2,
      units: ['%'],
    }),
  },
  outputs: { conductivity: conductivityOutput('k', 'Thermal conductivity') },
  constants: {},
  steps: [
    {
      gives: 'diluteAir',
      tex: '[[diluteAir]] = \\left(1.308\\,\\frac{\\mu_0}{\\mathrm{\\mu Pa\\,s}}+1.405\\,\\tau^{-1.1}-1.036\\,\\tau^{-0.3}\\right)\\mathrm{mW/(m\\,K)},\\quad \\tau=\\frac{132.6312\\,\\mathrm{K}}{[[gasTemperature]]}',
      source: 'lemmonJacobsen2004',
      locator: 'Eq. 5',
    },
    {
      gives: 'standardAtmosphere',
      tex: '[[standardAtmosphere]] = \\frac{2.64638\\cdot 10^{-3}\\,[[gasTemperature]]^{3/2}}{[[gasTemperature]]+245.4\\cdot 10^{-12/T}}\\;\\mathrm{W/(m\\,K)}',
      source: 'standardAtmosphere',
      locator: 'Eq. 53',
    },
    {
      gives: 'byComposition',
      tex: '[[byComposition]] = \\sum_i\\frac{x_i\\,k_i}{\\sum_j x_j\\,\\phi_{ij}},\\quad \\phi_{ij}=\\frac{\\left[1+\\sqrt{\\mu_i/\\mu_j}\\,\\sqrt[4]{M_j/M_i}\\right]^2}{\\sqrt{8\\left(1+M_i/M_j\\right)}}',
      source: 'polingPrausnitz',
      locator: 'Eq. 10-6.2; pure gases by Lemmon and Jacobsen, Vesovic and others, IAPWS',
    },
    { gives: 'modelDifference', tex: '[[modelDifference]] = \\frac{[[standardAtmosphere]]}{[[diluteAir]]}-1' },
    { gives: 'conductivity', text: 'Model chosen: [[model]].' },
  ],
  assumptions: [{ code: 'dilute', text: 'Pressure does not matter; true below about 1 MPa.' }],
  limits: [{ code: 'mixing_rule', text: 'The mixing rule itself is good to about 3 %; the correlations of the pure gases to about 2 %.' }],
  cautions: [],
  sources: { lemmonJacobsen2004, standardAtmosphere, polingPrausnitz, vesovic1990, iapwsConductivity },
  dimensional: 'empirical correlations whose constants carry the units of their sources',
  compute(input, context) {
    const diluteAir = diluteAirConductivity(input.gasTemperature);
    const standard = airConductivityStandardAtmosphere(input.gasTemperature);
    const { gas, humidity } = input;
    const byComposition =
      gas === undefined || humidity === undefined
        ? undefined
        : exhaustConductivity(mixtureOf({ ...input, gas, humidity }, context), input.gasTemperature);
    const air = input.model === 'standard-atmosphere' ? standard : diluteAir;
    context.method(
      { 'dilute-air': 'as dilute air', 'standard-atmosphere': 'as air of the standard atmosphere', mixture: 'by composition' }[input.model],
    );
    if (input.model !== 'mixture') context.assume('as_air', 'The gas is taken as air.');
    return {
      diluteAir,
      standardAtmosphere: standard,
      byComposition,
      modelDifference: standard / diluteAir - 1,
      conductivity: byComposition ?? air,
    };
  },
});
