import * as wf from '@wallflow/calculation';
import { fraction, mass, massFlow, reactionRate, temperature } from '@wallflow/units';
import { chosenKinetics, gasInputs, kineticsConstants, kineticsInputs, oneLaw } from '../oxidation/inputs.js';
import { sootOxidationRate } from '../oxidation/kernel.js';
import { burnRateAt } from '../oxidation/nested.js';
import { bai2016, wholeFilterBalance } from '../sources.js';
import { balanceTemperature } from './kernel.js';

const there = { filterTemperature: 'balanceTemperature', oxygen: 'oxygen', nitrogenDioxide: 'nitrogenDioxide' };

export const balanceTemperatureCalculation = wf.defineCalculation({
  id: 'soot-balance-temperature',
  subject: 'soot',
  title: 'Temperature at which a filter keeps its soot load',
  purpose: 'How hot must the exhaust be for the filter to burn as much soot as the engine puts in?',
  keywords: 'balance point temperature, BPT, passive regeneration, passive regen, DPF, regen, burn-off',
  method: 'root of burn rate times soot mass less soot flow',
  inputs: {
    sootMass: wf.quantity(mass, {
      symbol: 'm',
      label: 'Soot in the filter',
      range: '0 g < x <= 5 kg',
      usual: ['1 g', '400 g', 'a car filter holds up to about 40 g, a truck filter up to about 200 g'],
      example: '17 g',
      units: ['g', 'kg'],
    }),
    sootFlow: wf.quantity(massFlow, {
      symbol: '\\dot m_{in}',
      label: 'Engine-out soot',
      range: '0 < x <= 100 mg/s',
      usual: ['0.01 mg/s', '20 mg/s', 'a healthy diesel engine leaves some 0.1 to 5 mg/s'],
      example: '3 g/h',
      units: ['g/h', 'mg/s'],
    }),
    nitrogenDioxide: gasInputs.nitrogenDioxide,
    oxygen: gasInputs.oxygen,
    ...kineticsInputs,
  },
  intermediates: {
    burnRate: wf.quantityOutput(reactionRate, { symbol: 'k', label: 'Rate of burning, share per time', digits: 4, units: ['1/s', '1/h'] }),
    rateNeeded: wf.quantityOutput(reactionRate, {
      symbol: 'k_n',
      label: 'Rate of burning that is needed',
      digits: 4,
      units: ['1/s', '1/h'],
    }),
  },
  outputs: {
    balanceTemperature: wf.quantityOutput(temperature, {
      symbol: 'T_{bal}',
      label: 'Balance temperature',
      digits: 4,
      units: ['degC', 'K'],
    }),
    passiveShare: wf.quantityOutput(fraction, {
      symbol: 'f_{NO_2}',
      label: 'Share burnt by nitrogen dioxide',
      digits: 3,
      units: ['%'],
    }),
  },
  constants: {
    ...kineticsConstants,
    coldest: wf.constant(temperature, 373.15, { symbol: 'T_1', label: 'Coldest temperature searched', source: wholeFilterBalance }),
    hottestSearched: wf.constant(temperature, 1273.15, {
      symbol: 'T_2',
      label: 'Hottest temperature searched',
      source: wholeFilterBalance,
    }),
  },
  answer: 'balanceTemperature',
  steps: [
    wf.formula('rateNeeded', 'sootFlow / sootMass', wholeFilterBalance),
    wf.solved('balanceTemperature', 'burnRate = rateNeeded', { within: 1e-6 }, bai2016),
    burnRateAt('burnRate', there),
    burnRateAt('passiveShare', there, 'passiveShare'),
  ],
  assumptions: {
    gas_fixed: 'Oxygen and nitrogen dioxide stay as entered; after a real catalyst the nitrogen dioxide changes with temperature.',
  },
  limits: {
    ...oneLaw,
    stability: 'Above the balance temperature the load falls until it settles lower; below it, it rises until it settles higher.',
    fitted_range: 'The law with nitrogen dioxide was fitted from 250 °C to 350 °C; above 450 °C less nitrogen dioxide forms.',
  },
  compute(input, { constants }) {
    const kinetics = chosenKinetics(input, constants);
    const { sootMass, sootFlow, oxygen, nitrogenDioxide } = input;
    const between = [constants.coldest, constants.hottestSearched] as const;
    const found = balanceTemperature({ kinetics, sootMass, sootFlow, oxygen, nitrogenDioxide, between }, constants.gasConstant);
    if (found === undefined) {
      return wf.noSolution('between 100 °C and 1000 °C there is no temperature at which as much soot burns as the engine puts in');
    }
    const at = sootOxidationRate(kinetics, { temperature: found, oxygen, nitrogenDioxide }, constants.gasConstant);
    return { rateNeeded: sootFlow / sootMass, balanceTemperature: found, burnRate: at.total, passiveShare: at.nitrogenDioxide / at.total };
  },
});
