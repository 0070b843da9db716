import {
  choiceOutput,
  choiceWithDefault,
  commonPractice,
  countOutput,
  defineCalculation,
  inconsistentInputs,
  list,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { absorptionCoefficient, fraction } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { opacityFromAbsorption } from '../opacity-conversion/kernel.js';
import { directive2014, unR24, unR49Smoke } from '../sources.js';
import { freeAcceleration, smokeVerdict } from './kernel.js';

const needed = { 'mean-of-three': 3, 'stable-four': 4 } as const;

export const freeAccelerationCalculation = defineCalculation({
  id: 'free-acceleration',
  version: '1.0.0',
  subject: 'smoke',
  title: 'Free-acceleration smoke test',
  purpose: 'What is the result of a series of free accelerations, and is it steady enough to count?',
  usedBy: ['technician', 'trainer'],
  keywords: ['smoke test', 'opacity', 'free acceleration', 'average', 'band'],
  method: 'mean absorption coefficient of the readings that count',
  inputs: z.strictObject({
    readings: list(
      z.strictObject({
        absorption: quantity(absorptionCoefficient, {
          symbol: 'k_i',
          label: 'Reading',
          description: 'Peak of one free acceleration. Convert a percentage first: percentages do not average.',
          min: '0 1/m',
          max: '20 1/m',
          usual: ['0 1/m', '9.99 1/m'],
          usualReason: 'most smoke meters end at 10 per metre',
          example: '0.62 1/m',
        }),
      }),
      {
        label: 'Readings in the order they were taken',
        min: 1,
        max: 20,
        example: [{ absorption: '0.74 1/m' }, { absorption: '0.58 1/m' }, { absorption: '0.62 1/m' }, { absorption: '0.60 1/m' }],
      },
    ),
    procedure: choiceWithDefault({
      label: 'Procedure',
      options: {
        'mean-of-three': 'mean of the last three (periodic test)',
        'stable-four': 'mean of four in a row within 0.25 per metre, not falling (UN R24)',
      },
      example: 'mean-of-three',
      default: 'mean-of-three',
      defaultReason: 'usual at the periodic test',
    }),
    greatestBand: quantityWithDefault(absorptionCoefficient, {
      symbol: 'b',
      label: 'Greatest width of the readings that count',
      above: '0 1/m',
      max: '5 1/m',
      example: '0.25 1/m',
      default: '0.25 1/m',
      defaultReason: 'UN R24, from memory',
    }),
    limit: quantity(absorptionCoefficient, {
      symbol: 'k_{max}',
      label: 'Limit',
      description: 'The plate value of the vehicle first, otherwise that of its class and date.',
      above: '0 1/m',
      max: '10 1/m',
      example: '1.5 1/m',
    }).optional(),
  }),
  example: { limit: '1.5 1/m' },
  intermediates: {
    readingsCounted: countOutput({ symbol: 'n', label: 'Readings that count' }),
    band: quantityOutput(absorptionCoefficient, { symbol: '\\Delta k', label: 'Width of them', digits: 3, units: ['1/m'] }),
    steadiness: choiceOutput({
      label: 'Steadiness',
      options: { steady: 'steady', wide: 'too wide: repeat', falling: 'still falling: the exhaust is being blown clean, repeat' },
    }),
  },
  outputs: {
    mean: quantityOutput(absorptionCoefficient, { symbol: '\\bar k', label: 'Result', digits: 3, units: ['1/m'] }),
    opacity: quantityOutput(fraction, { symbol: 'N', label: 'The same as opacity over 430 mm', digits: 3, units: ['%'] }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        pass: 'within the limit',
        fail: 'above the limit',
        'not-stable': 'not steady: repeat the test',
        'no-limit': 'no limit given',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'readingsCounted', text: 'The last readings, as many as the procedure takes: [[procedure]].', source: 'unR24' },
    { gives: 'band', tex: '[[band]] = k_{max}-k_{min}', source: 'unR24' },
    {
      gives: 'steadiness',
      text: 'Whether each reading is lower than the one before, and the width compared with: [[greatestBand]].',
      source: 'unR24',
    },
    { gives: 'mean', tex: '[[mean]] = \\frac{1}{n}\\sum_i k_i', source: 'directive2014' },
    { gives: 'opacity', tex: '[[opacity]] = 1-e^{-0.430\\,\\mathrm{m}\\,\\cdot\\,[[mean]]}', source: 'unR49Smoke' },
    { gives: 'verdict', text: 'Result against the limit.', source: 'directive2014' },
  ],
  assumptions: [{ code: 'warm', text: 'The engine is warm, the exhaust has been blown clean, and the probe sits as the meter asks.' }],
  limits: [{ code: 'cracked_filter_passes', text: 'A filter with a crack can pass a smoke test. Particle number finds it.' }],
  cautions: [cautions.fumes, cautions.makerFirst],
  sources: {
    unR24,
    directive2014,
    unR49Smoke,
    practice: commonPractice(
      'Before a free acceleration: oil level, belt and general state of the engine are checked, as a weak one can be destroyed',
    ),
  },
  dimensional: 'reference path and bands of the law in their own units',
  compute(input, { warn }) {
    const found = freeAcceleration(
      input.readings.map((reading) => reading.absorption),
      input.procedure,
    );
    if (found === undefined)
      return inconsistentInputs(`this procedure needs at least ${needed[input.procedure]} readings`, ['procedure'], ['readings']);
    const wide = found.band > input.greatestBand;
    const falling = input.procedure === 'stable-four' && found.falling;
    warn('from_memory', 'The averaging and the band are from memory of UN R24 and Directive 2014/45/EU.');
    if (input.limit !== undefined && Math.abs(found.mean - input.limit) < 0.1)
      warn('near_limit', 'The result is within 0.1 per metre of the limit: another meter may decide otherwise.');
    return {
      readingsCounted: found.counted.length,
      band: found.band,
      steadiness: wide ? 'wide' : falling ? 'falling' : 'steady',
      mean: found.mean,
      opacity: opacityFromAbsorption(found.mean, 0.43),
      verdict: smokeVerdict({ mean: found.mean, stable: !wide && !falling, limit: input.limit }),
    };
  },
  advise: () => [
    { tone: 'do-not', text: 'Do not run a free acceleration with low oil, an overdue timing belt, abnormal noise or on a cold engine.' },
  ],
});
