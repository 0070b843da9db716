import * as wf from '@wallflow/calculation';
import { fraction, mass, moleFraction, ratio, reactionRate, temperature, time } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { chosenKinetics, kineticsConstants, kineticsInputs, kineticsOptions } from '../../soot/oxidation/inputs.js';
import { type SootKinetics, sootOxidationRate } from '../../soot/oxidation/kernel.js';
import { kineticsSpread } from '../../soot/oxidation/kernel-sets.js';
import { bai2016, bissettShadman1985, uncoatedDisk2008 } from '../../soot/sources.js';
import { siBrochure } from '../../sources.js';
import { checkedLog } from '../checked-log.js';
import { oxygenRateAt } from '../oxygen-rate.js';
import { qualityPractice } from '../sources.js';
import { burnExponent, intervalsOf, timeAboveTemperature } from './kernel.js';

const line = {
  time: wf.quantity(time, { symbol: 't', label: 'Time', range: '0 s <= x <= 24 h', example: '0 min', units: ['min', 's'] }),
  temperature: wf.quantity(temperature, {
    symbol: 'T',
    label: 'Temperature before or in the filter',
    range: '-60 <= x <= 1500 °C',
    example: '600 °C',
    units: ['degC', 'K', 'degF'],
  }),
};

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

/** A longer log is not shown line by line. */
const mostShown = 100;
const longLog = (gives: string) =>
  wf.statement(gives, 'The log is too long to show line by line: worked out from each of its lines in the same way.');
const integral = 'The rate at the temperature of each moment, summed over the log by Simpson’s rule.';
const rate = (symbol: string, label: string) => wf.quantityOutput(reactionRate, { symbol, label, digits: 3, units: ['1/min', '1/s'] });

/** Hotter than a normal regeneration, K. */
const tooHot = 1073.15;

