import * as wf from '@wallflow/calculation';
import { mass, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { ashPractice, weightedMean as weightedMeanSource } from '../sources.js';
import { deviationFromOthers, type Estimate, weightedMean } from './kernel.js';

const ash = (symbol: string, label: string, example: string, description: string) =>
  wf.quantity(mass, { symbol, label, range: '0 g <= x <= 10 kg', example, units: ['g', 'kg'], description });
const spread = (symbol: string, label: string, example: string) =>
  wf.quantity(mass, {
    symbol,
    label,
    range: '0 g < x <= 2 kg',
    usual: ['1 g', '200 g', 'a scale gives some grams, a model tens of grams'],
    example,
    units: ['g', 'kg'],
  });
const grams = (symbol: string, label: string, digits: number) => wf.quantityOutput(mass, { symbol, label, digits, units: ['g', 'kg'] });
const ratioOutput = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 3, units: ['1'] });
const figure = {
  method: wf.textOutput({ label: 'By' }),
  ash: grams('m_a', 'Ash', 3),
  uncertainty: grams('u', 'Standard uncertainty', 2),
  othersMean: wf.optional(grams('m_o', 'Weighted mean of the others', 3)),
  othersUncertainty: wf.optional(grams('u_o', 'Its uncertainty', 2)),
  deviation: wf.optional(ratioOutput('E', 'Deviation from the others ÷ its uncertainty')),
};

const methods = [
  { label: 'model of the control unit or from oil', value: 'modelAsh', uncertainty: 'modelAshUncertainty' },
  { label: 'weight, free of soot', value: 'weighedAsh', uncertainty: 'weighedAshUncertainty' },
  { label: 'rod in the channels', value: 'rodAsh', uncertainty: 'rodAshUncertainty' },
  { label: 'pressure drop after a complete regeneration', value: 'dropAsh', uncertainty: 'dropAshUncertainty' },
] as const;

/** Deviations beyond this many standard uncertainties are not taken as chance. */
const farAway = 2;

