import * as wf from '@wallflow/calculation';
import {
  fraction,
  massConcentration,
  massFlow,
  massPerDistance,
  massPerEnergy,
  power,
  standardVolumeFlow,
  velocity,
} from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { drivingPractice, emissionRates } from '../sources.js';
import { capturedSoot, sootFlowFrom } from './kernel.js';

const sootPerHour = (symbol: string, label: string, digits: number) =>
  wf.quantityOutput(massFlow, { symbol, label, digits, units: ['g/h', 'mg/s'] });

export const sootEngineOutCalculation = wf.defineCalculation({
  id: 'soot-engine-out',
  subject: 'soot',
  title: 'Engine-out soot',
  purpose: 'How many grams of soot per hour and per distance does this engine put into its filter?',
  keywords: 'engine-out, soot rate, g/h, g/km, g/kWh, smoke, DPF, smoke meter, opacimeter',
  method: 'specific emission times what it is specific to',
  inputs: {
    sootStatedAs: wf.choice({
      label: 'Soot is stated as',
      options: {
        'per-time': 'soot per hour',
        'per-distance': 'soot per distance, and the speed',
        'per-energy': 'soot per work of the engine, and the power',
        concentration: 'soot per volume of exhaust, as from a smoke reading, and the exhaust flow',
      },
      example: 'per-distance',
    }),
    ...wf.relevantWhen('sootStatedAs', 'per-time', {
      sootPerTime: wf.quantity(massFlow, {
        symbol: '\\dot m_t',
        label: 'Soot per time',
        range: '0 <= x <= 500 g/h',
        example: '1.5 g/h',
        units: ['g/h', 'mg/s'],
      }),
    }),
    ...wf.relevantWhen('sootStatedAs', 'per-distance', {
      sootPerDistance: wf.quantity(massPerDistance, {
        symbol: 'e_d',
        label: 'Soot per distance',
        range: '0 <= x <= 5 g/km',
        example: '0.068 g/km',
        units: ['g/km', 'mg/km'],
      }),
    }),
    speed: wf.optional(
      wf.quantity(velocity, {
        symbol: 'v',
        label: 'Mean speed',
        range: '0 <= x <= 200 km/h',
        example: '22 km/h',
        units: ['km/h', 'mph', 'm/s'],
      }),
    ),
    ...wf.relevantWhen('sootStatedAs', 'per-energy', {
      sootPerWork: wf.quantity(massPerEnergy, {
        symbol: 'e_P',
        label: 'Soot per work',
        range: '0 <= x <= 5 g/kWh',
        example: '0.05 g/kWh',
        units: ['g/kWh', 'mg/kWh'],
      }),
      enginePower: wf.quantity(power, {
        symbol: 'P',
        label: 'Mean engine power',
        range: '0 <= x <= 1000 kW',
        example: '30 kW',
        units: ['kW', 'hp_metric'],
      }),
    }),
    ...wf.relevantWhen('sootStatedAs', 'concentration', {
      sootConcentration: wf.quantity(massConcentration, {
        symbol: 'c',
        label: 'Soot per volume of exhaust at the standard state',
        description: 'From a smoke number or an opacity by the smoke calculations; watch which state of the gas it is stated for.',
        range: '0 <= x <= 2000 mg/m3',
        example: '10 mg/m3',
        units: ['mg/m3', 'g/m3'],
      }),
      standardExhaustFlow: wf.quantity(standardVolumeFlow, {
        symbol: '\\dot V_0',
        label: 'Exhaust flow at the standard state (0 °C, 1 atm)',
        range: '0 <= x <= 5000 m3/h_0C',
        example: '147 m3/h_0C',
      }),
    }),
    sootCapture: wf.quantity(fraction, {
      symbol: '\\eta_f',
      label: 'Share that the filter holds back',
      range: '0 <= x <= 100 %',
      example: '98 %',
      default: ['100 %', 'an intact wall-flow filter holds back nearly all soot by mass; the safe side for the load'],
    }),
  },
  example: { speed: '22 km/h' },
  intermediates: { sootFlow: sootPerHour('\\dot m_e', 'Engine-out soot', 4) },
  outputs: {
    capturedSoot: sootPerHour('\\dot m_{in}', 'Soot that stays in the filter', 4),
    passedSoot: sootPerHour('\\dot m_p', 'Soot that passes the filter', 3),
    capturedPerDistance: wf.optional(
      wf.quantityOutput(massPerDistance, {
        symbol: 'e_f',
        label: 'Soot into the filter per distance',
        digits: 4,
        units: ['g/km', 'mg/km'],
      }),
    ),
  },
  answer: 'capturedSoot',
  steps: [
    wf.cases(
      'sootFlow',
      {
        "sootStatedAs == 'per-time'": 'sootPerTime',
        "sootStatedAs == 'per-distance'": 'sootPerDistance * speed',
        "sootStatedAs == 'per-energy'": 'sootPerWork * enginePower',
        otherwise: 'sootConcentration * standardExhaustFlow',
      },
      emissionRates,
    ),
    wf.formula('passedSoot', 'sootFlow * (1 - sootCapture)', emissionRates),
    wf.formula('capturedSoot', 'sootFlow * sootCapture', emissionRates),
    wf.formula('capturedPerDistance', 'capturedSoot / speed', emissionRates),
  ],
  assumptions: { mean_values: 'Speed, power and flow are means over the same time as the emission.' },
  limits: { engine_condition: 'A worn injector, a stuck EGR valve or a boost leak multiplies the soot: measure it rather than assume it.' },
  cautions: [cautions.sensorFirst],
  sources: [drivingPractice],
  compute(input) {
    const { speed } = input;
    if (input.sootStatedAs === 'per-distance' && speed === undefined) return wf.missingInputs('speed');
    const [stated, times] = {
      'per-time': [input.sootPerTime, 1],
      'per-distance': [input.sootPerDistance, speed],
      'per-energy': [input.sootPerWork, input.enginePower],
      concentration: [input.sootConcentration, input.standardExhaustFlow],
    }[input.sootStatedAs];
    const sootFlow = sootFlowFrom(wf.known(stated), wf.known(times));
    const { captured, passed } = capturedSoot(sootFlow, input.sootCapture);
    return {
      sootFlow,
      capturedSoot: captured,
      passedSoot: passed,
      capturedPerDistance: speed === undefined || speed === 0 ? undefined : captured / speed,
    };
  },
});
