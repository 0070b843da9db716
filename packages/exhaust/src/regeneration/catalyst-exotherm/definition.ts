import { defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { fraction, massFlow, temperature, temperatureDifference } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { exhaustHeatInput, heatingValueInput } from '../fuel-inputs.js';
import { fuelForHeat, gasHeatingPower } from '../heat/kernel.js';
import { catalystPractice, dieselFuel, gasHeatBalance } from '../sources.js';
import { exothermEfficiency, fullExotherm } from './kernel.js';

export const catalystExothermCalculation = defineCalculation({
  id: 'oxidation-catalyst-exotherm',
  version: '1.0.0',
  subject: 'regeneration',
  title: 'Oxidation catalyst: temperature rise and efficiency',
  purpose: 'Does the oxidation catalyst turn the injected fuel into heat, and how much of it slips through?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['DOC', 'exotherm', 'light-off', 'hydrocarbon slip', 'efficiency'],
  method: 'measured temperature rise over that of complete burning',
  inputs: z.strictObject({
    fuelFlow: quantity(massFlow, {
      symbol: '\\dot m_f',
      label: 'Fuel injected for heating',
      description: 'Late injection or exhaust injector; from the amount per stroke, the engine speed and the number of cylinders.',
      above: '0 kg/h',
      max: '60 kg/h',
      usual: ['0.05 kg/h', '30 kg/h'],
      usualReason: 'cars inject some 0.5 to 3 kg/h, trucks up to 15 kg/h',
      example: '0.9 kg/h',
      units: ['kg/h', 'g/s', 'mg/s'],
    }),
    massFlow: quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust mass flow',
      above: '0 kg/h',
      max: '5000 kg/h',
      usual: ['20 kg/h', '1500 kg/h'],
      usualReason: 'an idling car has some 30 kg/h, a truck on the road up to 1500 kg/h',
      example: '140 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    temperatureBefore: quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature before the catalyst',
      min: '0 °C',
      max: '900 °C',
      example: '320 °C',
      units: ['degC', 'K', 'degF'],
    }),
    temperatureAfter: quantity(temperature, {
      symbol: 'T_2',
      label: 'Temperature after the catalyst',
      min: '0 °C',
      max: '1000 °C',
      example: '540 °C',
      units: ['degC', 'K', 'degF'],
    }),
    temperatureWanted: quantityWithDefault(temperature, {
      symbol: 'T_w',
      label: 'Temperature wanted after the catalyst',
      min: '0 °C',
      max: '900 °C',
      example: '600 °C',
      default: '600 °C',
      defaultReason: 'usual temperature before the filter in a regeneration',
    }),
    heatingValue: heatingValueInput,
    gasSpecificHeat: exhaustHeatInput,
  }),
  intermediates: {
    rise: quantityOutput(temperatureDifference, { symbol: '\\Delta T', label: 'Measured rise', digits: 4, units: ['K'] }),
  },
  outputs: {
    efficiency: quantityOutput(fraction, { symbol: '\\eta', label: 'Share of the fuel heat that arrives', digits: 3, units: ['%'] }),
    fullRise: quantityOutput(temperatureDifference, {
      symbol: '\\Delta T_{100}',
      label: 'Rise if all fuel burnt',
      digits: 4,
      units: ['K'],
    }),
    slip: quantityOutput(massFlow, {
      symbol: '\\dot m_{HC}',
      label: 'Fuel that does not arrive as heat, at most',
      digits: 3,
      units: ['g/h', 'kg/h'],
    }),
    fuelWanted: quantityOutput(massFlow, {
      symbol: '\\dot m_w',
      label: 'Fuel for the wanted temperature if all burns',
      digits: 3,
      units: ['kg/h', 'g/s'],
    }),
  },
  constants: {},
  steps: [
    { gives: 'rise', tex: '[[rise]] = [[temperatureAfter]]-[[temperatureBefore]]' },
    {
      gives: 'fullRise',
      tex: '[[fullRise]] = \\frac{[[fuelFlow]]\\,[[heatingValue]]}{[[massFlow]]\\,[[gasSpecificHeat]]}',
      source: 'gasHeatBalance',
    },
    { gives: 'slip', tex: '[[slip]] = [[fuelFlow]]\\left(1-[[efficiency]]\\right)' },
    {
      gives: 'fuelWanted',
      tex: '[[fuelWanted]] = \\frac{[[massFlow]]\\,[[gasSpecificHeat]]\\left([[temperatureWanted]]-[[temperatureBefore]]\\right)}{[[heatingValue]]}',
      source: 'gasHeatBalance',
    },
    { gives: 'efficiency', tex: '[[efficiency]] = \\frac{[[rise]]}{[[fullRise]]}', source: 'gasHeatBalance' },
  ],
  assumptions: [{ code: 'steady', text: 'Temperatures have settled: half a minute and more at the same speed and load.' }],
  limits: [
    {
      code: 'heat_loss',
      text: 'Heat lost through the can counts as missing efficiency: at low flow a healthy catalyst shows 5 % to 15 % less.',
    },
    { code: 'unburnt_from_engine', text: 'Carbon monoxide and fuel that the engine itself leaves add some 10 K to 40 K.' },
  ],
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.sensorFirst],
  sources: { gasHeatBalance, dieselFuel, catalystPractice },
  compute(input, { warn }) {
    const { fuelFlow, heatingValue, massFlow, gasSpecificHeat, temperatureBefore, temperatureAfter, temperatureWanted } = input;
    const rise = temperatureAfter - temperatureBefore;
    const fullRise = fullExotherm(fuelFlow, heatingValue, massFlow, gasSpecificHeat);
    const efficiency = exothermEfficiency(rise, fullRise);
    if (efficiency > 1.1) {
      warn(
        'more_heat_than_fuel',
        'More heat than the fuel holds: a flow, fuel or temperature signal is wrong, or the catalyst burns stored fuel.',
        ['fuelFlow'],
      );
    }
    return {
      rise,
      efficiency,
      fullRise,
      slip: Math.max(0, fuelFlow * (1 - Math.max(0, efficiency))),
      fuelWanted: fuelForHeat(
        Math.max(0, gasHeatingPower(massFlow, gasSpecificHeat, temperatureWanted - temperatureBefore)),
        heatingValue,
        1,
      ),
    };
  },
  advise({ efficiency }, { temperatureBefore }) {
    if (efficiency >= 0.8) return [];
    const cold = temperatureBefore < 250 + 273.15;
    return [
      {
        tone: 'do',
        text: cold
          ? 'The gas is too cold for the catalyst to light off: warm it up first.'
          : 'Check that the fuel is really injected, then leaks and sensors, then the catalyst itself.',
      },
      {
        tone: 'do-not',
        text: 'Do not add more fuel to a catalyst that does not burn it: it ends in the filter and in the oil, and can burn there all at once.',
      },
    ];
  },
});