export const ashConsistencyCalculation = wf.defineCalculation({
  id: 'ash-consistency',
  subject: 'soot',
  title: 'Do model, weight, rod and pressure drop agree on the ash?',
  purpose: 'Which of the ash figures can be trusted, and what is the best one?',
  keywords: 'ash, plausibility, weighing, reset, counter, DPF, backpressure, back pressure, delta p, restriction',
  method: 'each estimate against the weighted mean of the others',
  inputs: {
    ...wf.together({
      modelAsh: ash('m_{mod}', 'Ash by the model', '41 g', 'What the control unit counts, or oil consumption gives.'),
      modelAshUncertainty: spread('u_{mod}', 'Standard uncertainty of the ash by the model', '20 g'),
    }),
    ...wf.together({
      weighedAsh: ash('m_{w}', 'Ash by weighing', '70 g', 'Weight hot and free of soot, less the weight when new.'),
      weighedAshUncertainty: spread('u_w', 'Standard uncertainty of the ash by weighing', '6 g'),
    }),
    ...wf.together({
      rodAsh: ash('m_r', 'Ash by the rod', '62 g', 'Only the plugs; add what lies on the walls to the uncertainty.'),
      rodAshUncertainty: spread('u_r', 'Standard uncertainty of the ash by the rod', '12 g'),
    }),
    ...wf.together({
      dropAsh: ash('m_d', 'Ash by the pressure drop', '78 g', 'From the drop at known flow after a complete, hot regeneration.'),
      dropAshUncertainty: spread('u_d', 'Standard uncertainty of the ash by the pressure drop', '25 g'),
    }),
  },
  example: {
    modelAsh: '41 g',
    modelAshUncertainty: '10 g',
    weighedAsh: '70 g',
    weighedAshUncertainty: '6 g',
    rodAsh: '62 g',
    rodAshUncertainty: '10 g',
    dropAsh: '78 g',
    dropAshUncertainty: '25 g',
  },
  intermediates: {
    allMean: wf.optional(grams('m_{all}', 'Weighted mean of all figures', 4)),
    allUncertainty: wf.optional(grams('u_{all}', 'Standard uncertainty of the mean of all figures', 3)),
    largestDeviation: wf.optional(ratioOutput('E_{max}', 'Largest deviation from the others')),
    otherFigures: wf.optional(wf.tableOutput({ label: 'Figures without the furthest', columns: figure })),
    restMean: wf.optional(grams('m_{rest}', 'Weighted mean without the furthest', 4)),
    restUncertainty: wf.optional(grams('u_{rest}', 'Standard uncertainty of the mean without the furthest', 3)),
    restDeviation: wf.optional(ratioOutput('E_{rest}', 'Largest deviation without the furthest')),
  },
  outputs: {
    verdict: wf.choiceOutput({
      label: 'Agreement',
      options: {
        agree: 'they agree',
        'one-out': 'all but one agree',
        disagree: 'they do not agree: no figure can be trusted yet',
        'too-few': 'too few figures to compare',
      },
    }),
    bestAsh: wf.optional(grams('\\bar m_a', 'Mean of the figures that agree', 3)),
    bestUncertainty: wf.optional(grams('u(\\bar m_a)', 'Standard uncertainty of that mean', 2)),
    doubtful: wf.textOutput({ label: 'Figure to doubt first' }),
    figureDeviations: wf.tableOutput({
      label: 'Each figure against the others',
      columns: figure,
    }),
  },
  answer: 'verdict',
  steps: [
    wf.rows(
      'figureDeviations',
      { deviation: '(ash - othersMean) / sqrt(uncertainty ^ 2 + othersUncertainty ^ 2)' },
      weightedMeanSource,
      undefined,
      'Each figure against the weighted mean of the others.',
    ),
    wf.formula('largestDeviation', 'max(abs(figureDeviations.deviation))'),
    wf.formula('allUncertainty', '1 / sqrt(sum(1 / figureDeviations.uncertainty ^ 2))', weightedMeanSource),
    wf.formula('allMean', 'sum(figureDeviations.ash / figureDeviations.uncertainty ^ 2) * allUncertainty ^ 2', weightedMeanSource),
    wf.statement('otherFigures', 'The same comparison without the figure that lies furthest from the others.', weightedMeanSource),
    wf.formula('restDeviation', 'max(abs(otherFigures.deviation))'),
    wf.formula('restUncertainty', '1 / sqrt(sum(1 / otherFigures.uncertainty ^ 2))', weightedMeanSource),
    wf.formula('restMean', 'sum(otherFigures.ash / otherFigures.uncertainty ^ 2) * restUncertainty ^ 2', weightedMeanSource),
    wf.verdict(
      'verdict',
      {
        'too-few': 'count(figureDeviations.ash) < 2',
        agree: 'largestDeviation <= 2',
        'one-out': 'known(restDeviation) and restDeviation <= 2',
        disagree: 'otherwise',
      },
      weightedMeanSource,
    ),
    wf.cases('bestAsh', { 'largestDeviation <= 2': 'allMean', otherwise: 'restMean' }, weightedMeanSource),
    wf.cases('bestUncertainty', { 'largestDeviation <= 2': 'allUncertainty', otherwise: 'restUncertainty' }, weightedMeanSource),
    wf.statement('doubtful', 'The figure that is furthest from the others, if these agree without it.'),
  ],
  assumptions: { independent: 'The figures do not depend on each other, and their uncertainties are realistic standard uncertainties.' },
  limits: {
    rod_and_drop_low: 'A rod finds plugs only, and plugs hardly change the pressure drop: both figures tend to be low.',
    wet_or_sooty: 'A filter weighed cold has taken up water, and one that is not burnt clean is weighed with its soot: tens of grams.',
  },
  cautions: [
    {
      code: 'never_reset_untrue',
      text: 'Set the ash counter of a vehicle to what is measured, never to zero because a filter was cleaned.',
    },
    cautions.ashDust,
  ],
  sources: [ashPractice],
  compute(input, { warn }) {
    const figures = methods.flatMap(({ label, value, uncertainty }) => {
      const [ashFound, doubt] = [input[value], input[uncertainty]];
      return ashFound === undefined || doubt === undefined ? [] : [{ method: label, ash: ashFound, uncertainty: doubt }];
    });
    const all = figures.length === 0 ? undefined : weightedMean(figures.map(asEstimate));
    const figureDeviations = compared(figures);
    const largestDeviation = figures.length < 2 ? undefined : largestOf(figureDeviations);
    const disagree = largestDeviation !== undefined && largestDeviation > farAway;
    // Of two that differ neither can be blamed, and the rest must agree among themselves.
    const worst = figureDeviations.findIndex(({ deviation: by }) => Math.abs(by ?? 0) === largestDeviation);
    const rest = disagree && figures.length > 2 ? figures.filter((_, index) => index !== worst) : undefined;
    const without = rest === undefined ? undefined : weightedMean(rest.map(asEstimate));
    const restDeviation = rest === undefined ? undefined : largestOf(compared(rest));
    const oneOut = restDeviation !== undefined && restDeviation <= farAway;
    const best = figures.length < 2 ? undefined : oneOut ? without : disagree ? undefined : all;
    if (best !== undefined && best.uncertainty > 0.5 * best.mean)
      warn('uncertain_figures', 'The figures are too uncertain to show whether they agree: get a better one before acting on them.');
    return {
      allMean: all?.mean,
      allUncertainty: all?.uncertainty,
      largestDeviation,
      otherFigures: rest === undefined ? undefined : compared(rest),
      restMean: without?.mean,
      restUncertainty: without?.uncertainty,
      restDeviation,
      verdict: figures.length < 2 ? 'too-few' : oneOut ? 'one-out' : disagree ? 'disagree' : 'agree',
      bestAsh: best?.mean,
      bestUncertainty: best?.uncertainty,
      doubtful: oneOut ? (figures[worst]?.method ?? wf.say`none`) : disagree ? 'any of them; get another figure' : wf.say`none`,
      figureDeviations,
    };
  },
  advise({ verdict: agreement, doubtful }) {
    if (agreement === 'too-few')
      return [{ tone: 'do', text: 'Get a second figure: weigh the filter hot and free of soot, or probe the channels.' }];
    if (agreement === 'agree') return [];
    if (agreement === 'disagree')
      return [
        { tone: 'do', text: 'Weigh the filter hot and free of soot, and probe the channels, before setting anything.' },
        { tone: 'do-not', text: 'Do not set the ash counter on any of these figures.' },
      ];
    return [{ tone: 'do', text: wf.say`Check this figure first: ${doubtful}.` }];
  },
});

interface Figure {
  readonly method: string;
  readonly ash: number;
  readonly uncertainty: number;
}

const asEstimate = ({ ash: value, uncertainty }: Figure): Estimate => ({ value, uncertainty });

/** Each figure with the weighted mean of the others and its deviation from it; without any for a figure that is alone. */
function compared(figures: readonly Figure[]) {
  const estimates = figures.map(asEstimate);
  return figures.map((row, index) => {
    if (figures.length < 2) return { ...row, othersMean: undefined, othersUncertainty: undefined, deviation: undefined };
    const { mean, uncertainty } = weightedMean(estimates.filter((_, other) => other !== index));
    return { ...row, othersMean: mean, othersUncertainty: uncertainty, deviation: deviationFromOthers(estimates, index) };
  });
}

const largestOf = (rows: ReturnType<typeof compared>) => Math.max(...rows.map(({ deviation: by }) => Math.abs(by ?? 0)));
