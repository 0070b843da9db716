import * as wf from '@wallflow/calculation';
import { fraction } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { allowedZeroInput, sensorReading } from '../sensor-inputs.js';
import { sensorPractice } from '../sources.js';
import { zeroVerdict } from './kernel.js';

export const sensorZeroCheckCalculation = wf.defineCalculation({
  id: 'sensor-zero-check',
  subject: 'filter',
  title: 'Zero of the differential pressure sensor',
  purpose: 'Does the sensor read zero without flow, and what does its zero error do to a reading?',
  keywords:
    'offset, key on engine off, sensor drift, backpressure, back pressure, delta p, restriction, sensor stuck, sensor dead, DPF sensor, dP sensor',
  method: 'reading without flow against the accepted error',
  inputs: {
    zeroReading: sensorReading(
      'z',
      'Reading with the engine off',
      'With the ignition on, the engine off and the hoses connected, once the reading is steady.',
      '0.6 mbar',
    ),
    runningReading: wf.optional(
      sensorReading('\\Delta p', 'Reading with the engine running', 'Optional: the raw reading, to be corrected.', '50 mbar'),
    ),
    allowedZero: allowedZeroInput,
  },
  intermediates: {
    zeroShare: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'x_z', label: 'Zero error next to the corrected drop', digits: 2, units: ['%'] }),
    ),
  },
  outputs: {
    correctedDrop: wf.optional(dropOutput('\\Delta p_k', 'Reading less zero')),
    verdict: wf.choiceOutput({
      label: 'Zero of the sensor',
      options: {
        accepted: 'accepted',
        'take-off': 'out: subtract it from every reading, and check hoses and wiring',
        repair: 'faulty: find the cause before using any reading',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('correctedDrop', 'runningReading - zeroReading'),
    wf.formula('zeroShare', 'abs(zeroReading / correctedDrop)'),
    wf.verdict(
      'verdict',
      { accepted: 'abs(zeroReading) <= allowedZero', 'take-off': 'abs(zeroReading) <= 5 * allowedZero', repair: 'otherwise' },
      sensorPractice,
    ),
  ],
  assumptions: { constant_zero: 'The zero error is the same at any drop and temperature.' },
  limits: {
    not_span: 'A good zero says nothing about the span: compare with a second gauge in parallel.',
    rest_pressure: 'Straight after stopping, hot gas can keep a small drop; wait until the reading is steady.',
  },
  cautions: [cautions.hotExhaust, cautions.makerFirst],
  compute(input, { warn }) {
    const { zeroReading, runningReading } = input;
    const correctedDrop = runningReading === undefined ? undefined : runningReading - zeroReading;
    const zeroShare = correctedDrop === undefined || correctedDrop === 0 ? undefined : Math.abs(zeroReading / correctedDrop);
    if (zeroShare !== undefined && zeroShare > 0.2)
      warn('small_reading', 'The zero error is more than a fifth of the drop: measure at a higher flow, at a steady raised speed.');
    if (correctedDrop !== undefined && correctedDrop < 0)
      warn('negative_drop', 'The corrected drop is negative: hoses swapped, or the zero was read with flow.');
    return { correctedDrop, zeroShare, verdict: zeroVerdict(zeroReading, input.allowedZero) };
  },
  advise({ verdict }) {
    if (verdict === 'accepted') return [];
    if (verdict === 'take-off')
      return [{ tone: 'do', text: 'Subtract the zero from every reading of this session, and read it again at the end.' }];
    return [
      {
        tone: 'do-not',
        text: 'Do not judge the filter by this sensor before the cause is found: water in a hose, wiring, supply, or the sensor.',
      },
    ];
  },
});
