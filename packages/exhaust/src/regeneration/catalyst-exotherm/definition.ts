import * as wf from '@wallflow/calculation';
import { fraction, massFlow, temperature, temperatureDifference } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { exhaustHeatInput, heatingValueInput } from '../fuel-inputs.js';
import { fuelForHeat, gasHeatingPower } from '../heat/kernel.js';
import { catalystPractice, dieselFuel, gasHeatBalance } from '../sources.js';
import { exothermEfficiency, fullExotherm } from './kernel.js';

export const catalystExothermCalculation = wf.defineCalculation({
  id: 'oxidation-catalyst-exotherm',
  subject: 'regeneration',
  title: 'Oxidation catalyst: temperature rise and efficiency',
  purpose: 'Does the oxidation catalyst turn the injected fuel into heat, and how much of it slips through?',
  keywords: 'DOC, exotherm, light-off, hydrocarbon slip, efficiency, late injection, regen',
  method: 'measured temperature rise over that of complete burning',
  inputs: {
    fuelFlow: wf.quantity(massFlow, {
      symbol: '\\dot m_f',
      label: 'Fuel injected for heating',
      description:
        'By late injection or by an injector in the exhaust. Work it out from the amount per stroke, the engine speed and the number of cylinders.',
      range: '0 < x <= 60 kg/h',
      usual: ['0.05 kg/h', '30 kg/h', 'cars inject about 0.5 to 3 kg/h, trucks up to 15 kg/h'],
      example: '1.6 kg/h',
      units: ['kg/h', 'g/s', 'mg/s'],
    }),
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust mass flow',
      range: '0 < x <= 5000 kg/h',
      usual: ['20 kg/h', '1500 kg/h', 'an idling car has about 30 kg/h, a truck on the road up to 1500 kg/h'],
      example: '190 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    temperatureBefore: wf.quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature before the catalyst',
      range: '0 <= x <= 900 °C',
      example: '300 °C',
      units: ['degC', 'K', 'degF'],
    }),
    temperatureAfter: wf.quantity(temperature, {
      symbol: 'T_2',
      label: 'Temperature after the catalyst',
      range: '0 <= x <= 1000 °C',
      example: '575 °C',
      units: ['degC', 'K', 'degF'],
    }),
    temperatureWanted: wf.quantity(temperature, {
      symbol: 'T_w',
      label: 'Temperature wanted',
      description: 'After the catalyst.',
      range: '0 <= x <= 900 °C',
      default: ['600 °C', 'usual before the filter during a regeneration'],
    }),
    heatingValue: heatingValueInput,
    gasHeatCapacity: exhaustHeatInput,
  },
  intermediates: {
    measuredRise: wf.quantityOutput(temperatureDifference, {
      symbol: '\\Delta T',
      label: 'Measured temperature rise',
      digits: 4,
      units: ['K'],
    }),
    riseWanted: wf.quantityOutput(temperatureDifference, {
      symbol: '\\Delta T_w',
      label: 'Temperature rise wanted',
      digits: 4,
      units: ['K'],
    }),
  },
  outputs: {
    efficiency: wf.quantityOutput(fraction, {
      symbol: '\\eta',
      label: 'Share of the fuel heat that arrives in the gas',
      digits: 3,
      units: ['%'],
    }),
    fullRise: wf.quantityOutput(temperatureDifference, {
      symbol: '\\Delta T_{100}',
      label: 'Temperature rise if all the fuel burnt',
      digits: 4,
      units: ['K'],
    }),
    slip: wf.quantityOutput(massFlow, {
      symbol: '\\dot m_{HC}',
      label: 'Maximum fuel not released as heat',
      digits: 3,
      units: ['g/h', 'kg/h'],
    }),
    fuelWanted: wf.quantityOutput(massFlow, {
      symbol: '\\dot m_w',
      label: 'Fuel for the wanted temperature if all of it burns',
      digits: 3,
      units: ['kg/h', 'g/s'],
    }),
  },
  answer: 'efficiency',
  steps: [
    wf.formula('measuredRise', 'temperatureAfter - temperatureBefore'),
    wf.formula('fullRise', 'fuelFlow * heatingValue / (exhaustMassFlow * gasHeatCapacity)', gasHeatBalance),
    wf.formula('efficiency', 'measuredRise / fullRise', gasHeatBalance),
    wf.formula('slip', 'max(0, fuelFlow * (1 - max(0, efficiency)))'),
    wf.formula('riseWanted', 'max(0, temperatureWanted - temperatureBefore)'),
    wf.formula('fuelWanted', 'exhaustMassFlow * gasHeatCapacity * riseWanted / heatingValue', gasHeatBalance),
  ],
  assumptions: { steady: 'Temperatures have settled: at least half a minute at the same speed and load.' },
  limits: {
    heat_loss: 'Heat lost through the can lowers the figure: at low flow a healthy catalyst shows 5 % to 15 % less.',
    unburnt_from_engine: 'Carbon monoxide and unburnt fuel from the engine itself add about 10 K to 40 K.',
  },
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.sensorFirst],
  sources: [dieselFuel, catalystPractice],
  compute(input, { warn }) {
    const { fuelFlow, heatingValue, exhaustMassFlow, gasHeatCapacity, temperatureBefore, temperatureAfter, temperatureWanted } = input;
    const measuredRise = temperatureAfter - temperatureBefore;
    const fullRise = fullExotherm(fuelFlow, heatingValue, exhaustMassFlow, gasHeatCapacity);
    const efficiency = exothermEfficiency(measuredRise, fullRise);
    if (efficiency > 1.1) {
      warn(
        'more_heat_than_fuel',
        'There is more heat than the fuel holds: a flow, fuel or temperature signal is wrong, or the catalyst is burning stored fuel.',
        ['fuelFlow'],
      );
    }
    const riseWanted = Math.max(0, temperatureWanted - temperatureBefore);
    return {
      measuredRise,
      riseWanted,
      efficiency,
      fullRise,
      slip: Math.max(0, fuelFlow * (1 - Math.max(0, efficiency))),
      fuelWanted: fuelForHeat(gasHeatingPower(exhaustMassFlow, gasHeatCapacity, riseWanted), heatingValue, 1),
    };
  },
  advise({ efficiency }, { temperatureBefore }) {
    if (efficiency >= 0.8) return [];
    const cold = temperatureBefore < 250 + 273.15;
    return [
      {
        tone: 'do',
        text: cold
          ? 'The gas is too cold for the catalyst to light off: warm the engine up first.'
          : 'Check that the fuel is really injected, then leaks and sensors, then the catalyst itself.',
      },
      {
        tone: 'do-not',
        text: 'Do not add more fuel to a catalyst that does not burn it: the fuel ends up in the filter and in the oil, and can burn in the filter all at once.',
      },
    ];
  },
});
