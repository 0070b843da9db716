import { defineCalculation, inconsistentInputs, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { massFraction, massRatio, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { fuelFields, lambdaField } from '../fields.js';
import { atomBalance, unRegulation49 } from '../sources.js';
import { carbonMassFraction, stoichiometricAirFuelRatio, stoichiometricAirFuelRatioRegulation49 } from './kernel.js';

const airFuel = (symbol: string, label: string) => quantityOutput(massRatio, { symbol, label, digits: 4, units: ['1'] });

export const airFuelRatioCalculation = defineCalculation({
  id: 'air-fuel-ratio',
  version: '1.0.0',
  subject: 'gas',
  title: 'Air-fuel ratio and lambda',
  purpose: 'How much air does this fuel need, and what do lambda and air-fuel ratio say of each other?',
  usedBy: ['developer', 'trainer'],
  keywords: ['lambda', 'stoichiometric', 'equivalence ratio', 'carbon mass fraction'],
  method: 'atom balance',
  inputs: z.strictObject({
    ...fuelFields,
    lambda: lambdaField.optional(),
    airFuelRatio: quantity(massRatio, {
      symbol: 'L_g',
      label: 'Air-fuel ratio by mass, dry air',
      above: '1 kg/kg',
      max: '20000 kg/kg',
      usual: ['14 kg/kg', '300 kg/kg'],
      usualReason: 'a diesel under load or at idle runs in this range',
      example: '29 kg/kg',
      units: ['1'],
    }).optional(),
  }),
  example: { lambda: '2' },
  intermediates: {
    regulation49: airFuel('L_{R49}', 'Stoichiometric air-fuel ratio after UN Regulation 49'),
  },
  outputs: {
    stoichiometricAirFuelRatio: airFuel('L_{st}', 'Stoichiometric air-fuel ratio'),
    carbonMassFraction: quantityOutput(massFraction, { symbol: 'w_C', label: 'Carbon in the fuel', digits: 4, units: ['%'] }),
    resultingAirFuelRatio: optional(airFuel('L', 'Air-fuel ratio')),
    resultingLambda: optional(quantityOutput(ratio, { symbol: '\\lambda_r', label: 'Lambda', digits: 4 })),
    equivalenceRatio: optional(quantityOutput(ratio, { symbol: '\\varphi', label: 'Equivalence ratio', digits: 4 })),
  },
  constants: {},
  steps: [
    {
      gives: 'carbonMassFraction',
      tex: '[[carbonMassFraction]] = \\frac{12.0107}{12.0107 + 1.00794\\,[[hydrogenToCarbon]] + 15.9994\\,[[oxygenToCarbon]]}',
      source: 'cfr1065',
      locator: '1065.655(d)',
    },
    {
      gives: 'regulation49',
      tex: '[[regulation49]] = \\frac{138.0\\left(1+[[hydrogenToCarbon]]/4-[[oxygenToCarbon]]/2\\right)}{12.011 + 1.00794\\,[[hydrogenToCarbon]] + 15.9994\\,[[oxygenToCarbon]]}',
      source: 'unRegulation49',
    },
    {
      gives: 'resultingAirFuelRatio',
      text: 'The air-fuel ratio given, or lambda times the stoichiometric one.',
    },
    { gives: 'resultingLambda', tex: '[[resultingLambda]] = \\frac{[[resultingAirFuelRatio]]}{[[stoichiometricAirFuelRatio]]}' },
    { gives: 'equivalenceRatio', tex: '[[equivalenceRatio]] = \\frac{1}{[[resultingLambda]]}' },
    {
      gives: 'stoichiometricAirFuelRatio',
      tex: '[[stoichiometricAirFuelRatio]] = \\frac{28.96559\\left(1+[[hydrogenToCarbon]]/4-[[oxygenToCarbon]]/2\\right)}{0.209445\\left(12.0107 + 1.00794\\,[[hydrogenToCarbon]] + 15.9994\\,[[oxygenToCarbon]]\\right)}',
      source: 'atomBalance',
    },
  ],
  assumptions: [{ code: 'no_sulphur', text: 'Sulphur and nitrogen of the fuel are not counted; road fuels hold next to none.' }],
  limits: [
    { code: 'dry_air', text: 'Air-fuel ratios count dry air. An air-mass sensor also weighs the water in the air, up to 2 % more.' },
    { code: 'rounded_constant', text: 'UN Regulation 49 rounds a constant to 138.0, which makes its ratio 0.2 % lower.' },
  ],
  cautions: [],
  sources: { atomBalance, cfr1065, unRegulation49 },
  compute(input) {
    if (input.lambda !== undefined && input.airFuelRatio !== undefined) {
      return inconsistentInputs('give lambda or the air-fuel ratio, not both', ['lambda'], ['airFuelRatio']);
    }
    const stoichiometric = stoichiometricAirFuelRatio(input);
    const fromLambda = input.lambda === undefined ? undefined : input.lambda * stoichiometric;
    const resultingAirFuelRatio = input.airFuelRatio ?? fromLambda;
    const resultingLambda = resultingAirFuelRatio === undefined ? undefined : resultingAirFuelRatio / stoichiometric;
    return {
      stoichiometricAirFuelRatio: stoichiometric,
      regulation49: stoichiometricAirFuelRatioRegulation49(input),
      carbonMassFraction: carbonMassFraction(input),
      resultingAirFuelRatio,
      resultingLambda,
      equivalenceRatio: resultingLambda === undefined ? undefined : 1 / resultingLambda,
    };
  },
});
