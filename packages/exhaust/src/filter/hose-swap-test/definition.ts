import * as wf from '@wallflow/calculation';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { allowedZeroInput, sensorReading } from '../sensor-inputs.js';
import { sensorPractice } from '../sources.js';
import { separateZero } from './kernel.js';
import { hoseSwapVerdict } from './kernel-verdict.js';

export const hoseSwapTestCalculation = wf.defineCalculation({
  id: 'hose-swap-test',
  subject: 'filter',
  title: 'Hose swap at the differential pressure sensor',
  purpose: 'Is a wrong reading the fault of the sensor or of the drop it measures?',
  keywords:
    'hoses, sensor, reversed, offset, backpressure, back pressure, delta p, restriction, sensor stuck, sensor dead, DPF sensor, dP sensor',
  method: 'half the difference is the drop, half the sum the zero error',
  inputs: {
    normalReading: sensorReading('r_1', 'Reading as connected', 'Engine warm at a steady raised speed.', '51 mbar'),
    swappedReading: sensorReading('r_2', 'Reading with the hoses swapped', 'Same engine state; swap back afterwards.', '-49 mbar'),
    allowedZero: allowedZeroInput,
  },
  intermediates: {},
  outputs: {
    pressureDrop: wf.optional(dropOutput('\\Delta p', 'Drop without the zero error')),
    zeroError: wf.optional(dropOutput('z', 'Zero error of the sensor')),
    verdict: wf.choiceOutput({
      label: 'What it shows',
      options: {
        plausible: 'sensor and connection are plausible',
        'zero-error': 'the sensor has a zero error: subtract it from every reading, and check hoses and wiring',
        repair: 'the sensor is far out, or the two readings contradict each other: find the cause, and do not judge the filter by it',
        reversed: 'the hoses are connected the wrong way round',
        'one-sided': 'the sensor reads in one direction only: its zero error is not clear from this test',
        unchanged: 'the swap changed nothing: sensor or wiring dead, hoses not swapped, or no flow. Do not judge the filter by it',
        'no-signal': 'no drop in either direction: hose off or blocked, no flow, or nothing left in the filter housing',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('pressureDrop', '(normalReading - swappedReading) / 2', sensorPractice),
    wf.formula('zeroError', '(normalReading + swappedReading) / 2', sensorPractice),
    wf.verdict(
      'verdict',
      {
        'no-signal': 'max(abs(normalReading), abs(swappedReading)) <= 2 * allowedZero',
        unchanged: 'abs(normalReading - swappedReading) / 2 <= allowedZero',
        'one-sided':
          'min(abs(normalReading), abs(swappedReading)) <= allowedZero and max(abs(normalReading), abs(swappedReading)) > 4 * allowedZero',
        repair: 'abs(normalReading + swappedReading) / 2 > 5 * allowedZero',
        reversed: 'normalReading < swappedReading',
        plausible: 'abs(normalReading + swappedReading) / 2 <= allowedZero',
        'zero-error': 'otherwise',
      },
      sensorPractice,
    ),
  ],
  assumptions: { same_state: 'Speed, temperature and load of the filter were the same for both readings.' },
  limits: { both_hoses: 'A leak or a part blocked with water in one hose shows in both readings and is not found by swapping.' },
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.makerFirst],
  compute({ normalReading, swappedReading, allowedZero }) {
    const found = hoseSwapVerdict(normalReading, swappedReading, allowedZero);
    const silent = found === 'one-sided' || found === 'no-signal' || found === 'unchanged';
    const { pressureDrop, zeroError } = separateZero(normalReading, swappedReading);
    return {
      pressureDrop: silent || found === 'repair' ? undefined : pressureDrop,
      zeroError: silent ? undefined : zeroError,
      verdict: found,
    };
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
