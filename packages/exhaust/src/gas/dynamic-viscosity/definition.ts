import { choiceWithDefault, defineCalculation, quantity, quantityOutput } from '@wallflow/calculation';
import { dynamicViscosity, fraction, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { lemmonJacobsen2004 } from '../sources.js';
import { diluteAirViscosity, sutherlandViscosity } from './kernel.js';

export const dynamicViscosityCalculation = defineCalculation({
  id: 'dynamic-viscosity',
  version: '1.0.0',
  subject: 'gas',
  title: 'Viscosity of exhaust gas as air',
  purpose: 'How viscous is the gas at its temperature, and how far do the two usual models differ there?',
  usedBy: ['developer', 'trainer'],
  keywords: ['viscosity', 'Sutherland'],
  method: "Sutherland's formula",
  inputs: z.strictObject({
    gasTemperature: quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature',
      min: '170 K',
      max: '1900 K',
      usual: ['170 K', '1000 K'],
      usualReason: "above 1000 K Sutherland's formula is more than 3.9 % below the dilute-gas correlation",
      example: '250 °C',
    }),
    model: choiceWithDefault({
      label: 'Model',
      options: { sutherland: 'Sutherland, 40 CFR 1065', 'dilute-gas': 'Dilute gas, Lemmon and Jacobsen 2004' },
      example: 'sutherland',
      default: 'sutherland',
      defaultReason: 'the model of the test regulation, and the one published filter data were reduced with',
    }),
  }),
  intermediates: {
    sutherland: quantityOutput(dynamicViscosity, {
      symbol: '\\mu_S',
      label: 'Viscosity by Sutherland',
      digits: 5,
      units: ['uPa.s', 'Pa.s'],
    }),
    diluteGas: quantityOutput(dynamicViscosity, {
      symbol: '\\mu_0',
      label: 'Viscosity of the dilute gas',
      digits: 5,
      units: ['uPa.s', 'Pa.s'],
    }),
    modelDifference: quantityOutput(fraction, { symbol: '\\delta', label: 'Sutherland against dilute gas', digits: 2, units: ['%'] }),
  },
  outputs: {
    viscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Dynamic viscosity', digits: 5, units: ['uPa.s', 'Pa.s'] }),
  },
  constants: {},
  steps: [
    {
      gives: 'sutherland',
      tex: '[[sutherland]] = \\mu_{ref}\\left(\\frac{[[gasTemperature]]}{T_{ref}}\\right)^{3/2}\\frac{T_{ref}+S}{[[gasTemperature]]+S}',
      source: 'cfr1065',
      locator: '1065.640 Table 4: 17.16 µPa·s, 273 K, S = 111 K',
    },
    {
      gives: 'diluteGas',
      tex: '[[diluteGas]] = \\frac{0.0266958\\,\\sqrt{M\\,[[gasTemperature]]}}{\\sigma^{2}\\,\\Omega(T^{*})}\\;\\mathrm{\\mu Pa\\,s}',
      source: 'lemmonJacobsen2004',
      locator: 'Eqs 2, 3',
    },
    { gives: 'modelDifference', tex: '[[modelDifference]] = \\frac{[[sutherland]]}{[[diluteGas]]}-1' },
    { gives: 'viscosity', text: 'Model chosen: [[model]].' },
  ],
  assumptions: [{ code: 'as_air', text: 'The gas is taken as air; lean exhaust of the same temperature is a few per cent less viscous.' }],
  limits: [
    { code: 'dilute', text: 'Not for pressures above about 1.8 MPa.' },
    {
      code: 'model_difference',
      text: 'The default, Sutherland, is below the dilute-gas correlation by 0.3 % at 300 K, 1.8 % at 600 K and 3.9 % at 1000 K.',
    },
  ],
  cautions: [],
  sources: { cfr1065, lemmonJacobsen2004 },
  dimensional: 'empirical correlations whose constants carry the units of their sources',
  compute(input, context) {
    const sutherland = sutherlandViscosity(input.gasTemperature);
    const diluteGas = diluteAirViscosity(input.gasTemperature);
    context.method(input.model === 'sutherland' ? "Sutherland's formula" : 'dilute-gas correlation');
    const viscosity = input.model === 'sutherland' ? sutherland : diluteGas;
    return { sutherland, diluteGas, modelDifference: sutherland / diluteGas - 1, viscosity };
  },
});