export const regenerationQualityCalculation = wf.defineCalculation({
  id: 'regeneration-quality',
  subject: 'regeneration',
  title: 'Quality of a finished regeneration',
  purpose: 'Was it hot for long enough, without interruption, and did it burn the soot?',
  keywords: 'completeness, time above temperature, interrupted, log, DPF, regen, burn-off',
  method: 'time above temperature, expected burn-off by the rate law, measured loss of soot',
  inputs: {
    log: wf.list(line, { label: 'Log', description: 'Lines in order of time.', min: 2, max: 5_000, example }),
    threshold: wf.quantity(temperature, {
      symbol: 'T_{min}',
      label: 'Temperature that counts as hot',
      range: '300 <= x <= 800 °C',
      default: ['550 °C', 'soot burns with oxygen from about 550 °C'],
      units: ['degC', 'K', 'degF'],
    }),
    wantedTime: wf.quantity(time, {
      symbol: 't_{min}',
      label: 'Time wanted above that temperature',
      range: '0 s < x <= 2 h',
      default: ['10 min', 'the short end of 10 to 20 min; common practice, no source'],
      units: ['min', 's'],
    }),
    oxygen: wf.quantity(moleFraction, {
      symbol: 'x_{O_2}',
      label: 'Oxygen before the filter',
      range: '0 <= x <= 21 %',
      default: ['8 %', 'with injected fuel and the engine at raised idle'],
      units: ['%', '1'],
    }),
    ...wf.together(
      {
        sootBefore: wf.quantity(mass, { symbol: 'm_1', label: 'Soot before', range: '0 g < x <= 5 kg', example: '20 g', units: ['g'] }),
        sootAfter: wf.quantity(mass, {
          symbol: 'm_2',
          label: 'Soot after',
          description: 'From the pressure drop, not from the soot counter: a control unit may simply set that to zero.',
          range: '0 g <= x <= 5 kg',
          example: '3 g',
          units: ['g'],
        }),
      },
      { otherwise: { code: 'soot_one_sided', text: 'Only one of the two soot masses was entered: the burn is not proven.' } },
    ),
    ...kineticsInputs,
    kinetics: wf.choice({
      label: 'Kind of filter (sets how fast soot burns)',
      options: { 'not-known': 'not known: both coated and uncoated are counted', ...kineticsOptions },
      default: ['not-known', 'a coating cannot be seen; soot burns several times faster in a coated filter'],
    }),
  },
  example: { sootBefore: '20 g', sootAfter: '3 g' },
  intermediates: {
    intervals: wf.optional(
      wf.tableOutput({
        label: 'Log, line by line',
        columns: {
          lineTime: wf.quantityOutput(time, { symbol: 't', label: 'Time of the line', digits: 5, units: ['min', 's'] }),
          lineTemperature: wf.quantityOutput(temperature, { symbol: 'T', label: 'Temperature of the line', digits: 4, units: ['degC'] }),
          above: wf.optional(
            wf.quantityOutput(time, { symbol: '\\Delta t', label: 'Hot since the line before', digits: 4, units: ['min', 's'] }),
          ),
          soFar: wf.optional(wf.quantityOutput(time, { symbol: 't_\\Sigma', label: 'Hot until here', digits: 4, units: ['min', 's'] })),
          unbroken: wf.optional(wf.quantityOutput(time, { symbol: 't_u', label: 'Hot without a break', digits: 4, units: ['min', 's'] })),
          cameBack: wf.optional(wf.countOutput({ symbol: 'n', label: 'Hot again after a break' })),
        },
      }),
    ),
    timeAboveLimit: wf.quantityOutput(time, {
      symbol: 't_\\Sigma',
      label: 'Time above the temperature that counts',
      digits: 4,
      units: ['min', 's'],
    }),
    longestTime: wf.quantityOutput(time, { symbol: 't_1', label: 'Longest time without a break', digits: 4, units: ['min', 's'] }),
    peak: wf.quantityOutput(temperature, { symbol: 'T_{max}', label: 'Highest temperature', digits: 4, units: ['degC'] }),
    lawRate: rate('k_1', 'Rate of burning at the temperature that counts'),
    uncoatedRate: wf.optional(rate('k_2', 'The same in an uncoated filter')),
    leastExponent: wf.quantityOutput(ratio, { symbol: 'x_1', label: 'Rate times time over the log, slowest law', digits: 3, units: ['1'] }),
    mostExponent: wf.quantityOutput(ratio, { symbol: 'x_2', label: 'Rate times time over the log, fastest law', digits: 3, units: ['1'] }),
  },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        complete: 'complete: hot for long enough, and the soot is gone',
        incomplete: 'incomplete: hot for long enough, but only some of the soot burnt',
        unproven: 'not proven: hot for long enough, but the soot before and after is not known',
        partial: 'incomplete: too short or not hot enough',
        failed: 'failed: hardly ever hot',
        doubtful: 'doubtful: hot enough, but hardly any soot burnt; look for ash or a wrong signal',
      },
    }),
    leastExpected: wf.quantityOutput(fraction, {
      symbol: 'X_1',
      label: 'Burn-off expected from the temperatures, minimum',
      digits: 2,
      units: ['%'],
    }),
    mostExpected: wf.quantityOutput(fraction, {
      symbol: 'X_2',
      label: 'Burn-off expected from the temperatures, maximum',
      digits: 2,
      units: ['%'],
    }),
    measuredBurnOff: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'X_m', label: 'Burn-off from the soot before and after', digits: 3, units: ['%'] }),
    ),
    timeShare: wf.quantityOutput(fraction, {
      symbol: 'f_t',
      label: 'Time above the temperature as a share of the time wanted',
      digits: 3,
      units: ['%'],
    }),
    interruptions: wf.countOutput({ symbol: 'n_i', label: 'Interruptions' }),
  },
  constants: kineticsConstants,
  answer: 'verdict',
  steps: [
    wf.formula('peak', 'max(log.temperature)'),
    wf.rows(
      'intervals',
      {
        lineTime: 'log.time',
        lineTemperature: 'log.temperature',
        above: {
          'row > 1 and max(previous.lineTemperature, lineTemperature) <= threshold': '0',
          'row > 1 and min(previous.lineTemperature, lineTemperature) >= threshold': 'lineTime - previous.lineTime',
          'row > 1':
            '(lineTime - previous.lineTime) * (max(previous.lineTemperature, lineTemperature) - threshold) / abs(lineTemperature - previous.lineTemperature)',
        },
        soFar: { 'row == 2': 'above', 'row > 2': 'previous.soFar + above' },
        unbroken: { 'row > 2 and previous.lineTemperature > threshold': 'previous.unbroken + above', 'row > 1': 'above' },
        cameBack: { 'previous.lineTemperature <= threshold and lineTemperature > threshold and previous.soFar > 0': '1' },
      },
      qualityPractice,
      undefined,
      'The temperature runs straight from line to line.',
    ),
    wf.cases('timeAboveLimit', { 'known(intervals)': 'last(intervals.soFar)', otherwise: longLog('timeAboveLimit') }),
    wf.cases('longestTime', { 'known(intervals)': 'max(intervals.unbroken)', otherwise: longLog('longestTime') }),
    wf.cases('interruptions', { 'known(intervals)': 'count(intervals.cameBack)', otherwise: longLog('interruptions') }),
    wf.formula('timeShare', 'timeAboveLimit / wantedTime'),
    wf.cases('lawRate', {
      "kinetics == 'not-known'": oxygenRateAt('lawRate', 'threshold', 'oxygen', 'bai-2016'),
      otherwise: oxygenRateAt('lawRate', 'threshold', 'oxygen'),
    }),
    wf.cases('uncoatedRate', { "kinetics == 'not-known'": oxygenRateAt('uncoatedRate', 'threshold', 'oxygen', 'uncoated-2008') }),
    wf.fromTable('leastExponent', ['uncoatedRate'], uncoatedDisk2008, undefined, integral),
    wf.fromTable('mostExponent', ['lawRate'], bai2016, undefined, integral),
    wf.formula(
      'leastExpected',
      '1 - exp(-leastExponent / 2)',
      uncoatedDisk2008,
      undefined,
      'A filter may burn at half the rate of the law of its kind.',
    ),
    wf.formula(
      'mostExpected',
      '1 - exp(-2 * mostExponent)',
      bai2016,
      undefined,
      'A filter may burn at twice the rate of the law of its kind.',
    ),
    wf.formula('measuredBurnOff', '(sootBefore - sootAfter) / sootBefore'),
    wf.verdict(
      'verdict',
      {
        failed: 'timeShare < 0.25',
        partial: 'timeShare < 1 or mostExpected < 0.8',
        unproven: 'not known(measuredBurnOff) or sootAfter == 0',
        complete: 'measuredBurnOff >= 0.7',
        doubtful: 'measuredBurnOff < 0.3 and measuredBurnOff < leastExpected',
        incomplete: 'otherwise',
      },
      qualityPractice,
    ),
  ],
  assumptions: {
    gas_is_filter: 'The filter is taken to be as hot as the log says; at the start it lags behind by a minute or two.',
  },
  limits: {
    rate_spread:
      'Rates measured on filters differ by a factor of twenty between the slowest uncoated and the fastest coated one: the expected burn-off is a rough guide, not a measurement.',
    counter: 'A soot counter that falls to zero proves nothing; the pressure drop at known flow does.',
  },
  cautions: [cautions.sensorFirst, cautions.makerFirst],
  sources: [bissettShadman1985, siBrochure],
  compute(input, { constants, warn }) {
    const { threshold, sootBefore, sootAfter } = input;
    const log = checkedLog(input.log, warn);
    if (wf.isRefusal(log)) return log;
    const laws: SootKinetics[] = [];
    for (const kinetics of input.kinetics === 'not-known' ? bothKinds : [input.kinetics]) {
      const law = chosenKinetics({ ...input, kinetics }, constants);
      if (wf.isRefusal(law)) return law;
      laws.push(law);
    }
    const exponents = laws.map((law) => burnExponent(log, law, input.oxygen, constants.gasConstant));
    const [leastExponent, mostExponent] = [Math.min(...exponents), Math.max(...exponents)];
    const leastExpected = -Math.expm1(-leastExponent / kineticsSpread);
    const mostExpected = -Math.expm1(-mostExponent * kineticsSpread);
    const rates = laws.map(
      (law) => sootOxidationRate(law, { temperature: threshold, oxygen: input.oxygen, nitrogenDioxide: 0 }, constants.gasConstant).oxygen,
    );
    const { total, longest, interruptions } = timeAboveTemperature(log, threshold);
    const measuredBurnOff = sootBefore === undefined || sootAfter === undefined ? undefined : 1 - sootAfter / sootBefore;
    const timeShare = total / input.wantedTime;
    const hotEnough = timeShare >= 1 && mostExpected >= 0.8;
    if (sootAfter === 0)
      warn('soot_zero', 'Soot after is exactly zero, as a counter is set. That proves nothing: work it out from the pressure drop.', [
        'sootAfter',
      ]);
    const peak = log.reduce((most, entry) => Math.max(most, entry.temperature), -Infinity);
    if (peak > tooHot) warn('too_hot', 'It got hotter than 800 °C: look for melted or cracked places before the filter is used again.');
    const proof =
      measuredBurnOff === undefined || sootAfter === 0
        ? 'unproven'
        : measuredBurnOff >= 0.7
          ? 'complete'
          : measuredBurnOff < 0.3 && measuredBurnOff < leastExpected
            ? 'doubtful'
            : 'incomplete';
    if (timeShare < 0.25 && measuredBurnOff !== undefined && measuredBurnOff > 0.3)
      warn('fell_without_heat', 'The soot fell although it was hardly ever hot: a counter was set, or one of the signals is wrong.');
    return {
      peak,
      intervals: log.length <= mostShown ? intervalsOf(log, threshold) : undefined,
      timeAboveLimit: total,
      longestTime: longest,
      leastExponent,
      mostExponent,
      lawRate: rates[0] ?? 0,
      uncoatedRate: rates[1],
      leastExpected,
      mostExpected,
      measuredBurnOff,
      timeShare,
      interruptions,
      verdict: timeShare < 0.25 ? 'failed' : !hotEnough ? 'partial' : proof,
    };
  },
  advise({ verdict, interruptions }) {
    if (verdict === 'unproven')
      return [{ tone: 'do', text: 'Prove the burn: compare the pressure drop before and after at the same flow and temperature.' }];
    if (verdict === 'complete') return [];
    if (verdict === 'incomplete')
      return [
        {
          tone: 'do',
          text: 'Measure the soot again at known flow. What is left needs more time hot: check all conditions again and go on, or drive hot and steadily for 20 min.',
        },
        { tone: 'do-not', text: 'Do not reset the soot counter, and do not call it complete.' },
      ];
    if (verdict === 'doubtful') return [{ tone: 'do-not', text: 'Do not repeat it yet: check the pressure signal, then look for ash.' }];
    return [
      {
        tone: 'do',
        text:
          interruptions > 0
            ? 'Find out what interrupted it before trying again.'
            : 'Find out why it did not get or stay hot: catalyst, injection, leaks, air mass.',
      },
      { tone: 'do-not', text: 'Do not try a third time: two incomplete attempts mean that the diagnosis is wrong.' },
    ];
  },
});
