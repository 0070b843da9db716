import { choiceOutput, defineCalculation, list, noSolution, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { time } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { sensorReading } from '../sensor-inputs.js';
import { sensorPractice } from '../sources.js';
import { lagVerdict, neededLimits, stepResponse } from './kernel.js';

const reading = z.strictObject({
  pressureDrop: sensorReading('\\Delta p', 'Reading', 'The raw reading.', '30 mbar', ['0.1 mbar', '400 mbar']),
});
const readings = (...values: number[]) => values.map((value) => ({ pressureDrop: `${value} mbar` }));

export const sensorLagTestCalculation = defineCalculation({
  id: 'sensor-lag-test',
  version: '1.1.0',
  subject: 'filter',
  title: 'Response of the differential pressure signal',
  purpose: 'Does the signal follow a sudden change of engine speed, or is a hose narrowed or wet?',
  usedBy: ['technician', 'trainer'],
  keywords: ['lag', 'hose', 'condensate', 'soot in the hose', 'step'],
  method: 'time to 63.2 % of a step',
  inputs: z.strictObject({
    interval: quantity(time, {
      symbol: '\\Delta t',
      label: 'Time between two readings',
      above: '0 s',
      max: '60 s',
      usual: ['0.01 s', '2 s'],
      usualReason: { below: 'a tester hardly reads so fast', above: 'slower readings hide the response' },
      example: '0.25 s',
      units: ['s', 'ms'],
    }),
    before: list(reading, {
      label: 'Readings before the step',
      description: 'Steady; the last one is taken as the moment of the step.',
      min: 1,
      max: 2000,
      example: readings(10, 10, 11),
    }),
    after: list(reading, {
      label: 'Readings after the step',
      description: 'Until the reading is steady again, and for at least three times the accepted response time.',
      min: 4,
      max: 5000,
      example: readings(26, 44, 55, 60, 63, 64, 64, 65, 65, 65, 64, 65, 65),
    }),
    allowedTime: quantityWithDefault(time, {
      symbol: 't_{max}',
      label: 'Response time that is still accepted',
      above: '0 s',
      max: '60 s',
      usual: ['0.2 s', '5 s'],
      usualReason: 'common practice',
      example: '1 s',
      default: '1 s',
      defaultReason: 'common practice, no source; the flow itself takes part of it',
      units: ['s', 'ms'],
    }),
  }),
  intermediates: {
    levelBefore: dropOutput('\\Delta p_1', 'Level before the step'),
    levelAfter: dropOutput('\\Delta p_2', 'Level after the step'),
  },
  outputs: {
    responseTime: quantityOutput(time, { symbol: '\\tau', label: 'Time to 63.2 % of the step', digits: 2, units: ['s', 'ms'] }),
    verdict: choiceOutput({
      label: 'Response',
      options: {
        accepted: 'quick enough',
        slow: 'slow: look for water, soot or a kink in the hoses, or a filter on the signal',
        unknown: 'cannot be told from this record: record longer and with quicker readings',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'levelBefore', text: 'Mean of the readings up to the step: [[levelBefore]].' },
    { gives: 'levelAfter', text: 'Mean of the last quarter of the readings after it: [[levelAfter]].' },
    {
      gives: 'responseTime',
      tex: '\\Delta p(t_0+[[responseTime]]) = [[levelBefore]]+0.632\\left([[levelAfter]]-[[levelBefore]]\\right)',
    },
    {
      gives: 'verdict',
      text: 'Accepted up to [[allowedTime]], from a record of at least three times that which ends steady, its last quarter within 5 % of the step of the one before: [[verdict]].',
      source: 'sensorPractice',
    },
  ],
  assumptions: [{ code: 'fast_step', text: 'Engine speed and flow change much faster than the signal.' }],
  limits: [
    {
      code: 'slow_tail',
      text: 'A signal that jumps first and then creeps for minutes looks steady in a short record: record longer when in doubt.',
    },
    { code: 'sampling', text: 'The readings must come faster than the response looked for; a slow diagnostic link hides it.' },
    { code: 'flow_lag', text: 'A turbocharged engine needs a second or more itself: compare with the signal of the air flow.' },
  ],
  cautions: [cautions.hotExhaust, cautions.fumes],
  sources: { sensorPractice },
  mostEvaluations: 100,
  compute(input, { warn }) {
    const values = (rows: readonly { readonly pressureDrop: number }[]) => rows.map((row) => row.pressureDrop);
    const response = stepResponse(values(input.before), values(input.after));
    if (response === undefined) return noSolution('There is no step to see: the readings do not change, or do not settle.', ['after']);
    const { levelBefore, levelAfter, responseIntervals, settled } = response;
    const { interval, allowedTime } = input;
    const readings = input.after.length;
    if (responseIntervals < 1)
      warn('coarse_readings', 'The readings come more slowly than the response: it came within one interval.', ['interval']);
    if (!settled) {
      warn('not_settled', 'The reading is still changing at the end of the record: the true response is slower than the time shown.', [
        'after',
      ]);
    }
    if (readings * interval < neededLimits * allowedTime) {
      warn(
        'short_record',
        'The record after the step is shorter than three times the accepted response time: it cannot show that the signal is quick enough.',
        ['after'],
      );
    }
    const verdict = lagVerdict(response, readings, interval, allowedTime);
    return { levelBefore, levelAfter, responseTime: responseIntervals * interval, verdict };
  },
  advise({ verdict }) {
    if (verdict !== 'unknown') return [];
    return [{ tone: 'do', text: 'Record again until the reading stays steady, with several readings within the accepted response time.' }];
  },
});
