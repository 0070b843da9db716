import * as wf from '@wallflow/calculation';
import { absolutePressure, gaugePressure } from '@wallflow/units';
import { absoluteFromGauge, gaugeFromAbsolute } from './kernel.js';

const meaning = wf.commonPractice('Gauge pressure counts from the pressure of the surrounding air');

export const gaugeAndAbsolutePressureCalculation = wf.defineCalculation({
  id: 'gauge-and-absolute-pressure',
  subject: 'gas',
  title: 'Gauge and absolute pressure',
  purpose: 'What is this gauge reading as an absolute pressure, or the other way round?',
  keywords: 'gauge, absolute, boost, vacuum',
  method: 'sum with the ambient pressure',
  inputs: {
    ...wf.oneOf({
      gauge: wf.quantity(gaugePressure, {
        symbol: 'p_g',
        label: 'Gauge pressure',
        description: 'Zero in the open air; below zero is a vacuum.',
        range: '-120 <= x <= 1000 kPa',
        usual: ['-95 kPa', '500 kPa', 'boost, back-pressure and vacuum lie in this range'],
        example: '95 mbar',
        units: ['mbar', 'kPa', 'bar', 'psi'],
      }),
      gasPressure: wf.quantity(absolutePressure, {
        symbol: 'p_{abs,g}',
        label: 'Absolute pressure of the gas',
        range: '0 <= x <= 1100 kPa',
        usual: ['5 kPa', '600 kPa', 'boost, back-pressure and vacuum lie in this range'],
        example: '1081 hPa',
        units: ['kPa', 'mbar', 'bar', 'psi'],
      }),
    }),
    ambientPressure: wf.quantity(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      description: 'Of the place, not reduced to sea level as a weather report gives it.',
      range: '30 <= x <= 120 kPa',
      usual: ['60 kPa', '108 kPa', 'air pressure at places that a road reaches'],
      example: '986 hPa',
      default: ['101.325 kPa', 'sea level on a standard day; each 1000 m of altitude lowers it by about 11 %'],
      units: ['kPa', 'mbar'],
    }),
  },
  example: { gauge: '95 mbar', ambientPressure: '986 hPa' },
  outputs: {
    gaugePressure: wf.quantityOutput(gaugePressure, {
      symbol: 'p_{gauge}',
      label: 'Gauge pressure',
      digits: 6,
      units: ['mbar', 'kPa', 'bar'],
    }),
    absolutePressure: wf.quantityOutput(absolutePressure, {
      symbol: 'p_{abs}',
      label: 'Absolute pressure of the gas',
      digits: 6,
      units: ['kPa', 'mbar', 'bar'],
    }),
  },
  answer: 'absolutePressure',
  steps: [
    wf.cases('gaugePressure', { 'known(gauge)': 'gauge', otherwise: 'gasPressure - ambientPressure' }, meaning),
    wf.formula('absolutePressure', 'gaugePressure + ambientPressure', meaning),
  ],
  limits: { sealed_gauge: 'A sealed gauge reads against the pressure at which it was sealed, not against today’s air.' },
  compute(input) {
    const { gauge, gasPressure, ambientPressure } = input;
    if (gauge === undefined) {
      const absolute = wf.known(gasPressure);
      return { gaugePressure: gaugeFromAbsolute(absolute, ambientPressure), absolutePressure: absolute };
    }
    const absolute = absoluteFromGauge(gauge, ambientPressure);
    if (absolute < 0) return wf.noSolution('below a perfect vacuum: the gauge or the ambient pressure is wrong', ['gauge']);
    return { gaugePressure: gauge, absolutePressure: absolute };
  },
});
