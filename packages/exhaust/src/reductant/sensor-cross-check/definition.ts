import {
  choice,
  choiceOutput,
  commonPractice,
  defineCalculation,
  list,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { coverageFactor, mean, standardDeviation } from '@wallflow/numerics';
import { fraction, moleFraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { allowedSensorDifference, sensorVerdict } from './kernel.js';

export const sensorCrossCheckCalculation = defineCalculation({
  id: 'sensor-cross-check',
  version: '1.1.0',
  subject: 'reductant',
  title: 'Two NOx sensors in the same gas',
  purpose: 'Do the sensors before and behind the catalyst agree when nothing is converted between them?',
  usedBy: ['technician', 'trainer'],
  keywords: ['NOx sensor', 'plausibility', 'cross-check'],
  method: 'mean difference of paired readings with its 95 % interval',
  inputs: z.strictObject({
    readings: list(
      z.strictObject({
        upstream: quantity(moleFraction, {
          symbol: 'x_{1i}',
          label: 'Sensor before',
          min: '0 ppm',
          max: '5000 ppm',
          example: '300 ppm',
          units: ['ppm'],
        }),
        downstream: quantity(moleFraction, {
          symbol: 'x_{2i}',
          label: 'Sensor behind',
          min: '0 ppm',
          max: '5000 ppm',
          example: '290 ppm',
          units: ['ppm'],
        }),
      }),
      {
        label: 'Pairs of readings',
        description: 'Steady engine, each pair read together, some ten seconds apart.',
        min: 3,
        max: 500,
        example: [
          { upstream: '310 ppm', downstream: '298 ppm' },
          { upstream: '305 ppm', downstream: '296 ppm' },
          { upstream: '312 ppm', downstream: '299 ppm' },
          { upstream: '308 ppm', downstream: '297 ppm' },
        ],
      },
    ),
    state: choice({
      label: 'State of the SCR system',
      options: {
        emptied: 'dosing off, stored ammonia used up (hot, or long without dosing)',
        'dosing-off': 'dosing off, stored ammonia unknown',
        dosing: 'dosing on',
      },
      example: 'emptied',
    }),
    sensorAbsolute: quantityWithDefault(moleFraction, {
      symbol: 'a',
      label: 'How well one sensor reads, at least (±)',
      above: '0 ppm',
      max: '100 ppm',
      example: '10 ppm',
      units: ['ppm'],
      default: '10 ppm',
      defaultReason: 'common practice, no source',
    }),
    sensorRelative: quantityWithDefault(fraction, {
      symbol: 'b',
      label: 'How well one sensor reads, of the value (±)',
      min: '0 %',
      max: '50 %',
      example: '10 %',
      units: ['%'],
      default: '10 %',
      defaultReason: 'common practice, no source',
    }),
  }),
  intermediates: {
    uncertainty: quantityOutput(moleFraction, {
      symbol: 'U',
      label: 'Uncertainty of the mean difference (95 %)',
      digits: 2,
      units: ['ppm'],
    }),
    allowedDifference: quantityOutput(moleFraction, {
      symbol: 'd_{max}',
      label: 'Difference that two sound sensors may show',
      digits: 3,
      units: ['ppm'],
    }),
  },
  outputs: {
    meanUpstream: quantityOutput(moleFraction, { symbol: '\\bar x_1', label: 'Mean before', digits: 4, units: ['ppm'] }),
    meanDownstream: quantityOutput(moleFraction, { symbol: '\\bar x_2', label: 'Mean behind', digits: 4, units: ['ppm'] }),
    difference: quantityOutput(moleFraction, { symbol: 'd', label: 'Mean difference, behind minus before', digits: 3, units: ['ppm'] }),
    readingRatio: optional(quantityOutput(ratio, { symbol: 'q', label: 'Behind over before', digits: 3 })),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        agree: 'the sensors agree',
        'downstream-low': 'the sensor behind reads low, or the one before reads high',
        'downstream-high': 'the sensor behind reads high, or the one before reads low',
        'storage-possible': 'undecided: stored ammonia may still convert NOx',
        undecided: 'undecided: the limit lies inside the uncertainty',
        'too-little': 'cannot tell: there is hardly more NOx than the difference that is allowed',
        'not-comparable': 'not comparable while dosing',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'meanUpstream', tex: '[[meanUpstream]] = \\frac{1}{n}\\sum_i x_{1i}', source: 'cfr1065', locator: '1065.602(b)' },
    { gives: 'meanDownstream', tex: '[[meanDownstream]] = \\frac{1}{n}\\sum_i x_{2i}', source: 'cfr1065', locator: '1065.602(b)' },
    { gives: 'difference', tex: '[[difference]] = [[meanDownstream]]-[[meanUpstream]]' },
    { gives: 'uncertainty', tex: '[[uncertainty]] = t_{95}\\,\\frac{s_d}{\\sqrt{n}}', source: 'cfr1065', locator: '1065.602(c), (g)' },
    {
      gives: 'allowedDifference',
      tex: '[[allowedDifference]] = \\sqrt{2}\\,\\max\\left([[sensorAbsolute]],\\ [[sensorRelative]]\\,\\bar x\\right)',
      source: 'practice',
    },
    { gives: 'readingRatio', tex: '[[readingRatio]] = \\frac{[[meanDownstream]]}{[[meanUpstream]]}' },
    {
      gives: 'verdict',
      text: 'The mean difference with its uncertainty against the difference allowed; with no more NOx than that, nothing can be told. State: [[state]].',
      source: 'practice',
    },
  ],
  assumptions: [{ code: 'same_gas', text: 'The same gas passes both sensors: no leak, no dosing, no stored ammonia between them.' }],
  limits: [{ code: 'which_one', text: 'Two sensors tell that one is wrong, not which. A third instrument or a calibration gas tells.' }],
  cautions: [cautions.sensorFirst, cautions.noDefeat, cautions.makerFirst, cautions.fumes],
  sources: { cfr1065, practice: commonPractice('A NOx sensor in the exhaust is taken to read within 10 % or 10 ppm') },
  compute(input) {
    const upstream = input.readings.map((pair) => pair.upstream);
    const downstream = input.readings.map((pair) => pair.downstream);
    const differences = input.readings.map((pair) => pair.downstream - pair.upstream);
    const meanUpstream = mean(upstream);
    const meanDownstream = mean(downstream);
    const spread = standardDeviation(differences);
    const factor = coverageFactor(0.95, differences.length - 1);
    if (meanUpstream === undefined || meanDownstream === undefined || spread === undefined || factor === undefined) {
      return noSolution('too few pairs of readings', ['readings']);
    }
    const difference = meanDownstream - meanUpstream;
    const uncertainty = (factor * spread) / Math.sqrt(differences.length);
    const allowedDifference = allowedSensorDifference((meanUpstream + meanDownstream) / 2, input.sensorAbsolute, input.sensorRelative);
    return {
      meanUpstream,
      meanDownstream,
      difference,
      uncertainty,
      allowedDifference,
      readingRatio: meanUpstream > 0 ? meanDownstream / meanUpstream : undefined,
      verdict: sensorVerdict({
        difference,
        uncertainty,
        allowed: allowedDifference,
        mean: (meanUpstream + meanDownstream) / 2,
        dosing: input.state === 'dosing',
        emptied: input.state === 'emptied',
      }),
    };
  },
});
