import {
  choiceOutput,
  count,
  countOutput,
  defineCalculation,
  inconsistentInputs,
  list,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  tableOutput,
} from '@wallflow/calculation';
import { differentialPressure, fraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { opennessPractice } from '../../filter/flow-bench-drop/sources.js';
import { acceptancePractice, exponentialDecay, fillPractice, treatmentPractice } from '../sources.js';
import { fitPasses, gainBetween, type PassFit } from './fit.js';
import { passVerdict } from './verdict.js';

const dropUnits = ['mbar', 'kPa', 'hPa', 'psi'] as const;
const dropOutput = (symbol: string, label: string) =>
  quantityOutput(differentialPressure, { symbol, label, digits: 3, units: [...dropUnits] });
const drop = (symbol: string, label: string, example: string, description?: string) =>
  quantity(differentialPressure, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    above: '0 mbar',
    max: '1500 mbar',
    example,
    units: [...dropUnits],
  });
const ofClean = (symbol: string, label: string, value: string, min: string, max: string, why: string) =>
  quantityWithDefault(fraction, {
    symbol,
    label,
    description: 'Of the drop that counts as clean.',
    min,
    max,
    example: value,
    default: value,
    defaultReason: `common practice, no source: ${why}`,
  });
const gain = (symbol: string, label: string) => quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

/** More passes than anybody makes: a curve that still gains there says nothing of it. */
const farthestPass = 30;

const curveAt = (fit: PassFit, pass: number) => {
  const { drop: curve, uncertainty } = fit.at(pass);
  return { curve, uncertainty };
};

