import { constant, defineCalculation, quantityOutput } from '@wallflow/calculation';
import { molarHeatCapacity, molarMass, ratio, specificEnergy, specificHeatCapacity } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065, siBrochure } from '../../sources.js';
import { molarGasConstant } from '../constants.js';
import { gasTemperatureField, mixtureFields } from '../fields.js';
import { mixtureOf } from '../mixture.js';
import { griMech30, nasaTm4513 } from '../sources.js';
import { molarMassOfMixture } from '../species.js';
import { heatCapacityRatio, molarHeatCapacityOfMixture, sensibleEnthalpyOfMixture } from './kernel.js';

export const exhaustHeatCapacityCalculation = defineCalculation({
  id: 'exhaust-heat-capacity',
  version: '1.0.0',
  subject: 'gas',
  title: 'Heat capacity and enthalpy of exhaust gas',
  purpose: 'How much heat does a kilogram of exhaust carry at its temperature?',
  usedBy: ['developer', 'trainer'],
  keywords: ['heat capacity', 'enthalpy', 'specific heat ratio'],
  method: 'NASA polynomials of the pure gases, ideal mixture',
  inputs: z.strictObject({
    gasTemperature: gasTemperatureField({
      range: '200 <= T <= 3500 K',
      usual: [
        '250 K',
        '1700 K',
        {
          below: 'exhaust and intake air are seldom so cold',
          above: 'gases begin to fall apart, and the composition is no longer fixed',
        },
      ],
    }),
    ...mixtureFields,
  }),
  example: { lambda: '2' },
  intermediates: {
    mixtureMolarMass: quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass', digits: 6, units: ['g/mol'] }),
    molarHeatCapacity: quantityOutput(molarHeatCapacity, { symbol: 'C_p', label: 'Molar heat capacity', digits: 5 }),
  },
  outputs: {
    heatCapacity: quantityOutput(specificHeatCapacity, { symbol: 'c_p', label: 'Heat capacity at constant pressure', digits: 5 }),
    enthalpy: quantityOutput(specificEnergy, {
      symbol: 'h',
      label: 'Enthalpy above 25 °C',
      description: 'Heat that warms the gas from 25 °C to its temperature; negative below 25 °C. Water stays vapour.',
      digits: 5,
      units: ['kJ/kg', 'J/kg'],
    }),
    heatCapacityRatio: quantityOutput(ratio, { symbol: '\\gamma', label: 'Ratio of specific heats', digits: 5 }),
  },
  constants: {
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    {
      gives: 'mixtureMolarMass',
      tex: '[[mixtureMolarMass]] = \\sum_i x_i\\,M_i',
      source: 'cfr1065',
      locator: '1065.1005(f)(2), Table 7',
    },
    {
      gives: 'molarHeatCapacity',
      tex: '[[molarHeatCapacity]] = [[gasConstant]]\\sum_i x_i\\left(a_1+a_2T+a_3T^2+a_4T^3+a_5T^4\\right)_i',
      source: 'nasaTm4513',
      locator: 'nitrogen; the other gases GRI-Mech 3.0; one set of coefficients below and one above 1000 K',
    },
    {
      gives: 'enthalpy',
      tex: '[[enthalpy]] = \\frac{1}{[[mixtureMolarMass]]}\\int_{298.15\\,\\mathrm{K}}^{[[gasTemperature]]} C_p\\,\\mathrm{d}T',
      source: 'nasaTm4513',
    },
    {
      gives: 'heatCapacityRatio',
      tex: '[[heatCapacityRatio]] = \\frac{[[molarHeatCapacity]]}{[[molarHeatCapacity]]-[[gasConstant]]}',
    },
    { gives: 'heatCapacity', tex: '[[heatCapacity]] = \\frac{[[molarHeatCapacity]]}{[[mixtureMolarMass]]}' },
  ],
  assumptions: [{ code: 'ideal_gas', text: 'Ideal gas: pressure does not matter.' }],
  limits: [
    {
      code: 'not_air',
      text: 'Exhaust is not air: with dry intake air its heat capacity at 600 K is 1.5 % (lambda 6) to 8.6 % (lambda 1) higher.',
    },
    { code: 'no_condensation', text: 'The heat of condensing water is not in it.' },
  ],
  cautions: [],
  sources: { nasaTm4513, griMech30, cfr1065, siBrochure },
  dimensional: 'polynomials fitted in kelvin',
  compute(input, context) {
    const mixture = mixtureOf(input, context);
    const { gasConstant } = context.constants;
    const mixtureMolarMass = molarMassOfMixture(mixture);
    const molar = molarHeatCapacityOfMixture(mixture, input.gasTemperature, gasConstant);
    return {
      mixtureMolarMass,
      molarHeatCapacity: molar,
      heatCapacity: molar / mixtureMolarMass,
      enthalpy: sensibleEnthalpyOfMixture(mixture, input.gasTemperature, gasConstant) / mixtureMolarMass,
      heatCapacityRatio: heatCapacityRatio(molar, gasConstant),
    };
  },
});
