import { choiceWithDefault, defineCalculation, isRefusal, optional, quantityOutput } from '@wallflow/calculation';
import { fraction, thermalConductivity } from '@wallflow/units';
import * as z from 'zod';
import { gasTemperatureField, mixtureFields } from '../fields.js';
import { mixtureOf } from '../mixture.js';
import { lemmonJacobsen2004, polingPrausnitz, standardAtmosphere } from '../sources.js';
import { airConductivityStandardAtmosphere, diluteAirConductivity } from './kernel.js';
import { conductivityOfMixture } from './mixture.js';

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
    temperature: gasTemperatureField({
      min: '200 K',
      max: '1500 K',
      usual: ['250 K', '1173 K'],
      usualReason: 'the correlations are checked up to about here',
    }),
    model: choiceWithDefault({
      label: 'Model',
      options: {
        'dilute-air': 'as air: dilute gas, Lemmon and Jacobsen 2004',
        'standard-atmosphere': 'as air: US Standard Atmosphere 1976',
        mixture: 'estimate by composition: modified Eucken, Mason and Saxena',
      },
      example: 'dilute-air',
      default: 'dilute-air',
      defaultReason: 'fitted to measurements within 2 %; the estimate by composition is no better than 5 %',
    }),
    ...mixtureFields,
  }),
  example: { lambda: '2' },
  intermediates: {
    diluteAir: conductivityOutput('k_0', 'Dilute air'),
    standardAtmosphere: conductivityOutput('k_{SA}', 'Air by the standard atmosphere'),
    mixtureEstimate: optional(conductivityOutput('k_m', 'Estimate by composition')),
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
      tex: '[[diluteAir]] = \\left(1.308\\,\\frac{\\mu_0}{\\mathrm{\\mu Pa\\,s}}+1.405\\,\\tau^{-1.1}-1.036\\,\\tau^{-0.3}\\right)\\mathrm{mW/(m\\,K)},\\quad \\tau=\\frac{132.6312\\,\\mathrm{K}}{[[temperature]]}',
      source: 'lemmonJacobsen2004',
      locator: 'Eq. 5',
    },
    {
      gives: 'standardAtmosphere',
      tex: '[[standardAtmosphere]] = \\frac{2.64638\\cdot 10^{-3}\\,[[temperature]]^{3/2}}{[[temperature]]+245.4\\cdot 10^{-12/T}}\\;\\mathrm{W/(m\\,K)}',
      source: 'standardAtmosphere',
      locator: 'Eq. 53',
    },
    {
      gives: 'mixtureEstimate',
      tex: '[[mixtureEstimate]] = \\sum_i\\frac{x_i\\,k_i}{\\sum_j x_j\\,\\phi_{ij}},\\quad k_i=\\frac{\\mu_i}{M_i}\\left(1.32\\,C_{v,i}+1.77\\,R\\right)',
      source: 'polingPrausnitz',
      locator: 'Eqs 10-3.3, 10-6.2',
    },
    { gives: 'modelDifference', tex: '[[modelDifference]] = \\frac{[[standardAtmosphere]]}{[[diluteAir]]}-1' },
    { gives: 'conductivity', text: 'Model chosen: [[model]].' },
  ],
  assumptions: [{ code: 'dilute', text: 'Pressure does not matter; true below about 1 MPa.' }],
  limits: [
    {
      code: 'estimate',
      text: 'The estimate by composition is 2 % to 5 % above the correlation for plain air; use it for differences between gases, not for a value.',
    },
  ],
  cautions: [],
  sources: { lemmonJacobsen2004, standardAtmosphere, polingPrausnitz },
  dimensional: 'empirical correlations whose constants carry the units of their sources',
  compute(input, context) {
    const diluteAir = diluteAirConductivity(input.temperature);
    const standard = airConductivityStandardAtmosphere(input.temperature);
    const mixture = mixtureOf(input, input.model === 'mixture' ? context : undefined);
    if (isRefusal(mixture) && input.model === 'mixture') return mixture;
    const mixtureEstimate = isRefusal(mixture) ? undefined : conductivityOfMixture(mixture, input.temperature);
    const air = input.model === 'standard-atmosphere' ? standard : diluteAir;
    context.method(
      { 'dilute-air': 'as dilute air', 'standard-atmosphere': 'as air of the standard atmosphere', mixture: 'estimate by composition' }[
        input.model
      ],
    );
    if (input.model !== 'mixture') context.assume('as_air', 'The gas is taken as air.');
    return {
      diluteAir,
      standardAtmosphere: standard,
      mixtureEstimate,
      modelDifference: standard / diluteAir - 1,
      conductivity: input.model === 'mixture' && mixtureEstimate !== undefined ? mixtureEstimate : air,
    };
  },
});
