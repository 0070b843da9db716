import * as wf from '@wallflow/calculation';
import { differentialPressure, fraction, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { opennessPractice } from '../../filter/flow-bench-drop/sources.js';
import { acceptancePractice, exponentialDecay, fillPractice, treatmentPractice } from '../sources.js';
import { fitPasses, gainBetween, type PassFit } from './fit.js';
import { fitTerms, noTerms } from './fit-terms.js';
import { passVerdict } from './verdict.js';

const dropUnits = ['mbar', 'kPa', 'hPa', 'psi'] as const;
const dropOutput = (symbol: string, label: string) =>
  wf.quantityOutput(differentialPressure, { symbol, label, digits: 3, units: [...dropUnits] });
const drop = (symbol: string, label: string, example: string, description?: string) =>
  wf.quantity(differentialPressure, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    range: '0 < x <= 1500 mbar',
    example,
    units: [...dropUnits],
  });
const ofClean = (symbol: string, label: string, value: string, min: string, max: string, why: string) =>
  wf.quantity(fraction, {
    symbol,
    label,
    description: 'Of the pressure drop that counts as clean.',
    range: `${min} <= x <= ${max}`,
    default: [value, `common practice, no source: ${why}`],
  });
const number = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 4 });
const gain = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

/** More passes than anybody makes: a curve that still gains there says nothing of it. */
const farthestPass = 30;

/** How exactly the sums of the fit balance where its search ends. */
const fitted = { within: 1e-5 };

const curveAt = (fit: PassFit, pass: number) => {
  const { drop: curve, uncertainty } = fit.at(pass);
  return { curve, uncertainty };
};

