import { choiceOutput, defineCalculation, optional, quantityOutput } from '@wallflow/calculation';
import { fraction } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { allowedZeroInput, sensorReading } from '../sensor-inputs.js';
import { sensorPractice } from '../sources.js';
import { zeroVerdict } from './kernel.js';

export const sensorZeroCheckCalculation = defineCalculation({
  id: 'sensor-zero-check',
  version: '1.0.0',
  subject: 'filter',
  title: 'Zero of the differential pressure sensor',
  purpose: 'Does the sensor read zero without flow, and what does its zero error do to a reading?',
  usedBy: ['technician', 'trainer'],
  keywords: ['offset', 'key on engine off', 'sensor drift'],
  method: 'reading without flow against the accepted error',
  inputs: z.strictObject({
    zeroReading: sensorReading(
      'z',
      'Reading without flow',
      'With the ignition on, the engine off and the hoses connected, once the reading is steady.',
      '3 mbar',
    ),
    reading: sensorReading('\\Delta p', 'Reading with the engine running, if to be corrected', 'The raw reading.', '45 mbar').optional(),
    allowedZero: allowedZeroInput,
  }),
  intermediates: {
    zeroShare: optional(
      quantityOutput(fraction, { symbol: 'x_z', label: 'Zero error next to the corrected drop', digits: 2, units: ['%'] }),
    ),
  },
  outputs: {
    correctedDrop: optional(dropOutput('\\Delta p_k', 'Reading less zero')),
    verdict: choiceOutput({
      label: 'Zero of the sensor',
      options: {
        accepted: 'accepted',
        'take-off': 'off: take it off every reading, and check hoses and wiring',
        repair: 'faulty: find the cause before using any reading',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'correctedDrop', tex: '[[correctedDrop]] = [[reading]]-[[zeroReading]]' },
    { gives: 'zeroShare', text: 'Size of the zero error over the corrected drop: [[zeroShare]].' },
    { gives: 'verdict', text: 'Accepted up to [[allowedZero]], taken off up to five times that: [[verdict]].', source: 'sensorPractice' },
  ],
  assumptions: [{ code: 'constant_zero', text: 'The zero error is the same at any drop and temperature.' }],
  limits: [
    { code: 'not_span', text: 'A good zero says nothing about the span: compare with a second gauge in parallel.' },
    { code: 'rest_pressure', text: 'Straight after stopping, hot gas can keep a small drop; wait until the reading is steady.' },
  ],
  cautions: [cautions.hotExhaust, cautions.makerFirst],
  sources: { sensorPractice },
  compute(input, { warn }) {
    const { zeroReading, reading } = input;
    const correctedDrop = reading === undefined ? undefined : reading - zeroReading;
    const zeroShare = correctedDrop === undefined || correctedDrop === 0 ? undefined : Math.abs(zeroReading / correctedDrop);
    if (zeroShare !== undefined && zeroShare > 0.2)
      warn('small_reading', 'The zero error is more than a fifth of the drop: measure at a higher flow, 2500 1/min or more.');
    if (correctedDrop !== undefined && correctedDrop < 0)
      warn('negative_drop', 'The corrected drop is negative: hoses swapped, or the zero was read with flow.');
    return { correctedDrop, zeroShare, verdict: zeroVerdict(zeroReading, input.allowedZero) };
  },
  advise({ verdict }) {
    if (verdict === 'accepted') return [];
    if (verdict === 'take-off')
      return [{ tone: 'do', text: 'Take the zero off every reading of this session, and read it again at the end.' }];
    return [
      {
        tone: 'do-not',
        text: 'Do not judge the filter by this sensor before the cause is found: water in a hose, wiring, supply, or the sensor.',
      },
    ];
  },
});
