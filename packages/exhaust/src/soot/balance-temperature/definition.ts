import { constant, defineCalculation, isRefusal, noSolution, quantity, quantityOutput } from '@wallflow/calculation';
import { fraction, mass, massFlow, reactionRate, temperature } from '@wallflow/units';
import * as z from 'zod';
import { siBrochure } from '../../sources.js';
import { chosenKinetics, gasInputs, kineticsConstants, kineticsInputs } from '../oxidation/inputs.js';
import { sootOxidationRate } from '../oxidation/kernel.js';
import { bai2016, bissettShadman1985, uncoatedDisk2008, wholeFilterBalance } from '../sources.js';
import { balanceTemperature } from './kernel.js';

export const balanceTemperatureCalculation = defineCalculation({
  id: 'soot-balance-temperature',
  version: '1.1.0',
  subject: 'soot',
  title: 'Temperature at which a filter keeps its soot load',
  purpose: 'How hot must the exhaust be so that as much soot burns as comes in?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['balance point temperature', 'passive regeneration'],
  method: 'root of burn rate times soot mass less soot flow',
  inputs: z.strictObject({
    sootMass: quantity(mass, {
      symbol: 'm',
      label: 'Soot in the filter',
      above: '0 g',
      max: '5 kg',
      usual: ['1 g', '400 g'],
      usualReason: 'a car filter holds up to about 40 g, a truck filter up to about 200 g',
      example: '12 g',
      units: ['g', 'kg'],
    }),
    sootFlow: quantity(massFlow, {
      symbol: '\\dot m_{in}',
      label: 'Soot that comes in',
      above: '0 mg/s',
      max: '100 mg/s',
      usual: ['0.01 mg/s', '20 mg/s'],
      usualReason: 'a healthy diesel engine leaves some 0.1 to 5 mg/s',
      example: '0.5 mg/s',
      units: ['mg/s', 'g/h'],
    }),
    nitrogenDioxide: gasInputs.nitrogenDioxide,
    oxygen: gasInputs.oxygen,
    ...kineticsInputs,
  }),
  intermediates: {
    rateNeeded: quantityOutput(reactionRate, { symbol: 'k', label: 'Rate of burning that is needed', digits: 4, units: ['1/s', '1/h'] }),
  },
  outputs: {
    balanceTemperature: quantityOutput(temperature, { symbol: 'T_{bal}', label: 'Balance temperature', digits: 4, units: ['degC', 'K'] }),
    passiveShare: quantityOutput(fraction, { symbol: 'f_{NO_2}', label: 'Share burnt by nitrogen dioxide there', digits: 3, units: ['%'] }),
  },
  constants: {
    ...kineticsConstants,
    coldest: constant(temperature, 373.15, { symbol: 'T_1', label: 'Coldest temperature searched', source: 'wholeFilterBalance' }),
    hottest: constant(temperature, 1273.15, { symbol: 'T_2', label: 'Hottest temperature searched', source: 'wholeFilterBalance' }),
  },
  steps: [
    { gives: 'rateNeeded', tex: '[[rateNeeded]] = \\frac{[[sootFlow]]}{[[sootMass]]}', source: 'wholeFilterBalance' },
    { gives: 'passiveShare', text: 'Rate with nitrogen dioxide over the sum of both, at the balance temperature.', source: 'bai2016' },
    {
      gives: 'balanceTemperature',
      text: 'Temperature at which the rates with oxygen and nitrogen dioxide together reach the rate that is needed.',
      source: 'bai2016',
    },
  ],
  assumptions: [
    {
      code: 'gas_fixed',
      text: 'Oxygen and nitrogen dioxide stay as given; behind a real catalyst the nitrogen dioxide changes with temperature.',
    },
  ],
  limits: [
    {
      code: 'stability',
      text: 'Above the balance temperature the load falls until it settles lower; below it, it rises until it settles higher.',
    },
    {
      code: 'fitted_range',
      text: 'The law with nitrogen dioxide was fitted from 250 °C to 350 °C; above 450 °C less nitrogen dioxide forms.',
    },
  ],
  cautions: [],
  sources: { wholeFilterBalance, bai2016, bissettShadman1985, uncoatedDisk2008, siBrochure },
  compute(input, { constants }) {
    const kinetics = chosenKinetics(input, constants);
    if (isRefusal(kinetics)) return kinetics;
    const { sootMass, sootFlow, oxygen, nitrogenDioxide } = input;
    const between = [constants.coldest, constants.hottest] as const;
    const found = balanceTemperature({ kinetics, sootMass, sootFlow, oxygen, nitrogenDioxide, between }, constants.gasConstant);
    if (found === undefined) {
      return noSolution('between 100 °C and 1000 °C there is no temperature at which as much soot burns as comes in');
    }
    const at = sootOxidationRate(kinetics, { temperature: found, oxygen, nitrogenDioxide }, constants.gasConstant);
    return { rateNeeded: sootFlow / sootMass, balanceTemperature: found, passiveShare: at.nitrogenDioxide / at.total };
  },
});