export const cleaningPassPlanCalculation = wf.defineCalculation({
  id: 'cleaning-pass-plan',
  subject: 'cleaning',
  title: 'Is another cleaning pass worth it?',
  purpose: 'Is another pass worth it, where will the pressure drop end up, or must the filter come off?',
  keywords: 'passes, stop rule, plateau, diminishing return, ash, backpressure, back pressure, delta p, restriction',
  method: 'rule of the last gain, as there are too few readings for a fit',
  inputs: {
    readings: wf.list(
      {
        pass: wf.count({ symbol: 'n', label: 'Passes done before this reading', min: 0, max: 30, example: 1 }),
        drop: drop('\\Delta p', 'Pressure drop', '46 mbar'),
      },
      {
        label: 'Pressure drop before the first pass and after each pass',
        description: 'All at the same engine speed and temperature, with the filter dry, minus the reading with the engine off.',
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
    cleanDrop: wf.optional(
      drop(
        '\\Delta p_c',
        'Pressure drop of the clean filter at that flow',
        '11.2 mbar',
        'Of the same filter when new, from the calculation for a clean filter, or from the maker. Leave blank if unknown.',
      ),
    ),
    dropUncertainty: wf.quantity(differentialPressure, {
      symbol: 'u',
      label: 'Standard uncertainty of each pressure drop',
      range: '0.1 <= x <= 100 mbar',
      example: '1 mbar',
      units: [...dropUnits],
      default: ['3 mbar', 'common practice, no source: zero and engine speed kept as well as a workshop can'],
    }),
    leastGain: wf.quantity(fraction, {
      symbol: 'g',
      label: 'Smallest gain that makes a pass worth it',
      range: '1 <= x <= 50 %',
      default: ['10 %', 'common practice, no source'],
    }),
    acceptedRatio: ofClean('r_a', 'Clean up to', '115 %', '100 %', '200 %', '110 to 115 %, as on a flow bench'),
    takeOffRatio: ofClean('r_o', 'Take it off above', '150 %', '100 %', '500 %', 'about 1.5 times clean'),
    lowestRatio: ofClean('r_l', 'Not believed below', '85 %', '0 %', '100 %', 'the limit for clean mirrored'),
  },
  example: { cleanDrop: '11.2 mbar' },
  intermediates: {
    passesDone: wf.countOutput({ symbol: 'n_1', label: 'Passes done' }),
    passBefore: wf.countOutput({ symbol: 'n_0', label: 'Passes done at the reading before the last' }),
    firstDrop: dropOutput('p_a', 'First reading'),
    previousDrop: dropOutput('p_0', 'Reading before the last'),
    lastDrop: dropOutput('p_1', 'Last reading'),
    lowestBefore: dropOutput('p_m', 'Lowest reading before the last'),
    noise: dropOutput('2 u_d', 'Twice the uncertainty of a difference of two readings'),
    leftPerPass: gain('q', 'Share of the pressure drop that the last pass left'),
    lastGain: gain('g_l', 'Gain of the last pass'),
    lastGainUncertainty: gain('u(g_l)', 'Standard uncertainty of the gain of the last pass'),
    amplitude: wf.optional(dropOutput('a', 'Pressure drop that passes can take away')),
    fitTerms: wf.optional(
      wf.tableOutput({
        label: 'Terms of the fit',
        columns: {
          done: wf.countOutput({ symbol: 'n', label: 'Passes done' }),
          decay: number('e', 'Part not yet taken away'),
          slope: number('s', 'Passes times that part'),
        },
      }),
    ),
    decaySum: wf.optional(number('S_e', 'Sum of the parts')),
    slopeSum: wf.optional(number('S_s', 'Sum of passes times part')),
    decaySquares: wf.optional(number('S_{ee}', 'Sum of squares of the parts')),
    mixedSquares: wf.optional(number('S_{es}', 'Sum of products')),
    slopeSquares: wf.optional(number('S_{ss}', 'Sum of squares of passes times part')),
    determinant: wf.optional(number('D', 'Determinant of the fit')),
    levelVariance: wf.optional(number('c_{11}', 'Variance of the plateau, in squares of a reading')),
    decayVariance: wf.optional(number('c_{22}', 'Variance of the part, in squares of a reading')),
    slopeVariance: wf.optional(number('c_{33}', 'Variance of the slope, in squares of a reading')),
    levelDecay: wf.optional(number('c_{12}', 'Covariance of plateau and part')),
    levelSlope: wf.optional(number('c_{13}', 'Covariance of plateau and slope')),
    decaySlope: wf.optional(number('c_{23}', 'Covariance of part and slope')),
    decayNow: wf.optional(number('e_1', 'Part not yet taken away after the last pass')),
    decayNext: wf.optional(number('e_2', 'Part not yet taken away after the next pass')),
    leftByNext: wf.optional(number('q_2', 'Share of the pressure drop that the next pass leaves')),
    decayWeight: wf.optional(number('h_e', 'Weight of the part in that share')),
    slopeWeight: wf.optional(number('h_s', 'Weight of the slope in that share')),
    nowDrop: dropOutput('p_n', 'Pressure drop after the last pass, by all readings'),
    nowUncertainty: dropOutput('u(p_n)', 'Standard uncertainty of the pressure drop after the last pass'),
    nextGainUncertainty: gain('u(g)', 'Standard uncertainty of the expected gain'),
    decayPasses: wf.optional(
      wf.quantityOutput(ratio, { symbol: '\\tau', label: 'Passes that bring it closer by the factor e', digits: 3 }),
    ),
    fitted: wf.optional(
      wf.tableOutput({
        label: 'Readings and curve',
        columns: {
          pass: wf.countOutput({ symbol: 'n', label: 'Pass' }),
          drop: wf.optional(dropOutput('\\Delta p', 'Reading')),
          curve: dropOutput('p(n)', 'Curve'),
          uncertainty: dropOutput('u(p)', 'Standard uncertainty of the curve'),
        },
      }),
    ),
  },
  outputs: {
    plateau: wf.optional(dropOutput('p_\\infty', 'Pressure drop that more passes lead to')),
    plateauUncertainty: wf.optional(dropOutput('u(p_\\infty)', 'Standard uncertainty of the plateau')),
    nextDrop: wf.optional(dropOutput('p_{n+1}', 'Expected pressure drop after the next pass')),
    nextGain: gain('g_{n+1}', 'Expected gain from the next pass'),
    passesWorth: wf.optional(
      wf.countOutput({
        symbol: 'k',
        label: 'Further passes until the gain is too small',
        description: 'Missing where the curve falls too slowly to say.',
      }),
    ),
    verdict: wf.choiceOutput({
      label: 'Is another pass worth it?',
      options: {
        clean: 'no, it is clean: the pressure drop is within the limits of a clean filter',
        'another-pass': 'yes, another pass is worth it',
        stop: 'no: more passes change little. What a clean filter reads is not known',
        between: 'no: more passes change little, and the pressure drop is neither surely clean nor surely too high. Judge it by flow',
        'take-off': 'no, take the filter off: the pressure drop stays too far above clean. Ash is likely',
        rising:
          'not clear: higher than after an earlier pass. It may be wet, at another flow, or full of loosened soot: dry it and measure again',
        worse: 'no: worse than before the first pass. Stop, and find out why',
        'too-open': 'not believed: lower than a clean filter can read. Check hoses, zero and flow, and look for a leak past the filter',
        unclear: 'not clear: the change is as small as the uncertainty of the readings',
      },
    }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('passesDone', 'max(readings.pass)'),
    wf.formula('passBefore', 'max(where(readings.pass, readings.pass < passesDone))'),
    wf.formula('firstDrop', 'first(where(readings.drop, readings.pass == min(readings.pass)))'),
    wf.formula('previousDrop', 'first(where(readings.drop, readings.pass == passBefore))'),
    wf.formula('lastDrop', 'first(where(readings.drop, readings.pass == passesDone))'),
    wf.formula('lowestBefore', 'min(where(readings.drop, readings.pass < passesDone))'),
    wf.formula('noise', '2 * sqrt(2) * dropUncertainty', exponentialDecay),
    wf.formula('leftPerPass', '(lastDrop / previousDrop) ^ (1 / (passesDone - passBefore))', fillPractice),
    wf.formula('lastGain', '1 - leftPerPass', fillPractice),
    wf.formula(
      'lastGainUncertainty',
      'leftPerPass / (passesDone - passBefore) * sqrt((dropUncertainty / previousDrop) ^ 2 + (dropUncertainty / lastDrop) ^ 2)',
      exponentialDecay,
    ),
    wf.solved(
      'decayPasses',
      'sum(fitTerms.slope * readings.drop) = sum(fitTerms.slope * (plateau + amplitude * fitTerms.decay))',
      fitted,
      exponentialDecay,
      undefined,
      'Least squares: the curve misses the readings as little as can be, and three sums balance.',
    ),
    wf.solved('plateau', 'sum(readings.drop) = sum(plateau + amplitude * fitTerms.decay)', fitted, exponentialDecay),
    wf.solved(
      'amplitude',
      'sum(fitTerms.decay * readings.drop) = sum(fitTerms.decay * (plateau + amplitude * fitTerms.decay))',
      fitted,
      exponentialDecay,
    ),
    wf.rows('fitTerms', { done: 'readings.pass', decay: 'exp(-done / decayPasses)', slope: 'done * decay' }, exponentialDecay),
    wf.formula('decaySum', 'sum(fitTerms.decay)'),
    wf.formula('slopeSum', 'sum(fitTerms.slope)'),
    wf.formula('decaySquares', 'sum(fitTerms.decay ^ 2)'),
    wf.formula('mixedSquares', 'sum(fitTerms.decay * fitTerms.slope)'),
    wf.formula('slopeSquares', 'sum(fitTerms.slope ^ 2)'),
    wf.formula(
      'determinant',
      'count(fitTerms) * (decaySquares * slopeSquares - mixedSquares ^ 2) - decaySum * (decaySum * slopeSquares - mixedSquares * slopeSum) + slopeSum * (decaySum * mixedSquares - decaySquares * slopeSum)',
      exponentialDecay,
    ),
    wf.formula('levelVariance', '(decaySquares * slopeSquares - mixedSquares ^ 2) / determinant', exponentialDecay),
    wf.formula('decayVariance', '(count(fitTerms) * slopeSquares - slopeSum ^ 2) / determinant', exponentialDecay),
    wf.formula('slopeVariance', '(count(fitTerms) * decaySquares - decaySum ^ 2) / determinant', exponentialDecay),
    wf.formula('levelDecay', '(slopeSum * mixedSquares - decaySum * slopeSquares) / determinant', exponentialDecay),
    wf.formula('levelSlope', '(decaySum * mixedSquares - slopeSum * decaySquares) / determinant', exponentialDecay),
    wf.formula('decaySlope', '(decaySum * slopeSum - count(fitTerms) * mixedSquares) / determinant', exponentialDecay),
    wf.formula('plateauUncertainty', 'dropUncertainty * sqrt(levelVariance)', exponentialDecay),
    wf.rows(
      'fitted',
      {
        curve: 'plateau + amplitude * exp(-pass / decayPasses)',
        uncertainty:
          'dropUncertainty * sqrt(max(0, levelVariance + exp(-pass / decayPasses) * (2 * levelDecay + 2 * pass * levelSlope + exp(-pass / decayPasses) * (decayVariance + 2 * pass * decaySlope + pass ^ 2 * slopeVariance))))',
      },
      exponentialDecay,
    ),
    wf.formula('decayNow', 'exp(-passesDone / decayPasses)', exponentialDecay),
    wf.formula('decayNext', 'exp(-(passesDone + 1) / decayPasses)', exponentialDecay),
    wf.cases('nowDrop', { 'known(plateau)': 'plateau + amplitude * decayNow', otherwise: 'lastDrop' }, exponentialDecay),
    wf.cases(
      'nowUncertainty',
      {
        'known(plateau)':
          'dropUncertainty * sqrt(max(0, levelVariance + decayNow * (2 * levelDecay + 2 * passesDone * levelSlope + decayNow * (decayVariance + 2 * passesDone * decaySlope + passesDone ^ 2 * slopeVariance))))',
        otherwise: 'dropUncertainty',
      },
      exponentialDecay,
    ),
    wf.formula('nextDrop', 'plateau + amplitude * decayNext', exponentialDecay),
    wf.formula('leftByNext', 'nextDrop / nowDrop', exponentialDecay),
    wf.cases('nextGain', { 'known(plateau)': '1 - leftByNext', otherwise: 'lastGain' }, fillPractice),
    wf.formula('decayWeight', 'decayNext - leftByNext * decayNow', exponentialDecay),
    wf.formula('slopeWeight', '(passesDone + 1) * decayNext - leftByNext * passesDone * decayNow', exponentialDecay),
    wf.cases(
      'nextGainUncertainty',
      {
        'known(plateau)':
          'dropUncertainty / nowDrop * sqrt(max(0, (1 - leftByNext) ^ 2 * levelVariance + decayWeight ^ 2 * decayVariance + slopeWeight ^ 2 * slopeVariance + 2 * (1 - leftByNext) * (decayWeight * levelDecay + slopeWeight * levelSlope) + 2 * decayWeight * slopeWeight * decaySlope))',
        otherwise: 'lastGainUncertainty',
      },
      exponentialDecay,
    ),
    wf.found(
      'passesWorth',
      [
        '1 - (plateau + amplitude * exp(-(passesDone + passesWorth + 1) / decayPasses)) / (plateau + amplitude * exp(-(passesDone + passesWorth) / decayPasses)) < leastGain',
      ],
      fillPractice,
      undefined,
      'First pass of the curve that no longer gains enough.',
    ),
    wf.verdict(
      'verdict',
      {
        worse: 'lastDrop > firstDrop + noise',
        rising: 'lastDrop > lowestBefore + noise',
        'too-open': 'known(cleanDrop) and lastDrop + 2 * dropUncertainty < cleanDrop * lowestRatio',
        clean: 'known(cleanDrop) and (lastDrop <= cleanDrop or nowDrop + 2 * nowUncertainty <= cleanDrop * acceptedRatio)',
        'take-off':
          'known(cleanDrop) and (known(plateau) and plateau - 2 * plateauUncertainty > cleanDrop * takeOffRatio or nextGain + 2 * nextGainUncertainty < leastGain and nowDrop - 2 * nowUncertainty > cleanDrop * takeOffRatio)',
        'another-pass': 'nextGain >= leastGain and firstDrop - lastDrop > noise',
        unclear: 'nextGain + 2 * nextGainUncertainty >= leastGain',
        stop: 'not known(cleanDrop)',
        between: 'otherwise',
      },
      treatmentPractice,
    ),
  ],
  assumptions: {
    same_share_each_pass:
      'Each pass takes away the same share of what it can. Soot roughly follows this; ash hardly moves and stays in the plateau.',
    equal_conditions: 'All readings are at the same flow and temperature, with a dry filter.',
  },
  limits: {
    wet_readings: 'A wet filter reads high and dries between readings: such readings show drying, not cleaning.',
    few_points:
      'Three readings fix the curve without a check; more must lie on it within three times their uncertainty. Trust the plateau only as far as its uncertainty.',
  },
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.pressureAndSteam, cautions.waste, cautions.sensorFirst, cautions.makerFirst],
  precision: 1e-7,
  sources: [acceptancePractice, opennessPractice],
  compute(input, { method, warn }) {
    const readings = [...input.readings].sort((a, b) => a.pass - b.pass);
    const repeated = readings.findIndex((reading, index) => index > 0 && reading.pass === readings[index - 1]?.pass);
    if (repeated > 0) return wf.inconsistentInputs('two readings belong to the same pass: keep the better one', ['readings']);
    const [first, beforeLast, last] = [readings[0], readings.at(-2), readings.at(-1)];
    if (first === undefined || beforeLast === undefined || last === undefined) {
      return wf.inconsistentInputs('a reading before and one after a pass are needed', ['readings']);
    }
    if (input.takeOffRatio < input.acceptedRatio) {
      return wf.inconsistentInputs('a filter that counts as clean cannot also be one to take off', ['takeOffRatio'], ['acceptedRatio']);
    }
    const fit = fitPasses(readings, input.dropUncertainty);
    if (fit !== undefined) method('exponential fit of the drop after each pass');
    else if (readings.length > 2) {
      method('rule of the last gain, as the readings do not bend towards a plateau');
      warn('no_plateau', 'The readings do not follow a falling curve with a plateau, so only the last gain is judged.', ['readings']);
    }
    const lastGain = gainBetween(beforeLast, last, input.dropUncertainty);
    const nextGain = fit?.gainAfter(last.pass) ?? lastGain;
    let passesWorth = fit === undefined ? undefined : 0;
    while (fit !== undefined && passesWorth !== undefined && fit.gainAfter(last.pass + passesWorth).share >= input.leastGain) {
      passesWorth += 1;
      if (passesWorth < farthestPass) continue;
      passesWorth = undefined;
      warn(
        'passes_unknown',
        wf.say`After ${farthestPass} more passes the curve would still fall: so the readings do not show where it ends.`,
      );
    }
    const terms = fit && fitTerms(input.readings, fit, last.pass);
    const left = (last.drop / beforeLast.drop) ** (1 / (last.pass - beforeLast.pass));
    const now = fit?.at(last.pass) ?? { drop: last.drop, uncertainty: input.dropUncertainty };
    const { cleanDrop } = input;
    const lowestBefore = Math.min(...readings.slice(0, -1).map(({ drop: reading }) => reading));
    return {
      ...(terms ?? noTerms),
      passesDone: last.pass,
      passBefore: beforeLast.pass,
      firstDrop: first.drop,
      previousDrop: beforeLast.drop,
      lastDrop: last.drop,
      lowestBefore,
      noise: 2 * Math.SQRT2 * input.dropUncertainty,
      leftPerPass: left,
      lastGain: lastGain.share,
      lastGainUncertainty: lastGain.uncertainty,
      amplitude: fit?.amplitude,
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
        lowestBefore,
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
  advise({ verdict: decision }) {
    if (decision === 'another-pass')
      return [{ tone: 'do', text: 'Drain, do one more pass with the soaking time on the label, then dry the filter and read again.' }];
    if (decision === 'take-off')
      return [
        { tone: 'do', text: 'Take the filter off and weigh it: ash needs blowing out, washing backwards or baking, not more liquid.' },
        { tone: 'do-not', text: 'Do not reset the ash value: the ash is still there.' },
      ];
    if (decision === 'rising')
      return [
        { tone: 'do', text: 'Drain and dry it, check that speed and temperature are those of the other readings, and measure again.' },
        { tone: 'do-not', text: 'Do not pour in more, and do not judge the clean, by this reading.' },
      ];
    if (decision === 'too-open')
      return [{ tone: 'do', text: 'Check hoses, sensor zero and engine speed; then look at the outlet face for soot and cracks.' }];
    if (decision === 'between')
      return [
        {
          tone: 'do',
          text: 'Rinse and dry it, then compare its flow resistance with that of a clean filter at several speeds, or on a flow bench.',
        },
      ];
    if (decision === 'worse')
      return [{ tone: 'do', text: 'Stop. Dry the filter, check hoses and sensor zero, and look at both faces before anything else.' }];
    if (decision === 'unclear')
      return [
        {
          tone: 'do',
          text: 'Read again at a higher engine speed, or several times, and enter the smaller uncertainty: the change must be larger than it.',
        },
      ];
    return [{ tone: 'do', text: 'Rinse, dry with the engine at 2000 to 2500 rpm, and compare before and after at comparable flow.' }];
  },
});