export const cleaningPassPlanCalculation = defineCalculation({
  id: 'cleaning-pass-plan',
  version: '2.0.0',
  subject: 'cleaning',
  title: 'Is another cleaning pass worth it?',
  purpose: 'Where will the drop end up, is another pass worth it, or must the filter come off?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['passes', 'stop rule', 'plateau', 'diminishing return', 'ash'],
  method: 'rule of the last gain; too few readings for a fit',
  inputs: z.strictObject({
    readings: list(
      z.strictObject({
        pass: count({ symbol: 'n', label: 'Passes done before this reading', min: 0, max: 30, example: 1 }),
        drop: drop('\\Delta p', 'Pressure drop', '46 mbar'),
      }),
      {
        label: 'Drop before the first and after each pass',
        description: 'All at the same engine speed and temperature, with the filter dry, less the reading with the engine off.',
        min: 2,
        max: 20,
        example: [
          { pass: 0, drop: '95 mbar' },
          { pass: 1, drop: '46 mbar' },
          { pass: 2, drop: '25 mbar' },
          { pass: 3, drop: '17 mbar' },
        ],
      },
    ),
    cleanDrop: drop(
      '\\Delta p_c',
      'Drop that counts as clean at that flow',
      '11.2 mbar',
      'Of the same filter when new, of the calculation for a clean filter, or of the maker. Unknown: leave it out.',
    ).optional(),
    dropUncertainty: quantityWithDefault(differentialPressure, {
      symbol: 'u',
      label: 'Standard uncertainty of each drop',
      min: '0.1 mbar',
      max: '100 mbar',
      example: '1 mbar',
      units: [...dropUnits],
      default: '3 mbar',
      defaultReason: 'zero and speed held as well as a workshop can, common practice, no source',
    }),
    leastGain: quantityWithDefault(fraction, {
      symbol: 'g',
      label: 'Least gain that makes a pass worth it',
      min: '1 %',
      max: '50 %',
      example: '10 %',
      default: '10 %',
      defaultReason: 'common practice, no source',
    }),
    acceptedRatio: ofClean('r_a', 'Clean up to', '115 %', '100 %', '200 %', '110 to 115 %, as on a flow bench'),
    takeOffRatio: ofClean('r_o', 'Take it off above', '150 %', '100 %', '500 %', 'about 1.5 times clean'),
    lowestRatio: ofClean('r_l', 'Not believed below', '85 %', '0 %', '100 %', 'the limit for clean mirrored'),
  }),
  example: { cleanDrop: '11.2 mbar' },
  intermediates: {
    lastGain: gain('g_l', 'Gain of the last pass'),
    nowDrop: dropOutput('p_n', 'Drop after the last pass, by all readings'),
    nowUncertainty: dropOutput('u(p_n)', 'Standard uncertainty of it'),
    nextGainUncertainty: gain('u(g)', 'Standard uncertainty of the gain to expect'),
    decayPasses: optional(quantityOutput(ratio, { symbol: '\\tau', label: 'Passes to come closer by the factor e', digits: 3 })),
    fitted: optional(
      tableOutput({
        label: 'Readings and curve',
        columns: {
          pass: countOutput({ symbol: 'n', label: 'Pass' }),
          drop: optional(dropOutput('\\Delta p', 'Reading')),
          curve: dropOutput('p(n)', 'Curve'),
          uncertainty: dropOutput('u(p)', 'Standard uncertainty of the curve'),
        },
      }),
    ),
  },
  outputs: {
    plateau: optional(dropOutput('p_\\infty', 'Drop that more passes lead to')),
    plateauUncertainty: optional(dropOutput('u(p_\\infty)', 'Standard uncertainty of it')),
    nextDrop: optional(dropOutput('p_{n+1}', 'Drop to expect after the next pass')),
    nextGain: gain('g_{n+1}', 'Gain to expect from the next pass'),
    passesWorth: optional(
      countOutput({
        symbol: 'k',
        label: 'Further passes until the gain is too small',
        description: 'Left out where the curve falls too slowly to tell.',
      }),
    ),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        clean: 'clean: the drop is within what a clean filter may read',
        'another-pass': 'another pass is worth it',
        stop: 'stop: more passes change little; what a clean filter reads is not known',
        between: 'stop: more passes change little, and the drop is not surely clean nor surely too high; judge it by flow',
        'take-off': 'take the filter off: the drop stays too far above clean, ash is likely',
        rising: 'higher than after an earlier pass: still wet, another flow, or loosened soot; dry it and measure again',
        worse: 'worse than before: stop, and find out why',
        'too-open': 'not believed: lower than a clean filter can read; a hose, the zero, the flow, or a leak past it',
        unclear: 'cannot be told: the change is as small as the error of the readings',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'lastGain', text: 'Share by which the last pass lowered the drop: [[lastGain]].', source: 'fillPractice' },
    {
      gives: 'decayPasses',
      text: 'Least squares of level plus amplitude times exp(−n/τ) to all readings: [[decayPasses]].',
      source: 'exponentialDecay',
    },
    { gives: 'nowDrop', text: 'The curve at the last pass, or without one the last reading: [[nowDrop]].', source: 'exponentialDecay' },
    { gives: 'nowUncertainty', text: 'From the fit, or that of a reading: [[nowUncertainty]].', source: 'exponentialDecay' },
    { gives: 'plateau', text: 'Level of the curve: [[plateau]].', source: 'exponentialDecay' },
    { gives: 'plateauUncertainty', text: 'From the covariance of the fit: [[plateauUncertainty]].', source: 'exponentialDecay' },
    { gives: 'nextDrop', text: 'The curve one pass on: [[nextDrop]].', source: 'exponentialDecay' },
    { gives: 'nextGain', text: 'By the curve, or without one as the last pass: [[nextGain]].', source: 'fillPractice' },
    {
      gives: 'nextGainUncertainty',
      text: 'From the fit, or from both readings: [[nextGainUncertainty]].',
      source: 'exponentialDecay',
    },
    {
      gives: 'passesWorth',
      text: 'As long as a pass of the curve still gains enough ([[leastGain]]): [[passesWorth]].',
      source: 'fillPractice',
    },
    {
      gives: 'verdict',
      text: 'A rise first; then the drop against [[acceptedRatio]] of clean and the plateau against [[takeOffRatio]]; then the gain of the next pass. Each with twice its uncertainty.',
      source: 'treatmentPractice',
    },
  ],
  assumptions: [
    {
      code: 'same_share_each_pass',
      text: 'Each pass takes the same share of what it can take. Soot does so roughly; ash hardly moves and stays in the plateau.',
    },
    { code: 'equal_conditions', text: 'All readings are at the same flow and temperature, with a dry filter.' },
  ],
  limits: [
    { code: 'wet_readings', text: 'A wet filter reads high and dries between readings: such readings show drying, not cleaning.' },
    {
      code: 'few_points',
      text: 'Three readings fix the curve without a check, more must lie on it within three times their error; trust the plateau only as far as its uncertainty.',
    },
  ],
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.pressureAndSteam, cautions.waste, cautions.sensorFirst, cautions.makerFirst],
  sources: { exponentialDecay, fillPractice, treatmentPractice, acceptancePractice, opennessPractice },
  precision: 1e-7,
  compute(input, { method, warn }) {
    const readings = [...input.readings].sort((a, b) => a.pass - b.pass);
    const repeated = readings.findIndex((reading, index) => index > 0 && reading.pass === readings[index - 1]?.pass);
    if (repeated > 0) return inconsistentInputs('two readings stand for the same pass; keep the better one', ['readings']);
    const [first, beforeLast, last] = [readings[0], readings.at(-2), readings.at(-1)];
    if (first === undefined || beforeLast === undefined || last === undefined) {
      return inconsistentInputs('a reading before and one after a pass are needed', ['readings']);
    }
    if (input.takeOffRatio < input.acceptedRatio) {
      return inconsistentInputs('a filter that counts as clean cannot be one to take off', ['takeOffRatio'], ['acceptedRatio']);
    }
    const fit = fitPasses(readings, input.dropUncertainty);
    if (fit !== undefined) method('exponential fit of the drop after each pass');
    else if (readings.length > 2) {
      method('rule of the last gain; the readings do not bend towards a plateau');
      warn('no_plateau', 'The readings do not follow a falling curve with a plateau, so only the last gain is judged.', ['readings']);
    }
    const lastGain = gainBetween(beforeLast, last, input.dropUncertainty);
    const nextGain = fit?.gainAfter(last.pass) ?? lastGain;
    let passesWorth = fit === undefined ? undefined : 0;
    while (fit !== undefined && passesWorth !== undefined && fit.gainAfter(last.pass + passesWorth).share >= input.leastGain) {
      passesWorth += 1;
      if (passesWorth < farthestPass) continue;
      passesWorth = undefined;
      warn('passes_unknown', `After ${farthestPass} more passes the curve would still fall: so far the readings say nothing of it.`);
    }
    const now = fit?.at(last.pass) ?? { drop: last.drop, uncertainty: input.dropUncertainty };
    const { cleanDrop } = input;
    return {
      lastGain: lastGain.share,
      decayPasses: fit?.decayPasses,
      fitted: fit && readings.map(({ pass, drop: reading }) => ({ pass, drop: reading, ...curveAt(fit, pass) })),
      nowDrop: now.drop,
      nowUncertainty: now.uncertainty,
      plateau: fit?.plateau,
      plateauUncertainty: fit?.plateauUncertainty,
      nextDrop: fit?.at(last.pass + 1).drop,
      nextGain: nextGain.share,
      nextGainUncertainty: nextGain.uncertainty,
      passesWorth,
      verdict: passVerdict({
        firstDrop: first.drop,
        lowestBefore: Math.min(...readings.slice(0, -1).map(({ drop: reading }) => reading)),
        lastDrop: last.drop,
        uncertainty: input.dropUncertainty,
        now,
        limits:
          cleanDrop === undefined
            ? undefined
            : {
                clean: cleanDrop,
                accepted: cleanDrop * input.acceptedRatio,
                takeOff: cleanDrop * input.takeOffRatio,
                lowest: cleanDrop * input.lowestRatio,
              },
        plateau: fit && { drop: fit.plateau, uncertainty: fit.plateauUncertainty },
        nextGain,
        leastGain: input.leastGain,
      }),
    };
  },
  advise({ verdict }) {
    if (verdict === 'another-pass')
      return [{ tone: 'do', text: 'Drain, let it soak as the label says, and do one more pass; then read again dry.' }];
    if (verdict === 'take-off')
      return [
        { tone: 'do', text: 'Take the filter off and weigh it: ash wants blowing out, washing backwards or baking, not more liquid.' },
        { tone: 'do-not', text: 'Do not reset the ash value: the ash is still there.' },
      ];
    if (verdict === 'rising')
      return [
        { tone: 'do', text: 'Drain and dry it, check that speed and temperature are those of the other readings, and measure again.' },
        { tone: 'do-not', text: 'Do not pour in more, and do not judge the clean, on this reading.' },
      ];
    if (verdict === 'too-open')
      return [{ tone: 'do', text: 'Check hoses, sensor zero and engine speed; then look at the outlet face for soot and cracks.' }];
    if (verdict === 'between')
      return [
        {
          tone: 'do',
          text: 'Rinse and dry it, then compare the drop over flow with a clean filter over several speeds, or on a flow bench.',
        },
      ];
    if (verdict === 'worse')
      return [{ tone: 'do', text: 'Stop. Dry the filter, check hoses and sensor zero, and look at both faces before anything else.' }];
    if (verdict === 'unclear')
      return [
        {
          tone: 'do',
          text: 'Read again at a higher engine speed, or several times, and give the smaller error: the change has to show against it.',
        },
      ];
    return [{ tone: 'do', text: 'Rinse, dry with the engine at 2000 to 2500 rpm, and verify before and after at comparable flow.' }];
  },
});
