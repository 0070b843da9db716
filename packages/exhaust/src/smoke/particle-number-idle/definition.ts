import * as wf from '@wallflow/calculation';
import { mean, standardDeviation } from '@wallflow/numerics';
import { fraction, particleNumberConcentration, particleNumberFlow as particleNumberFlowKind, ratio, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import {
  germanyParticleRule,
  jrcPeriodicParticles,
  netherlandsParticleRule,
  recommendation2023,
  switzerlandParticleRule,
} from '../sources.js';
import { particleNumberFlow, particleVerdict } from './kernel.js';
import { type ParticleRule, particleRules } from './limits.js';

const ruleNames = Object.fromEntries(Object.entries(particleRules).map(([id, rule]) => [id, rule.name])) as {
  readonly [Id in keyof typeof particleRules]: string;
};

const cake = wf.commonPractice('A filter without its soot cake lets more particles through: wait 50 to 100 km or say so on the report');

export const particleNumberIdleCalculation = wf.defineCalculation({
  id: 'particle-number-idle',
  subject: 'smoke',
  title: 'Particle number at idle',
  purpose: 'Is the filter tight by the particle count at idle, and how sure is that?',
  keywords: 'particle number, PN, idle, filter, periodic test',
  method: 'mean of the settled readings against the limit of a named rule',
  inputs: {
    rule: wf.choice({ label: 'Rule', options: ruleNames, example: 'eu-recommendation' }),
    testYear: wf.count({ symbol: 'y', label: 'Year of the test', min: 2015, max: 2100, example: 2026 }),
    testMonth: wf.count({ symbol: 'm', label: 'Month of the test', min: 1, max: 12, example: 11, default: [1, 'month not given'] }),
    readings: wf.list(
      {
        particleConcentration: wf.quantity(particleNumberConcentration, {
          symbol: 'N_i',
          label: 'Reading',
          range: '0 <= x <= 1000000000 1/cm3',
          usual: ['0 1/cm3', '20000000 1/cm3', 'hand-held counters end near 5 to 20 million'],
          example: '4000 1/cm3',
          units: ['1/cm3'],
        }),
      },
      {
        label: 'Settled readings at idle',
        description: 'After the settling time of the counter.',
        min: 1,
        max: 60,
        example: [
          { particleConcentration: '4200 1/cm3' },
          { particleConcentration: '3900 1/cm3' },
          { particleConcentration: '3800 1/cm3' },
        ],
      },
    ),
    background: wf.optional(
      wf.quantity(particleNumberConcentration, {
        symbol: 'N_b',
        label: 'Reading in the air beside the vehicle',
        range: '0 <= x <= 10000000 1/cm3',
        usual: ['0 1/cm3', '50000 1/cm3', 'clean air has about 2000; a high background means exhaust in the room'],
        example: '2300 1/cm3',
        units: ['1/cm3'],
      }),
    ),
    dilution: wf.quantity(ratio, {
      symbol: 'd',
      label: 'Dilution that the reading does not yet contain',
      range: '1 <= x <= 1000',
      default: ['1', 'most counters show the undiluted value'],
    }),
    counterUncertainty: wf.quantity(fraction, {
      symbol: 'u',
      label: 'How well the counter reads (±)',
      range: '0 <= x <= 90 %',
      units: ['%'],
      default: ['25 %', 'calibration tolerances of hand-held counters, from memory'],
    }),
    freshlyCleaned: wf.choice({
      label: 'Filter cleaned or regenerated in the last 100 km',
      options: { no: 'no', yes: 'yes', unknown: 'not known' },
      example: 'no',
      default: ['unknown', 'not stated'],
    }),
    exhaustVolumeFlow: wf.optional(
      wf.quantity(volumeFlow, {
        symbol: '\\dot V',
        label: 'Exhaust volume flow',
        description: 'Enter it to see particles per second.',
        range: '0 < x <= 2000 m3/h',
        example: '45 m3/h',
        units: ['m3/h'],
      }),
    ),
  },
  intermediates: {
    numberLimit: wf.quantityOutput(particleNumberConcentration, { symbol: 'N_{max}', label: 'Limit', digits: 4, units: ['1/cm3'] }),
    readingSpread: wf.quantityOutput(fraction, { symbol: 's', label: 'Spread of the readings', digits: 2, units: ['%'] }),
  },
  outputs: {
    meanConcentration: wf.quantityOutput(particleNumberConcentration, {
      symbol: '\\bar N',
      label: 'Mean concentration',
      digits: 3,
      units: ['1/cm3'],
    }),
    aboveBackground: wf.optional(
      wf.quantityOutput(particleNumberConcentration, { symbol: 'N_v', label: 'Of it from the vehicle', digits: 3, units: ['1/cm3'] }),
    ),
    shareOfLimit: wf.quantityOutput(fraction, { symbol: 'q', label: 'Share of the limit', digits: 3, units: ['%'] }),
    perSecond: wf.optional(
      wf.quantityOutput(particleNumberFlowKind, { symbol: '\\dot N', label: 'Particles per second', digits: 3, units: ['1/s'] }),
    ),
    basis: wf.textOutput({ label: 'Basis' }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        below: 'below the limit, also with the uncertainty of the counter',
        above: 'above the limit, also with the uncertainty of the counter',
        undecided: 'near the limit: another counter may decide otherwise',
        'nothing-counted': 'not proven: nothing was counted at all, not even the air of the room',
        'wait-for-cake': 'above the limit on a freshly cleaned filter: drive and repeat before judging',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.fromTable('numberLimit', ['rule']),
    wf.formula('meanConcentration', 'dilution * mean(readings.particleConcentration)', jrcPeriodicParticles),
    wf.cases('readingSpread', {
      'count(readings.particleConcentration) < 2 or sum(readings.particleConcentration) == 0': '0',
      otherwise: 'deviation(readings.particleConcentration) / mean(readings.particleConcentration)',
    }),
    wf.formula('aboveBackground', 'max(0, meanConcentration - background)'),
    wf.formula('shareOfLimit', 'meanConcentration / numberLimit'),
    wf.formula('perSecond', 'meanConcentration * exhaustVolumeFlow'),
    wf.verdict(
      'verdict',
      {
        'nothing-counted': 'meanConcentration == 0',
        below: 'meanConcentration * (1 + counterUncertainty) <= numberLimit',
        'wait-for-cake': "freshlyCleaned == 'yes'",
        above: 'meanConcentration * (1 - counterUncertainty) > numberLimit',
        undecided: 'otherwise',
      },
      cake,
      undefined,
      'The background is shown and not subtracted, as the tests do not subtract it either.',
    ),
  ],
  assumptions: { idle: 'Warm or cold engine at idle, no regeneration running: during one the count can rise more than a thousandfold.' },
  limits: { table_not_inspector: 'The table helps to prepare. The inspector and the text in force decide.' },
  cautions: [cautions.fumes, cautions.noDefeat],
  dimensional: 'limits of the law held as data in their own units',
  sources: [recommendation2023, netherlandsParticleRule, germanyParticleRule, switzerlandParticleRule],
  compute(input, { warn, method }) {
    const rule: ParticleRule = particleRules[input.rule];
    const average = mean(input.readings.map((reading) => reading.particleConcentration));
    if (average === undefined) return wf.noSolution('no readings', ['readings']);
    const basis = wf.citation(rule.source);
    method(wf.say`limit by ${basis}`);
    if (rule.source.mark !== 'read')
      warn('from_memory', wf.say`The limit is from memory: ${basis}. Read the text in force before telling a customer pass or fail.`);
    else warn('read_second_hand', wf.say`${rule.source.note ?? rule.note} Read the text in force before telling a customer pass or fail.`);
    if (12 * input.testYear + input.testMonth - 1 < rule.testedFrom)
      warn('not_yet_in_force', 'At the date of the test this rule was not yet in force.', ['testYear']);
    const concentration = average * input.dilution;
    if (input.background !== undefined && input.background > 0.5 * concentration)
      warn('background_high', 'Much of the reading is the air of the room: ventilate, zero the counter and repeat.', ['background']);
    const readings = input.readings.map((reading) => reading.particleConcentration);
    const spread = average === 0 ? 0 : (standardDeviation(readings) ?? 0) / average;
    if (spread > 0.5) warn('readings_scatter', 'The readings scatter widely: let the counter settle and repeat before judging.');
    const byCount = particleVerdict(concentration, input.counterUncertainty, rule.limit);
    const young = input.freshlyCleaned === 'yes';
    if (input.freshlyCleaned === 'unknown')
      warn(
        'cake_unknown',
        'Say whether the filter was cleaned or regenerated in the last 100 km: without its soot cake it lets more through.',
        ['freshlyCleaned'],
      );
    return {
      numberLimit: rule.limit,
      meanConcentration: concentration,
      readingSpread: spread,
      aboveBackground: input.background === undefined ? undefined : Math.max(0, concentration - input.background),
      shareOfLimit: concentration / rule.limit,
      perSecond: input.exhaustVolumeFlow === undefined ? undefined : particleNumberFlow(concentration, input.exhaustVolumeFlow),
      basis: wf.say`${basis}. ${rule.note}`,
      verdict: average === 0 ? 'nothing-counted' : young && byCount !== 'below' ? 'wait-for-cake' : byCount,
    };
  },
  advise({ verdict }) {
    if (verdict === 'nothing-counted')
      return [
        {
          tone: 'do',
          text: 'Check probe, hose, pump and zero of the counter: the air of any room holds some thousand per cubic centimetre.',
        },
      ];
    if (verdict === 'wait-for-cake')
      return [
        {
          tone: 'do',
          text: 'Drive 50 km to 100 km without a regeneration and repeat; if it stays high, look for a crack, a leak or a loose mat.',
        },
      ];
    if (verdict === 'above')
      return [
        {
          tone: 'do',
          text: 'Repeat with a fresh zero; then look for a crack or a melted channel, a leak past the mat, and soot in the tail pipe.',
        },
      ];
    return [];
  },
});
