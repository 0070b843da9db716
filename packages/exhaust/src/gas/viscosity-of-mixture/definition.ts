import { choiceWithDefault, defineCalculation, quantityOutput, tableOutput } from '@wallflow/calculation';
import { dynamicViscosity, fraction, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { gasTemperatureField } from '../fields.js';
import { mixtureOf } from '../mixture.js';
import { mixtureFields } from '../mixture-fields.js';
import { fenghour1998, iapwsViscosity, lemmonJacobsen2004, wilke1950 } from '../sources.js';
import { exhaustViscosity } from './kernel.js';

const viscosityOutput = (symbol: string, label: string) =>
  quantityOutput(dynamicViscosity, { symbol, label, digits: 5, units: ['uPa.s', 'Pa.s'] });
const differenceOutput = quantityOutput(fraction, { symbol: '\\delta', label: 'Sutherland against dilute gas', digits: 2, units: ['%'] });
const comparisonTemperatures = [300, 600, 1000];

export const exhaustViscosityCalculation = defineCalculation({
  id: 'exhaust-viscosity',
  version: '1.0.0',
  subject: 'gas',
  title: 'Viscosity of diesel exhaust by its composition',
  purpose: 'How viscous is exhaust of this lambda, and what does the choice of model change?',
  usedBy: ['developer', 'trainer'],
  keywords: ['viscosity', 'Sutherland', 'Wilke', 'mixture'],
  method: "Sutherland's formula for the pure gases, Wilke's rule",
  inputs: z.strictObject({
    gasTemperature: gasTemperatureField({
      range: '253 <= T <= 1500 K',
      usual: ['280 K', '1173 K', 'the correlation for water vapour ends at 1173 K'],
    }),
    ...mixtureFields,
    model: choiceWithDefault({
      label: 'Model of the pure gases',
      options: { sutherland: 'Sutherland, 40 CFR 1065', 'dilute-gas': 'dilute-gas correlations' },
      example: 'sutherland',
      default: 'sutherland',
      defaultReason: 'the model of the test regulation, and the one published filter data were reduced with',
    }),
  }),
  example: { lambda: '2' },
  intermediates: {
    sutherland: viscosityOutput('\\mu_S', 'Viscosity by Sutherland and Wilke'),
    diluteGas: viscosityOutput('\\mu_0', 'Viscosity by dilute-gas correlations and Wilke'),
    modelDifference: differenceOutput,
  },
  outputs: {
    viscosity: viscosityOutput('\\mu', 'Dynamic viscosity'),
    comparison: tableOutput({
      label: 'The two models for this gas at 300 K, 600 K and 1000 K',
      columns: {
        temperature: quantityOutput(temperature, { symbol: 'T', label: 'Temperature', digits: 4, units: ['K', 'degC'] }),
        sutherland: viscosityOutput('\\mu_S', 'Sutherland and Wilke'),
        diluteGas: viscosityOutput('\\mu_0', 'Dilute gas and Wilke'),
        difference: differenceOutput,
      },
    }),
  },
  constants: {},
  steps: [
    {
      gives: 'sutherland',
      tex: '[[sutherland]] = \\sum_i\\frac{x_i\\,\\mu_i}{\\sum_j x_j\\,\\phi_{ij}},\\quad \\mu_i=\\mu_{ref}\\left(\\frac{[[gasTemperature]]}{T_{ref}}\\right)^{3/2}\\frac{T_{ref}+S}{[[gasTemperature]]+S},\\quad \\phi_{ij}=\\frac{\\left[1+\\sqrt{\\mu_i/\\mu_j}\\,\\sqrt[4]{M_j/M_i}\\right]^2}{\\sqrt{8\\left(1+M_i/M_j\\right)}}',
      text: 'Constants of each pure gas by 40 CFR 1065.640 Table 4, argon counted as nitrogen. The constants themselves must not be averaged.',
      source: 'cfr1065',
      locator: '1065.640 Table 4',
    },
    {
      gives: 'diluteGas',
      text: 'The same rule with the dilute-gas viscosity of each gas: nitrogen, oxygen and argon after Lemmon and Jacobsen, carbon dioxide after Fenghour and others, water after IAPWS.',
      source: 'wilke1950',
    },
    { gives: 'modelDifference', tex: '[[modelDifference]] = \\frac{[[sutherland]]}{[[diluteGas]]}-1' },
    { gives: 'viscosity', text: 'Model chosen: [[model]].' },
  ],
  assumptions: [{ code: 'dilute', text: 'Pressure does not matter; true below about 1 MPa.' }],
  limits: [
    {
      code: 'mixing_rule',
      text: 'Wilke’s rule itself is good to about 2 % for such mixtures; one textbook example is 4.6 % off its measurement.',
    },
    {
      code: 'model_difference',
      text: 'For exhaust of lambda 2 the default, Sutherland, is below the dilute-gas correlations by 0.6 % at 300 K, 1.8 % at 600 K and 3.7 % at 1000 K.',
    },
    {
      code: 'water_row',
      text: 'The Sutherland row of water starts at 360 K; below it the formula is stretched, for a gas that holds little water.',
    },
  ],
  cautions: [],
  sources: { cfr1065, wilke1950, lemmonJacobsen2004, fenghour1998, iapwsViscosity },
  dimensional: 'empirical correlations whose constants carry the units of their sources',
  compute(input, context) {
    const mixture = mixtureOf(input, context);
    const both = (at: number) => {
      const sutherland = exhaustViscosity(mixture, at, 'sutherland');
      const diluteGas = exhaustViscosity(mixture, at, 'dilute-gas');
      return { sutherland, diluteGas, difference: sutherland / diluteGas - 1 };
    };
    const { difference, ...here } = both(input.gasTemperature);
    context.method(input.model === 'sutherland' ? "Sutherland's formula and Wilke's rule" : "dilute-gas correlations and Wilke's rule");
    return {
      ...here,
      modelDifference: difference,
      viscosity: input.model === 'sutherland' ? here.sutherland : here.diluteGas,
      comparison: comparisonTemperatures.map((at) => ({ temperature: at, ...both(at) })),
    };
  },
});
