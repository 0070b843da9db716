import * as wf from '@wallflow/calculation';
import { absorptionCoefficient, fraction } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { opacityConversionCalculation } from '../opacity-conversion/definition.js';
import { opacityFromAbsorption } from '../opacity-conversion/kernel.js';
import { directive2014, unR24, unR49Smoke } from '../sources.js';
import { freeAcceleration, smokeVerdict } from './kernel.js';

const needed = { 'mean-of-three': 3, 'stable-four': 4 } as const;

const practice = wf.commonPractice(
  'Before a free acceleration: oil level, belt and general state of the engine are checked, as a weak one can be destroyed',
);

export const freeAccelerationCalculation = wf.defineCalculation({
  id: 'free-acceleration',
  subject: 'smoke',
  title: 'Free-acceleration smoke test',
  purpose: 'What is the result of a series of free accelerations, and is it steady enough to count?',
  keywords: 'smoke test, opacity, free acceleration, average, band, smoke meter, opacimeter',
  method: 'mean absorption coefficient of the readings that count',
  inputs: {
    readings: wf.list(
      {
        absorption: wf.quantity(absorptionCoefficient, {
          symbol: 'k_i',
          label: 'Reading',
          description: 'Peak of one free acceleration. Convert a percentage first: percentages do not average.',
          range: '0 <= x <= 20 1/m',
          usual: ['0 1/m', '9.99 1/m', 'most smoke meters end at 10 per metre'],
          example: '0.62 1/m',
        }),
      },
      {
        label: 'Readings in the order they were taken',
        min: 1,
        max: 20,
        example: [{ absorption: '0.74 1/m' }, { absorption: '0.58 1/m' }, { absorption: '0.62 1/m' }, { absorption: '0.60 1/m' }],
      },
    ),
    procedure: wf.choice({
      label: 'Procedure',
      options: {
        'mean-of-three': 'mean of the last three (periodic test)',
        'stable-four': 'mean of four in a row within 0.25 per metre, not falling (UN R24)',
      },
      default: ['mean-of-three', 'usual at the periodic test'],
    }),
    greatestBand: wf.quantity(absorptionCoefficient, {
      symbol: 'b',
      label: 'Greatest width of the readings that count',
      range: '0 < x <= 5 1/m',
      default: ['0.25 1/m', 'UN R24, from memory'],
    }),
    absorptionLimit: wf.optional(
      wf.quantity(absorptionCoefficient, {
        symbol: 'k_{max}',
        label: 'Limit, absorption coefficient',
        description: 'The plate value of the vehicle first, otherwise that of its class and date.',
        range: '0 < x <= 10 1/m',
        example: '1.5 1/m',
      }),
    ),
  },
  example: { absorptionLimit: '1.5 1/m' },
  intermediates: {
    readingsCounted: wf.countOutput({ symbol: 'n', label: 'Number of readings that count' }),
    countedReadings: wf.tableOutput({
      label: 'Readings that count',
      columns: {
        counted: wf.optional(
          wf.quantityOutput(absorptionCoefficient, { symbol: 'k_c', label: 'Reading that counts', digits: 3, units: ['1/m'] }),
        ),
        change: wf.optional(
          wf.quantityOutput(absorptionCoefficient, {
            symbol: '\\Delta k_c',
            label: 'Change from the one before',
            digits: 3,
            units: ['1/m'],
          }),
        ),
      },
    }),
    band: wf.quantityOutput(absorptionCoefficient, {
      symbol: '\\Delta k',
      label: 'Width of the readings that count',
      digits: 3,
      units: ['1/m'],
    }),
    steadiness: wf.choiceOutput({
      label: 'Steadiness',
      options: { steady: 'steady', wide: 'too wide: repeat', falling: 'still falling: the exhaust is being blown clean, repeat' },
    }),
  },
  outputs: {
    meanAbsorption: wf.quantityOutput(absorptionCoefficient, { symbol: '\\bar k', label: 'Result', digits: 3, units: ['1/m'] }),
    opacity: wf.quantityOutput(fraction, { symbol: 'N', label: 'The same as opacity over 430 mm', digits: 3, units: ['%'] }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        pass: 'within the limit',
        fail: 'above the limit',
        'not-stable': 'not steady: repeat the test',
        'no-limit': 'no limit given',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.cases('readingsCounted', { "procedure == 'mean-of-three'": '3', otherwise: '4' }, unR24, undefined, 'The last of the series.'),
    wf.rows(
      'countedReadings',
      {
        counted: { 'row > count(readings.absorption) - readingsCounted': 'readings.absorption' },
        change: { otherwise: 'counted - previous.counted' },
      },
      unR24,
    ),
    wf.formula('band', 'max(countedReadings.counted) - min(countedReadings.counted)', unR24),
    wf.verdict(
      'steadiness',
      {
        wide: 'band > greatestBand',
        falling: "procedure == 'stable-four' and max(countedReadings.change) < 0",
        steady: 'otherwise',
      },
      unR24,
    ),
    wf.formula('meanAbsorption', 'sum(countedReadings.counted) / readingsCounted', directive2014),
    wf.nested('opacity', opacityConversionCalculation, { absorptionCoefficient: 'meanAbsorption' }, 'opacityOut'),
    wf.verdict(
      'verdict',
      {
        'no-limit': 'not known(absorptionLimit)',
        'not-stable': "steadiness != 'steady'",
        pass: 'meanAbsorption <= absorptionLimit',
        fail: 'otherwise',
      },
      directive2014,
    ),
  ],
  assumptions: { warm: 'The engine is warm, the exhaust has been blown clean, and the probe sits as the meter asks.' },
  limits: { cracked_filter_passes: 'A filter with a crack can pass a smoke test. Particle number finds it.' },
  cautions: [cautions.fumes, cautions.makerFirst],
  dimensional: 'reference path and bands of the law in their own units',
  sources: [unR49Smoke, practice],
  compute(input, { warn }) {
    const found = freeAcceleration(
      input.readings.map((reading) => reading.absorption),
      input.procedure,
    );
    if (found === undefined)
      return wf.inconsistentInputs(wf.say`this procedure needs at least ${needed[input.procedure]} readings`, ['procedure'], ['readings']);
    const wide = found.band > input.greatestBand;
    const falling = input.procedure === 'stable-four' && found.falling;
    warn('from_memory', 'The averaging and the band are from memory of UN R24 and Directive 2014/45/EU.');
    if (input.absorptionLimit !== undefined && Math.abs(found.mean - input.absorptionLimit) < 0.1)
      warn('near_limit', 'The result is within 0.1 per metre of the limit: another meter may decide otherwise.');
    return {
      readingsCounted: found.counted.length,
      band: found.band,
      steadiness: wide ? 'wide' : falling ? 'falling' : 'steady',
      meanAbsorption: found.mean,
      countedReadings: input.readings.map(({ absorption }, index) => {
        const first = input.readings.length - found.counted.length;
        const before = index > first ? input.readings[index - 1] : undefined;
        return { counted: index < first ? undefined : absorption, change: before && absorption - before.absorption };
      }),
      opacity: opacityFromAbsorption(found.mean, 0.43),
      verdict: smokeVerdict({ mean: found.mean, stable: !wide && !falling, limit: input.absorptionLimit }),
    };
  },
  advise: () => [
    { tone: 'do-not', text: 'Do not run a free acceleration with low oil, an overdue timing belt, abnormal noise or on a cold engine.' },
  ],
});
