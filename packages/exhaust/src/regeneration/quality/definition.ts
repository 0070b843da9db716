import {
  choiceOutput,
  choiceWithDefault,
  countOutput,
  defineCalculation,
  isRefusal,
  list,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { fraction, mass, moleFraction, temperature, time } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { chosenKinetics, kineticsConstants, kineticsInputs, kineticsOptions } from '../../soot/oxidation/inputs.js';
import type { SootKinetics } from '../../soot/oxidation/kernel.js';
import { kineticsSpread } from '../../soot/oxidation/kernel-sets.js';
import { bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { siBrochure } from '../../sources.js';
import { checkedLog } from '../checked-log.js';
import { qualityPractice } from '../sources.js';
import { burnExponent, timeAbove } from './kernel.js';

const line = z.strictObject({
  time: quantity(time, {
    symbol: 't',
    label: 'Time',
    min: '0 s',
    max: '24 h',
    example: '0 min',
    units: ['min', 's'],
  }),
  temperature: quantity(temperature, {
    symbol: 'T',
    label: 'Temperature before or in the filter',
    min: '-60 °C',
    max: '1500 °C',
    example: '600 °C',
    units: ['degC', 'K', 'degF'],
  }),
});

const example = [
  [0, 280],
  [3, 450],
  [5, 580],
  [8, 605],
  [12, 610],
  [18, 600],
  [19, 420],
  [24, 250],
].map(([minute, celsius]) => ({ time: `${minute} min`, temperature: `${celsius} °C` }));

/** What counts where nobody knows the filter. */
const bothKinds = ['bai-2016', 'uncoated-2008'] as const;

/** Hotter than a normal regeneration, K. */
const tooHot = 1073.15;

export const regenerationQualityCalculation = defineCalculation({
  id: 'regeneration-quality',
  version: '3.0.0',
  subject: 'regeneration',
  title: 'Quality of a finished regeneration',
  purpose: 'Was it hot for long enough, without breaks, and did it burn the soot?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['completeness', 'time above temperature', 'interrupted', 'log'],
  method: 'time above temperature, expected burn-off by the rate law, measured fall of the soot',
  inputs: z.strictObject({
    log: list(line, { label: 'Log', description: 'Lines in order of time.', min: 2, max: 20_000, example }),
    threshold: quantityWithDefault(temperature, {
      symbol: 'T_{min}',
      label: 'Temperature that counts',
      min: '300 °C',
      max: '800 °C',
      example: '550 °C',
      default: '550 °C',
      defaultReason: 'soot burns with oxygen from about 550 °C',
      units: ['degC', 'K', 'degF'],
    }),
    wantedTime: quantityWithDefault(time, {
      symbol: 't_{min}',
      label: 'Time wanted above it',
      above: '0 s',
      max: '2 h',
      example: '10 min',
      default: '10 min',
      defaultReason: 'the short end of 10 to 20 min; common practice, no source',
      units: ['min', 's'],
    }),
    oxygen: quantityWithDefault(moleFraction, {
      symbol: 'x_{O_2}',
      label: 'Oxygen before the filter',
      min: '0 %',
      max: '21 %',
      example: '8 %',
      default: '8 %',
      defaultReason: 'with injected fuel, engine at raised idle',
      units: ['%', '1'],
    }),
    sootBefore: quantity(mass, {
      symbol: 'm_1',
      label: 'Soot before',
      above: '0 g',
      max: '5 kg',
      example: '20 g',
      units: ['g'],
    }).optional(),
    sootAfter: quantity(mass, {
      symbol: 'm_2',
      label: 'Soot after',
      description: 'Measured apart from the counter: a control unit may just set it to zero.',
      min: '0 g',
      max: '5 kg',
      example: '3 g',
      units: ['g'],
    }).optional(),
    ...kineticsInputs,
    kinetics: choiceWithDefault({
      label: 'Kind of filter, for the rate at which soot burns',
      options: { 'not-known': 'not known: coated and uncoated both counted', ...kineticsOptions },
      example: 'not-known',
      default: 'not-known',
      defaultReason: 'the coating of a filter cannot be seen; coated and uncoated burn several times apart',
    }),
  }),
  example: { sootBefore: '20 g', sootAfter: '3 g' },
  intermediates: {
    totalTime: quantityOutput(time, { symbol: 't_\\Sigma', label: 'Time above the temperature', digits: 4, units: ['min', 's'] }),
    longestTime: quantityOutput(time, { symbol: 't_1', label: 'Longest time without a break', digits: 4, units: ['min', 's'] }),
    peak: quantityOutput(temperature, { symbol: 'T_{max}', label: 'Highest temperature', digits: 4, units: ['degC'] }),
  },
  outputs: {
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        complete: 'complete: hot long enough, and the soot fell',
        incomplete: 'hot long enough, but only part of the soot burnt',
        unproven: 'hot long enough; burn not proven',
        partial: 'heated only in part: too short or not hot enough',
        failed: 'not really one',
        doubtful: 'hot enough, but the soot hardly fell: look for ash or a wrong signal',
      },
    }),
    leastExpected: quantityOutput(fraction, {
      symbol: 'X_1',
      label: 'Burn-off to be expected from the temperatures, at least',
      digits: 2,
      units: ['%'],
    }),
    mostExpected: quantityOutput(fraction, {
      symbol: 'X_2',
      label: 'Burn-off to be expected from the temperatures, at most',
      digits: 2,
      units: ['%'],
    }),
    measured: optional(
      quantityOutput(fraction, { symbol: 'X_m', label: 'Burn-off by the soot before and after', digits: 3, units: ['%'] }),
    ),
    timeShare: quantityOutput(fraction, {
      symbol: 'f_t',
      label: 'Time above the temperature, share of the wanted',
      digits: 3,
      units: ['%'],
    }),
    interruptions: countOutput({ symbol: 'n_i', label: 'Interruptions' }),
  },
  constants: kineticsConstants,
  steps: [
    { gives: 'peak', text: 'Highest temperature of the log.' },
    { gives: 'totalTime', text: 'Time above [[threshold]], straight lines between the lines of the log.', source: 'qualityPractice' },
    { gives: 'longestTime', text: 'Longest of the times without a break.', source: 'qualityPractice' },
    { gives: 'interruptions', text: 'How often the temperature came back above it.' },
    {
      gives: 'leastExpected',
      tex: '[[leastExpected]] = 1-\\exp\\left(-\\int \\frac{k(T)}{2}\\,dt\\right)',
      text: 'With half the rate of the slowest law that is chosen: filters of one kind differ by a factor of 2 either way.',
      source: 'uncoatedDisk2008',
    },
    {
      gives: 'mostExpected',
      tex: '[[mostExpected]] = 1-\\exp\\left(-\\int 2\\,k(T)\\,dt\\right)',
      text: 'With twice the rate of the fastest law that is chosen.',
      source: 'bai2016',
    },
    { gives: 'measured', tex: '[[measured]] = \\frac{[[sootBefore]]-[[sootAfter]]}{[[sootBefore]]}' },
    { gives: 'timeShare', tex: '[[timeShare]] = \\frac{[[totalTime]]}{[[wantedTime]]}' },
    {
      gives: 'verdict',
      text: 'Complete: wanted time reached, a burn-off of 80 % possible at that heat, measured at least 70 %. Less measured: only part of it burnt; below 30 %, and below what the slowest rate would have burnt: doubtful. Not proven: the soot before and after is not known, or after is exactly zero, as a counter is set. Failed: less than a quarter of the time.',
      source: 'qualityPractice',
    },
  ],
  assumptions: [
    {
      code: 'gas_is_filter',
      text: 'The filter is taken as hot as the temperature of the log; at the start it lags behind by a minute or two.',
    },
  ],
  limits: [
    {
      code: 'rate_spread',
      text: 'Rates measured on filters differ by a factor of twenty from the slowest uncoated to the fastest coated: the expected burn-off sorts, it does not measure.',
    },
    { code: 'counter', text: 'A soot counter that falls to zero proves nothing; the pressure drop at known flow does.' },
  ],
  cautions: [cautions.sensorFirst, cautions.makerFirst],
  sources: { qualityPractice, bai2016, bissettShadman1985, uncoatedDisk2008, siBrochure },
  compute(input, { constants, warn }) {
    const { threshold, sootBefore, sootAfter } = input;
    const log = checkedLog(input.log, warn);
    if (isRefusal(log)) return log;
    const laws: SootKinetics[] = [];
    for (const kinetics of input.kinetics === 'not-known' ? bothKinds : [input.kinetics]) {
      const law = chosenKinetics({ ...input, kinetics }, constants);
      if (isRefusal(law)) return law;
      laws.push(law);
    }
    const exponents = laws.map((law) => burnExponent(log, law, input.oxygen, constants.gasConstant));
    const leastExpected = -Math.expm1(-Math.min(...exponents) / kineticsSpread);
    const mostExpected = -Math.expm1(-Math.max(...exponents) * kineticsSpread);
    const { total, longest, interruptions } = timeAbove(log, threshold);
    const measured = sootBefore === undefined || sootAfter === undefined ? undefined : 1 - sootAfter / sootBefore;
    const timeShare = total / input.wantedTime;
    const hotEnough = timeShare >= 1 && mostExpected >= 0.8;
    if (sootAfter === 0)
      warn('soot_zero', 'Soot after is exactly zero: a counter is set to that. It proves nothing; take it from the pressure drop.', [
        'sootAfter',
      ]);
    const peak = log.reduce((most, entry) => Math.max(most, entry.temperature), -Infinity);
    if (peak > tooHot) warn('too_hot', 'It got hotter than 800 °C: look for melted or cracked places before the filter is used again.');
    const proof =
      measured === undefined || sootAfter === 0
        ? 'unproven'
        : measured >= 0.7
          ? 'complete'
          : measured < 0.3 && measured < leastExpected
            ? 'doubtful'
            : 'incomplete';
    if (timeShare < 0.25 && measured !== undefined && measured > 0.3)
      warn('fell_without_heat', 'The soot fell although it was hardly ever hot: a counter was set, or one of the signals is wrong.');
    return {
      peak,
      totalTime: total,
      longestTime: longest,
      leastExpected,
      mostExpected,
      measured,
      timeShare,
      interruptions,
      verdict: timeShare < 0.25 ? 'failed' : !hotEnough ? 'partial' : proof,
    };
  },
  advise({ verdict, interruptions }) {
    if (verdict === 'unproven')
      return [{ tone: 'do', text: 'Prove the burn: compare the pressure drop at the same flow and temperature before and after.' }];
    if (verdict === 'complete') return [];
    if (verdict === 'incomplete')
      return [
        {
          tone: 'do',
          text: 'Measure the soot again at known flow. What is left needs more time hot: go on, with the conditions checked anew, or 20 min of steady hot driving.',
        },
        { tone: 'do-not', text: 'Do not set the soot counter back, and do not count it as complete.' },
      ];
    if (verdict === 'doubtful') return [{ tone: 'do-not', text: 'Do not repeat it yet: check the pressure signal, then look for ash.' }];
    return [
      {
        tone: 'do',
        text:
          interruptions > 0
            ? 'Find out what broke it off before trying again.'
            : 'Find out why it did not get or stay hot: catalyst, injection, leaks, air mass.',
      },
      { tone: 'do-not', text: 'Do not try a third time: two incomplete attempts mean that the diagnosis is wrong.' },
    ];
  },
});
