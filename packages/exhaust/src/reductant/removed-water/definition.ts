import { defineCalculation, inconsistentInputs, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { removedWaterCorrection } from './kernel.js';

export const removedWaterCalculation = defineCalculation({
  id: 'removed-water-correction',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Reading behind a sample dryer',
  purpose: 'What would this reading be if the dryer had taken no water out?',
  usedBy: ['developer', 'trainer'],
  keywords: ['dryer', 'removed water', 'wet', 'dry'],
  method: '40 CFR 1065.659',
  inputs: z.strictObject({
    reading: quantity(moleFraction, {
      symbol: 'x',
      label: 'Reading behind the dryer',
      min: '0 ppm',
      max: '500000 ppm',
      example: '29.0 ppm',
      units: ['ppm', '%'],
    }),
    waterAtReading: quantityWithDefault(moleFraction, {
      symbol: 'x_{H_2O,meas}',
      label: 'Water left in the gas that was read',
      min: '0 %',
      max: '20 %',
      example: '0.8601 %',
      units: ['%'],
      default: '0 %',
      defaultReason: 'a perfect dryer; a cooler at 5 °C leaves about 0.86 %',
    }),
    waterInExhaust: quantity(moleFraction, {
      symbol: 'x_{H_2O,exh}',
      label: 'Water in the exhaust',
      min: '0 %',
      max: '20 %',
      example: '3.404 %',
      units: ['%'],
    }),
  }),
  intermediates: { factor: quantityOutput(ratio, { symbol: 'k', label: 'Factor', digits: 6 }) },
  outputs: {
    corrected: quantityOutput(moleFraction, { symbol: 'x_{wet}', label: 'Reading in the wet exhaust', digits: 5, units: ['ppm', '%'] }),
  },
  constants: {},
  steps: [
    { gives: 'factor', tex: '[[factor]] = \\frac{1-[[waterInExhaust]]}{1-[[waterAtReading]]}', source: 'cfr1065', locator: '1065.659(c)' },
    { gives: 'corrected', tex: '[[corrected]] = [[factor]]\\,[[reading]]', source: 'cfr1065', locator: '1065.659(c)' },
  ],
  assumptions: [{ code: 'nothing_lost', text: 'The dryer takes water alone. Some NO2 and ammonia dissolve in it in truth.' }],
  limits: [{ code: 'water_known', text: 'The water in the exhaust must be known, from the fuel and air or from a measurement.' }],
  cautions: [],
  sources: { cfr1065 },
  compute(input) {
    if (input.waterAtReading > input.waterInExhaust) {
      return inconsistentInputs('behind the dryer there cannot be more water than before it', ['waterAtReading'], ['waterInExhaust']);
    }
    const corrected = removedWaterCorrection(input.reading, input.waterAtReading, input.waterInExhaust);
    return { factor: (1 - input.waterInExhaust) / (1 - input.waterAtReading), corrected };
  },
});
