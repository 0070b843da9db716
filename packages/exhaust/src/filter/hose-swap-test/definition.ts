import { choiceOutput, defineCalculation, optional } from '@wallflow/calculation';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { allowedZeroInput, sensorReading } from '../sensor-inputs.js';
import { sensorPractice } from '../sources.js';
import { separateZero } from './kernel.js';
import { hoseSwapVerdict } from './kernel-verdict.js';

export const hoseSwapTestCalculation = defineCalculation({
  id: 'hose-swap-test',
  version: '1.1.0',
  subject: 'filter',
  title: 'Hose swap at the differential pressure sensor',
  purpose: 'Is a wrong reading the fault of the sensor or of the drop it measures?',
  usedBy: ['technician', 'trainer'],
  keywords: ['hoses', 'sensor', 'reversed', 'offset'],
  method: 'half the difference is the drop, half the sum the zero error',
  inputs: z.strictObject({
    normalReading: sensorReading('r_1', 'Reading as connected', 'Engine warm at a steady raised speed.', '42 mbar'),
    swappedReading: sensorReading('r_2', 'Reading with the hoses swapped', 'Same engine state; swap back afterwards.', '-38 mbar'),
    allowedZero: allowedZeroInput,
  }),
  intermediates: {},
  outputs: {
    pressureDrop: optional(dropOutput('\\Delta p', 'Drop without the zero error')),
    zeroError: optional(dropOutput('z', 'Zero error of the sensor')),
    verdict: choiceOutput({
      label: 'What it shows',
      options: {
        plausible: 'sensor and connection are plausible',
        'zero-error': 'the sensor has a zero error: take it off every reading, and check hoses and wiring',
        repair: 'the sensor reads far off, or the two readings do not belong together: find the cause, and do not judge the filter by it',
        reversed: 'the hoses are connected the wrong way round',
        'one-sided': 'the sensor reads one direction only: this test cannot tell its zero error',
        unchanged: 'the swap changed nothing: sensor or wiring dead, hoses not swapped, or no flow. Do not judge the filter by it',
        'no-signal': 'no drop in either direction: hose off or blocked, no flow, or nothing left in the filter housing',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'pressureDrop', tex: '[[pressureDrop]] = \\frac{[[normalReading]]-[[swappedReading]]}{2}', source: 'sensorPractice' },
    { gives: 'zeroError', tex: '[[zeroError]] = \\frac{[[normalReading]]+[[swappedReading]]}{2}', source: 'sensorPractice' },
    {
      gives: 'verdict',
      text: 'The swap must turn more than [[allowedZero]] of drop. Zero error accepted up to [[allowedZero]], taken off up to five times that: [[verdict]].',
      source: 'sensorPractice',
    },
  ],
  assumptions: [{ code: 'same_state', text: 'Speed, temperature and load of the filter were the same for both readings.' }],
  limits: [
    { code: 'both_hoses', text: 'A leak or a part blocked with water in one hose shows in both readings and is not found by swapping.' },
  ],
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.makerFirst],
  sources: { sensorPractice },
  compute({ normalReading, swappedReading, allowedZero }) {
    const verdict = hoseSwapVerdict(normalReading, swappedReading, allowedZero);
    if (verdict === 'one-sided' || verdict === 'no-signal' || verdict === 'unchanged')
      return { pressureDrop: undefined, zeroError: undefined, verdict };
    if (verdict === 'repair') return { pressureDrop: undefined, zeroError: separateZero(normalReading, swappedReading).zeroError, verdict };
    return { ...separateZero(normalReading, swappedReading), verdict };
  },
  advise({ verdict }) {
    const swapBack = { tone: 'do' as const, text: 'Put the hoses back as the vehicle maker connects them.' };
    if (verdict === 'no-signal')
      return [
        swapBack,
        { tone: 'do', text: 'Blow nothing into the sensor: take the hoses off it, clear them, and look for the filter in its housing.' },
      ];
    if (verdict === 'one-sided')
      return [swapBack, { tone: 'do', text: 'Read the zero with the engine off, or compare with a second gauge in parallel.' }];
    if (verdict === 'unchanged')
      return [
        swapBack,
        {
          tone: 'do-not',
          text: 'Do not judge the filter by this sensor: see that the hoses were really swapped and the engine ran at a raised speed, then check plug, supply and sensor. A blocked filter can hide behind it.',
        },
      ];
    if (verdict === 'repair')
      return [
        swapBack,
        {
          tone: 'do-not',
          text: 'Do not judge the filter by this sensor before the cause is found: water in a hose, wiring, supply, the sensor, or a changed engine speed between the readings.',
        },
      ];
    return [swapBack];
  },
});
