import * as wf from '@wallflow/calculation';
import { massFraction, massRatio, ratio } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { fuelFields, lambdaField } from '../mixture-fields.js';
import { atomBalance, unRegulation49 } from '../sources.js';
import { carbonMassFraction, stoichiometricAirFuelRatio, stoichiometricAirFuelRatioRegulation49 } from './kernel.js';

const airFuel = (symbol: string, label: string) => wf.quantityOutput(massRatio, { symbol, label, digits: 4, units: ['1'] });

export const airFuelRatioCalculation = wf.defineCalculation({
  id: 'air-fuel-ratio',
  subject: 'gas',
  title: 'Air-fuel ratio and lambda',
  purpose: 'How much air does this fuel need, and which lambda belongs to which air-fuel ratio?',
  keywords: 'lambda, stoichiometric, equivalence ratio, carbon mass fraction',
  method: 'atom balance',
  inputs: {
    ...fuelFields,
    ...wf.oneOf(
      {
        lambda: lambdaField,
        airFuelRatio: wf.quantity(massRatio, {
          symbol: 'L_g',
          label: 'Air-fuel ratio by mass, dry air',
          range: '1 < x <= 20000 kg/kg',
          usual: ['14 kg/kg', '300 kg/kg', 'a diesel under load or at idle runs in this range'],
          example: '29 kg/kg',
          units: ['1'],
        }),
      },
      { required: false },
    ),
  },
  example: { lambda: '2' },
  intermediates: {
    regulation49: airFuel('L_{R49}', 'Stoichiometric air-fuel ratio after UN Regulation 49'),
  },
  outputs: {
    stoichiometricAirFuelRatio: airFuel('L_{st}', 'Stoichiometric air-fuel ratio'),
    carbonMassFraction: wf.quantityOutput(massFraction, { symbol: 'w_C', label: 'Carbon in the fuel', digits: 4, units: ['%'] }),
    resultingAirFuelRatio: wf.optional(airFuel('L', 'Air-fuel ratio')),
    resultingLambda: wf.optional(wf.quantityOutput(ratio, { symbol: '\\lambda_r', label: 'Lambda', digits: 4 })),
    equivalenceRatio: wf.optional(wf.quantityOutput(ratio, { symbol: '\\varphi', label: 'Equivalence ratio', digits: 4 })),
  },
  answer: 'stoichiometricAirFuelRatio',
  steps: [
    wf.formula('carbonMassFraction', '12.0107 / (12.0107 + 1.00794 * hydrogenToCarbon + 15.9994 * oxygenToCarbon)', cfr1065, '1065.655(d)'),
    wf.formula(
      'regulation49',
      '(138.0 * (1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2)) / (12.011 + 1.00794 * hydrogenToCarbon + 15.9994 * oxygenToCarbon)',
      unRegulation49,
    ),
    wf.formula(
      'stoichiometricAirFuelRatio',
      '(28.96559 * (1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2)) / (0.209445 * (12.0107 + 1.00794 * hydrogenToCarbon + 15.9994 * oxygenToCarbon))',
      atomBalance,
    ),
    wf.cases('resultingAirFuelRatio', { 'known(airFuelRatio)': 'airFuelRatio', otherwise: 'lambda * stoichiometricAirFuelRatio' }),
    wf.formula('resultingLambda', 'resultingAirFuelRatio / stoichiometricAirFuelRatio'),
    wf.formula('equivalenceRatio', '1 / resultingLambda'),
  ],
  assumptions: { no_sulphur: 'Sulphur and nitrogen of the fuel are not counted; road fuels hold next to none.' },
  limits: {
    dry_air: 'Air-fuel ratios count dry air. An air-mass sensor also weighs the water in the air, up to 2 % more.',
    rounded_constant: 'UN Regulation 49 rounds a constant to 138.0, which makes its ratio 0.2 % lower.',
  },
  compute(input) {
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
