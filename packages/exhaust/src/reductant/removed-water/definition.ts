import * as wf from '@wallflow/calculation';
import { moleFraction, ratio } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { removedWaterCorrection } from './kernel.js';

const water = { range: '0 <= x <= 20 %', units: ['%'] } as const;

export const removedWaterCalculation = wf.defineCalculation({
  id: 'removed-water-correction',
  subject: 'reductant',
  title: 'Reading after a sample dryer',
  purpose: 'What would this reading be if the dryer had taken no water out?',
  keywords: 'dryer, removed water, wet, dry',
  method: '40 CFR 1065.659',
  inputs: {
    driedReading: wf.quantity(moleFraction, {
      symbol: 'x',
      label: 'Reading after the dryer',
      range: '0 <= x <= 500000 ppm',
      example: '29.0 ppm',
      units: ['ppm', '%'],
    }),
    waterAtReading: wf.quantity(moleFraction, {
      symbol: 'x_{H_2O,meas}',
      label: 'Water left in the dried gas',
      ...water,
      example: '0.8601 %',
      default: ['0 %', 'a perfect dryer; a cooler at 5 °C leaves about 0.86 %'],
    }),
    waterInExhaust: wf.quantity(moleFraction, { symbol: 'x_{H_2O,exh}', label: 'Water in the exhaust', ...water, example: '3.404 %' }),
  },
  intermediates: { waterFactor: wf.quantityOutput(ratio, { symbol: 'k', label: 'Wet reading over dried reading', digits: 6 }) },
  outputs: {
    wetReading: wf.quantityOutput(moleFraction, { symbol: 'x_{wet}', label: 'Reading in wet gas', digits: 5, units: ['ppm', '%'] }),
  },
  steps: [
    wf.formula('waterFactor', '(1 - waterInExhaust) / (1 - waterAtReading)', cfr1065, '1065.659(c)'),
    wf.formula('wetReading', 'waterFactor * driedReading', cfr1065, '1065.659(c)'),
  ],
  assumptions: { nothing_lost: 'The dryer takes out water alone. In truth some NO2 and ammonia dissolve in that water.' },
  limits: { water_known: 'The water in the exhaust must be known, from the fuel and air or from a measurement.' },
  compute({ driedReading, waterAtReading, waterInExhaust }) {
    if (waterAtReading > waterInExhaust) {
      return wf.inconsistentInputs('after the dryer there cannot be more water than before it', ['waterAtReading'], ['waterInExhaust']);
    }
    return {
      waterFactor: removedWaterCorrection(1, waterAtReading, waterInExhaust),
      wetReading: removedWaterCorrection(driedReading, waterAtReading, waterInExhaust),
    };
  },
});
