import * as wf from '@wallflow/calculation';
import { coverageFactor, mean, standardDeviation } from '@wallflow/numerics';
import { fraction, moleFraction, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { allowedSensorDifference, sensorVerdict } from './kernel.js';

const practice = wf.commonPractice('A NOx sensor in the exhaust is taken to read within 10 % or 10 ppm');
const sensor = { range: '0 <= x <= 5000 ppm', units: ['ppm'] } as const;
const ppm = (symbol: string, label: string, digits: number) => wf.quantityOutput(moleFraction, { symbol, label, digits, units: ['ppm'] });

export const sensorCrossCheckCalculation = wf.defineCalculation({
  id: 'sensor-cross-check',
  subject: 'reductant',
  title: 'Two NOx sensors in the same gas',
  purpose: 'Do the sensors before and after the catalyst agree when nothing is converted between them?',
  keywords: 'NOx sensor, plausibility, cross-check, sensor stuck, sensor dead',
  method: 'mean difference of paired readings with its 95 % interval',
  inputs: {
    readings: wf.list(
      {
        noxBefore: wf.quantity(moleFraction, { symbol: 'x_{1i}', label: 'Sensor before the catalyst', ...sensor, example: '300 ppm' }),
        noxAfter: wf.quantity(moleFraction, { symbol: 'x_{2i}', label: 'Sensor after the catalyst', ...sensor, example: '290 ppm' }),
      },
      {
        label: 'Pairs of readings',
        description: 'Steady engine, each pair read together, some ten seconds apart.',
        min: 3,
        max: 500,
        example: [
          { noxBefore: '310 ppm', noxAfter: '298 ppm' },
          { noxBefore: '305 ppm', noxAfter: '296 ppm' },
          { noxBefore: '312 ppm', noxAfter: '299 ppm' },
          { noxBefore: '308 ppm', noxAfter: '297 ppm' },
        ],
      },
    ),
    scrState: wf.choice({
      label: 'State of the SCR system',
      options: {
        emptied: 'dosing off, stored ammonia used up (hot, or long without dosing)',
        'dosing-off': 'dosing off, stored ammonia unknown',
        dosing: 'dosing on',
      },
      example: 'emptied',
    }),
    sensorAbsolute: wf.quantity(moleFraction, {
      symbol: 'a',
      label: 'Uncertainty of one sensor, at least (±)',
      range: '0 < x <= 100 ppm',
      units: ['ppm'],
      default: ['10 ppm', 'common practice, no source'],
    }),
    sensorRelative: wf.quantity(fraction, {
      symbol: 'b',
      label: 'Uncertainty of one sensor, as a share of its reading (±)',
      range: '0 <= x <= 50 %',
      units: ['%'],
      default: ['10 %', 'common practice, no source'],
    }),
  },
  intermediates: {
    pairs: wf.tableOutput({ label: 'Differences', columns: { difference: ppm('d_i', 'After minus before', 3) } }),
    pairsCounted: wf.countOutput({ symbol: 'n', label: 'Pairs' }),
    differenceSpread: ppm('s', 'Standard deviation of the differences', 3),
    studentFactor: wf.quantityOutput(ratio, { symbol: 't_{95}', label: "Student's t for 95 %", digits: 4, leastDigits: 4 }),
    differenceUncertainty: ppm('U', 'Uncertainty of the mean difference (95 %)', 2),
    meanNox: ppm('\\bar x', 'Mean of both sensors', 4),
    allowedDifference: ppm('d_{max}', 'Difference that two sound sensors may show', 3),
  },
  outputs: {
    meanBefore: ppm('\\bar x_1', 'Mean before the catalyst', 4),
    meanAfter: ppm('\\bar x_2', 'Mean after the catalyst', 4),
    meanDifference: ppm('d', 'Mean difference, after minus before', 3),
    readingRatio: wf.optional(wf.quantityOutput(ratio, { symbol: 'q', label: 'After over before', digits: 3 })),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        agree: 'the sensors agree',
        'after-low': 'the sensor after the catalyst reads low, or the one before reads high',
        'after-high': 'the sensor after the catalyst reads high, or the one before reads low',
        'storage-possible': 'not clear: stored ammonia may still convert NOx',
        undecided: 'not clear: the limit lies inside the uncertainty',
        'too-little': 'not clear: there is hardly more NOx than the sensors may differ',
        'not-comparable': 'not comparable while dosing',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.rows('pairs', { difference: 'readings.noxAfter - readings.noxBefore' }),
    wf.formula('pairsCounted', 'count(pairs.difference)'),
    wf.formula('meanBefore', 'mean(readings.noxBefore)', cfr1065, '1065.602(b), mean'),
    wf.formula('meanAfter', 'mean(readings.noxAfter)', cfr1065, '1065.602(b), mean'),
    wf.formula('meanDifference', 'mean(pairs.difference)'),
    wf.formula('differenceSpread', 'deviation(pairs.difference)', cfr1065, '1065.602(c), standard deviation'),
    wf.fromTable('studentFactor', ['pairsCounted - 1'], cfr1065, '1065.602(g), Student t'),
    wf.formula('differenceUncertainty', 'studentFactor * differenceSpread / sqrt(pairsCounted)', cfr1065, '1065.602(g)'),
    wf.formula('meanNox', '(meanBefore + meanAfter) / 2'),
    wf.formula('allowedDifference', 'sqrt(2) * max(sensorAbsolute, sensorRelative * meanNox)', practice),
    wf.formula('readingRatio', 'meanAfter / meanBefore'),
    wf.verdict(
      'verdict',
      {
        'not-comparable': "scrState == 'dosing'",
        'too-little': 'meanNox <= allowedDifference',
        agree: 'abs(meanDifference) + differenceUncertainty <= allowedDifference',
        undecided: 'abs(meanDifference) - differenceUncertainty <= allowedDifference',
        'after-high': 'meanDifference > 0',
        'after-low': "scrState == 'emptied'",
        'storage-possible': 'otherwise',
      },
      practice,
    ),
  ],
  assumptions: { same_gas: 'The same gas passes both sensors: no leak, no dosing, no stored ammonia between them.' },
  limits: { which_one: 'Two sensors show that one is wrong, not which. A third instrument or a calibration gas shows that.' },
  cautions: [cautions.sensorFirst, cautions.noDefeat, cautions.makerFirst, cautions.fumes],
  compute(input) {
    const differences = input.readings.map((pair) => pair.noxAfter - pair.noxBefore);
    const pairsCounted = differences.length;
    // At least three pairs are asked for, so that mean and spread are known.
    const meanBefore = wf.known(mean(input.readings.map((pair) => pair.noxBefore)));
    const meanAfter = wf.known(mean(input.readings.map((pair) => pair.noxAfter)));
    const meanDifference = wf.known(mean(differences));
    const differenceSpread = wf.known(standardDeviation(differences));
    const studentFactor = wf.known(coverageFactor(0.95, pairsCounted - 1));
    const differenceUncertainty = (studentFactor * differenceSpread) / Math.sqrt(pairsCounted);
    const meanNox = (meanBefore + meanAfter) / 2;
    const allowedDifference = allowedSensorDifference(meanNox, input.sensorAbsolute, input.sensorRelative);
    return {
      pairs: differences.map((difference) => ({ difference })),
      pairsCounted,
      differenceSpread,
      studentFactor,
      meanBefore,
      meanAfter,
      meanDifference,
      differenceUncertainty,
      meanNox,
      allowedDifference,
      readingRatio: meanBefore > 0 ? meanAfter / meanBefore : undefined,
      verdict: sensorVerdict({
        difference: meanDifference,
        uncertainty: differenceUncertainty,
        allowed: allowedDifference,
        mean: meanNox,
        dosing: input.scrState === 'dosing',
        emptied: input.scrState === 'emptied',
      }),
    };
  },
  advise({ verdict }) {
    if (verdict === 'after-low' || verdict === 'after-high')
      return [
        { tone: 'do', text: 'Check both sensors against a third instrument or a calibration gas, and the pipe between them for leaks.' },
      ];
    if (verdict === 'storage-possible')
      return [{ tone: 'do', text: 'Run the engine hot without dosing until the reading after the catalyst stops rising, then repeat.' }];
    if (verdict === 'too-little') return [{ tone: 'do', text: 'Repeat at a load with more NOx, 200 ppm or more.' }];
    return [];
  },
});
