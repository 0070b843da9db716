import {
  commonPractice,
  defineCalculation,
  inconsistentInputs,
  missingInputs,
  noSolution,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { absolutePressure, gaugePressure } from '@wallflow/units';
import * as z from 'zod';
import { absoluteFromGauge, gaugeFromAbsolute } from './kernel.js';

export const gaugeAndAbsolutePressureCalculation = defineCalculation({
  id: 'gauge-and-absolute-pressure',
  version: '1.0.0',
  subject: 'gas',
  title: 'Gauge and absolute pressure',
  purpose: 'What is this gauge reading as an absolute pressure, or the other way round?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['gauge', 'absolute', 'boost', 'vacuum'],
  method: 'sum with the ambient pressure',
  inputs: z.strictObject({
    gauge: quantity(gaugePressure, {
      symbol: 'p_g',
      label: 'Gauge pressure',
      description: 'Zero in the open air; below zero is a vacuum.',
      min: '-120 kPa',
      max: '1000 kPa',
      usual: ['-95 kPa', '500 kPa'],
      usualReason: 'boost, back-pressure and vacuum lie in this range',
      example: '120 mbar',
      units: ['mbar', 'kPa', 'bar', 'psi'],
    }).optional(),
    gasPressure: quantity(absolutePressure, {
      symbol: 'p_{abs,g}',
      label: 'Absolute pressure of the gas',
      min: '0 kPa',
      max: '1100 kPa',
      usual: ['5 kPa', '600 kPa'],
      usualReason: 'boost, back-pressure and vacuum lie in this range',
      example: '113.3 kPa',
      units: ['kPa', 'mbar', 'bar', 'psi'],
    }).optional(),
    ambientPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_a',
      label: 'Ambient pressure',
      description: 'Of the place, not reduced to sea level as a weather report gives it.',
      min: '30 kPa',
      max: '120 kPa',
      usual: ['60 kPa', '108 kPa'],
      usualReason: 'air pressure at places that a road reaches',
      example: '101.3 kPa',
      default: '101.325 kPa',
      defaultReason: 'sea level on a standard day; each 1000 m of altitude lowers it by about 11 %',
      units: ['kPa', 'mbar'],
    }),
  }),
  example: { gauge: '120 mbar' },
  intermediates: {},
  outputs: {
    gaugePressure: quantityOutput(gaugePressure, {
      symbol: 'p_{gauge}',
      label: 'Gauge pressure',
      digits: 6,
      units: ['mbar', 'kPa', 'bar'],
    }),
    absolutePressure: quantityOutput(absolutePressure, {
      symbol: 'p_{abs}',
      label: 'Absolute pressure of the gas',
      digits: 6,
      units: ['kPa', 'mbar', 'bar'],
    }),
  },
  constants: {},
  steps: [
    { gives: 'gaugePressure', text: 'Gauge pressure: as given, or the absolute pressure less [[ambientPressure]].', source: 'meaning' },
    { gives: 'absolutePressure', tex: '[[absolutePressure]] = [[gaugePressure]] + [[ambientPressure]]', source: 'meaning' },
  ],
  assumptions: [],
  limits: [{ code: 'sealed_gauge', text: 'A sealed gauge reads against the pressure at which it was sealed, not against today’s air.' }],
  cautions: [],
  sources: { meaning: commonPractice('Gauge pressure counts from the pressure of the surrounding air') },
  compute(input) {
    const { gauge, gasPressure, ambientPressure } = input;
    if (gauge !== undefined && gasPressure !== undefined)
      return inconsistentInputs('give one of the two pressures', ['gauge'], ['gasPressure']);
    if (gauge !== undefined) {
      const result = absoluteFromGauge(gauge, ambientPressure);
      if (result < 0) return noSolution('below a perfect vacuum: the gauge or the ambient pressure is wrong', ['gauge']);
      return { gaugePressure: gauge, absolutePressure: result };
    }
    if (gasPressure !== undefined) return { gaugePressure: gaugeFromAbsolute(gasPressure, ambientPressure), absolutePressure: gasPressure };
    return missingInputs('gauge');
  },
});
