import {
  choice,
  choiceOutput,
  choiceWithDefault,
  citation,
  commonPractice,
  count,
  defineCalculation,
  list,
  noSolution,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  textOutput,
} from '@wallflow/calculation';
import { mean, standardDeviation } from '@wallflow/numerics';
import { fraction, particleNumberConcentration, particleNumberFlow as particleNumberFlowKind, ratio, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
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

export const particleNumberIdleCalculation = defineCalculation({
  id: 'particle-number-idle',
  version: '1.1.0',
  subject: 'smoke',
  title: 'Particle number at idle',
  purpose: 'Is the filter tight by the particle count at idle, and how sure is that?',
  usedBy: ['technician', 'trainer'],
  keywords: ['particle number', 'PN', 'idle', 'filter', 'periodic test'],
  method: 'mean of the settled readings against the limit of a named rule',
  inputs: z.strictObject({
    rule: choice({ label: 'Rule', options: ruleNames, example: 'eu-recommendation' }),
    testYear: count({ symbol: 'y', label: 'Year of the test', min: 2015, max: 2100, example: 2026 }),
    testMonth: count({
      symbol: 'm',
      label: 'Month of the test',
      min: 1,
      max: 12,
      example: 11,
      default: 1,
      defaultReason: 'month not given',
    }),
    readings: list(
      z.strictObject({
        concentration: quantity(particleNumberConcentration, {
          symbol: 'N_i',
          label: 'Reading',
          min: '0 1/cm3',
          max: '1000000000 1/cm3',
          usual: ['0 1/cm3', '20000000 1/cm3'],
          usualReason: 'hand-held counters end near 5 to 20 million',
          example: '4000 1/cm3',
          units: ['1/cm3'],
        }),
      }),
      {
        label: 'Settled readings at idle',
        description: 'After the settling time of the counter.',
        min: 1,
        max: 60,
        example: [{ concentration: '4200 1/cm3' }, { concentration: '3900 1/cm3' }, { concentration: '3800 1/cm3' }],
      },
    ),
    background: quantity(particleNumberConcentration, {
      symbol: 'N_b',
      label: 'Reading in the air beside the vehicle',
      min: '0 1/cm3',
      max: '10000000 1/cm3',
      usual: ['0 1/cm3', '50000 1/cm3'],
      usualReason: 'clean air has about 2000; a high background means exhaust in the room',
      example: '2300 1/cm3',
      units: ['1/cm3'],
    }).optional(),
    dilution: quantityWithDefault(ratio, {
      symbol: 'd',
      label: 'Dilution that the reading does not yet contain',
      min: '1',
      max: '1000',
      example: '1',
      default: '1',
      defaultReason: 'most counters show the undiluted value',
    }),
    counterUncertainty: quantityWithDefault(fraction, {
      symbol: 'u',
      label: 'How well the counter reads (±)',
      min: '0 %',
      max: '90 %',
      example: '25 %',
      units: ['%'],
      default: '25 %',
      defaultReason: 'calibration tolerances of hand-held counters, from memory',
    }),
    freshlyCleaned: choiceWithDefault({
      label: 'Filter cleaned or regenerated in the last 100 km',
      options: { no: 'no', yes: 'yes', unknown: 'not known' },
      example: 'no',
      default: 'unknown',
      defaultReason: 'not stated',
    }),
    exhaustVolumeFlow: quantity(volumeFlow, {
      symbol: '\\dot V',
      label: 'Exhaust volume flow at the state of the reading',
      description: 'Give it to get particles per second.',
      above: '0 m3/h',
      max: '2000 m3/h',
      example: '45 m3/h',
      units: ['m3/h'],
    }).optional(),
  }),
  intermediates: {
    limit: quantityOutput(particleNumberConcentration, { symbol: 'N_{max}', label: 'Limit', digits: 4, units: ['1/cm3'] }),
    spread: quantityOutput(fraction, { symbol: 's', label: 'Spread of the readings', digits: 2, units: ['%'] }),
  },
  outputs: {
    mean: quantityOutput(particleNumberConcentration, { symbol: '\\bar N', label: 'Mean concentration', digits: 3, units: ['1/cm3'] }),
    aboveBackground: optional(
      quantityOutput(particleNumberConcentration, { symbol: 'N_v', label: 'Of it from the vehicle', digits: 3, units: ['1/cm3'] }),
    ),
    shareOfLimit: quantityOutput(fraction, { symbol: 'q', label: 'Share of the limit', digits: 3, units: ['%'] }),
    perSecond: optional(
      quantityOutput(particleNumberFlowKind, { symbol: '\\dot N', label: 'Particles per second', digits: 3, units: ['1/s'] }),
    ),
    basis: textOutput({ label: 'Basis' }),
    verdict: choiceOutput({
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
  constants: {},
  steps: [
    { gives: 'limit', text: 'Limit of the rule.' },
    { gives: 'mean', tex: '[[mean]] = [[dilution]]\\,\\frac{1}{n}\\sum_i N_i', source: 'jrcPeriodicParticles' },
    { gives: 'spread', tex: '[[spread]] = \\frac{s_N}{[[mean]]}' },
    { gives: 'aboveBackground', tex: '[[aboveBackground]] = \\max(0,\\ [[mean]]-[[background]])' },
    { gives: 'shareOfLimit', tex: '[[shareOfLimit]] = \\frac{[[mean]]}{[[limit]]}' },
    { gives: 'perSecond', tex: '[[perSecond]] = [[mean]]\\,[[exhaustVolumeFlow]]' },
    { gives: 'basis', text: 'Source of the limit and how far it was checked.' },
    {
      gives: 'verdict',
      text: 'Mean with the uncertainty of the counter against the limit. The background is shown and not subtracted, as the tests do not subtract it either.',
      source: 'cake',
    },
  ],
  assumptions: [
    { code: 'idle', text: 'Warm or cold engine at idle, no regeneration running: during one the count can rise more than a thousandfold.' },
  ],
  limits: [{ code: 'table_not_inspector', text: 'The table helps to prepare. The inspector and the text in force decide.' }],
  cautions: [cautions.fumes, cautions.noDefeat],
  sources: {
    recommendation2023,
    netherlandsParticleRule,
    germanyParticleRule,
    switzerlandParticleRule,
    jrcPeriodicParticles,
    cake: commonPractice('A filter without its soot cake lets more particles through: wait 50 to 100 km or say so on the report'),
  },
  dimensional: 'limits of the law held as data in their own units',
  compute(input, { warn, method }) {
    const rule: ParticleRule = particleRules[input.rule];
    const average = mean(input.readings.map((reading) => reading.concentration));
    if (average === undefined) return noSolution('no readings', ['readings']);
    const basis = citation(rule.source);
    method(`limit by ${basis}`);
    if (rule.source.mark !== 'read')
      warn('from_memory', `The limit is from memory: ${basis}. Read the text in force before telling a customer pass or fail.`);
    else warn('read_second_hand', `${rule.source.note ?? rule.note} Read the text in force before telling a customer pass or fail.`);
    if (12 * input.testYear + input.testMonth - 1 < rule.testedFrom)
      warn('not_yet_in_force', 'At the date of the test this rule was not yet in force.', ['testYear']);
    const concentration = average * input.dilution;
    if (input.background !== undefined && input.background > 0.5 * concentration)
      warn('background_high', 'Much of the reading is the air of the room: ventilate, zero the counter and repeat.', ['background']);
    const readings = input.readings.map((reading) => reading.concentration);
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
      limit: rule.limit,
      mean: concentration,
      spread,
      aboveBackground: input.background === undefined ? undefined : Math.max(0, concentration - input.background),
      shareOfLimit: concentration / rule.limit,
      perSecond: input.exhaustVolumeFlow === undefined ? undefined : particleNumberFlow(concentration, input.exhaustVolumeFlow),
      basis: `${basis}. ${rule.note}`,
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
