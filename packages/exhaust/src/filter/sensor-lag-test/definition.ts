import * as wf from '@wallflow/calculation';
import { fraction, time } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { sensorReading } from '../sensor-inputs.js';
import { sensorPractice } from '../sources.js';
import { lagVerdict, levelOfThirdQuarter, neededLimits, quarterOf, stepResponse } from './kernel.js';

const reading = {
  pressureDrop: sensorReading('\\Delta p', 'Reading', 'The raw reading.', '30 mbar', ['0.1 mbar', '400 mbar']),
};
const readings = (...values: number[]) => values.map((value) => ({ pressureDrop: `${value} mbar` }));

export const sensorLagTestCalculation = wf.defineCalculation({
  id: 'sensor-lag-test',
  subject: 'filter',
  title: 'Response of the differential pressure signal',
  purpose: 'Does the signal follow a sudden change of engine speed, or is a hose narrowed or wet?',
  keywords:
    'lag, hose, condensate, soot in the hose, step, backpressure, back pressure, delta p, restriction, sensor stuck, sensor dead, DPF sensor, dP sensor',
  method: 'time to 63.2 % of a step',
  inputs: {
    interval: wf.quantity(time, {
      symbol: '\\Delta t',
      label: 'Time between two readings',
      range: '0 < x <= 60 s',
      usual: ['0.01 s', '2 s', { below: 'a tester hardly reads so fast', above: 'slower readings hide the response' }],
      example: '0.25 s',
      units: ['s', 'ms'],
    }),
    before: wf.list(reading, {
      label: 'Readings before the step',
      description: 'Steady; the last one is taken as the moment of the step.',
      min: 1,
      max: 2000,
      example: readings(18, 18, 18),
    }),
    after: wf.list(reading, {
      label: 'Readings after the step',
      description: 'Until the reading is steady again, and for at least three times the accepted response time.',
      min: 4,
      max: 5000,
      example: readings(48, 67, 78, 85, 89, 91, 93, 94, 94, 95, 95, 95, 95),
    }),
    allowedTime: wf.quantity(time, {
      symbol: 't_{max}',
      label: 'Response time that is still accepted',
      range: '0 < x <= 60 s',
      usual: ['0.2 s', '5 s', 'common practice'],
      default: ['1 s', 'common practice, no source; the flow itself takes part of it'],
      units: ['s', 'ms'],
    }),
  },
  intermediates: {
    levelBefore: dropOutput('\\Delta p_1', 'Level before the step'),
    recordEnd: wf.tableOutput({
      label: 'End of the record',
      columns: {
        thirdQuarter: dropOutput('\\Delta p_{III}', 'Third quarter'),
        lastQuarter: dropOutput('\\Delta p_{IV}', 'Last quarter'),
      },
    }),
    levelAfter: dropOutput('\\Delta p_2', 'Level after the step'),
    stillMoving: wf.quantityOutput(fraction, { symbol: 'x', label: 'Last change of the level, of the step', digits: 2, units: ['%'] }),
    recordLength: wf.quantityOutput(time, { symbol: 't_r', label: 'Length of the record after the step', digits: 3, units: ['s', 'ms'] }),
    crossing: wf.tableOutput({
      label: 'Readings on both sides of 63.2 %',
      columns: {
        time: wf.quantityOutput(time, { symbol: 't_i', label: 'Time', digits: 3, units: ['s', 'ms'] }),
        crossingReading: dropOutput('\\Delta p_i', 'Reading'),
      },
    }),
  },
  outputs: {
    responseTime: wf.quantityOutput(time, { symbol: '\\tau', label: 'Time to 63.2 % of the step', digits: 2, units: ['s', 'ms'] }),
    verdict: wf.choiceOutput({
      label: 'Response',
      options: {
        accepted: 'quick enough',
        slow: 'slow: look for water, soot or a kink in the hoses, or a filter on the signal',
        unknown: 'not clear from this record: record longer and with quicker readings',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('levelBefore', 'mean(before.pressureDrop)'),
    wf.statement('recordEnd', 'The last two quarters of the readings after the step.'),
    wf.formula('levelAfter', 'mean(recordEnd.lastQuarter)'),
    wf.formula('stillMoving', 'abs(levelAfter - mean(recordEnd.thirdQuarter)) / abs(levelAfter - levelBefore)'),
    wf.formula('recordLength', 'count(after) * interval'),
    wf.statement('crossing', 'The first reading beyond 63.2 % of the step, and the one before it.'),
    wf.formula(
      'responseTime',
      'first(crossing.time) + interval * (levelBefore + (1 - exp(-1)) * (levelAfter - levelBefore) - first(crossing.crossingReading)) / (last(crossing.crossingReading) - first(crossing.crossingReading))',
      undefined,
      undefined,
      'On the straight line between the two readings.',
    ),
    wf.verdict(
      'verdict',
      {
        slow: 'responseTime > allowedTime and responseTime >= interval',
        accepted: 'stillMoving <= 0.05 and recordLength >= 3 * allowedTime and (responseTime >= interval or interval <= allowedTime)',
        unknown: 'otherwise',
      },
      sensorPractice,
    ),
  ],
  assumptions: { fast_step: 'Engine speed and flow change much faster than the signal.' },
  limits: {
    slow_tail: 'A signal that jumps first and then creeps for minutes looks steady in a short record: record longer when in doubt.',
    sampling: 'The readings must come faster than the response looked for; a slow diagnostic link hides it.',
    flow_lag: 'A turbocharged engine needs a second or more itself: compare with the signal of the air flow.',
  },
  cautions: [cautions.hotExhaust, cautions.fumes],
  mostEvaluations: 100,
  compute(input, { warn }) {
    const values = (rows: readonly { readonly pressureDrop: number }[]) => rows.map((row) => row.pressureDrop);
    const response = stepResponse(values(input.before), values(input.after));
    if (response === undefined) return wf.noSolution('There is no step to see: the readings do not change, or do not settle.', ['after']);
    const { levelBefore, levelAfter, responseIntervals, crossed, settled } = response;
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
    const after = values(input.after);
    const quarter = quarterOf(after);
    const change = levelAfter - levelBefore;
    return {
      levelBefore,
      recordEnd: after.slice(-quarter).map((lastQuarter, index) => ({
        thirdQuarter: after.at(index - 2 * quarter) ?? lastQuarter,
        lastQuarter,
      })),
      levelAfter,
      stillMoving: Math.abs(levelAfter - levelOfThirdQuarter(after)) / Math.abs(change),
      recordLength: readings * interval,
      crossing: [crossed, crossed + 1].map((index) => ({
        time: index * interval,
        crossingReading: index === 0 ? levelBefore : (after[index - 1] ?? levelAfter),
      })),
      responseTime: responseIntervals * interval,
      verdict: lagVerdict(response, readings, interval, allowedTime),
    };
  },
  advise({ verdict }) {
    if (verdict !== 'unknown') return [];
    return [{ tone: 'do', text: 'Record again until the reading stays steady, with several readings within the accepted response time.' }];
  },
});
