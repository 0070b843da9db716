import {
  choiceOutput,
  defineCalculation,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  tableOutput,
  textOutput,
} from '@wallflow/calculation';
import { mass, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { ashPractice, weightedMean as weightedMeanSource } from '../sources.js';
import { deviationFromOthers, type Estimate, weightedMean } from './kernel.js';

const ash = (symbol: string, label: string, example: string, description?: string) =>
  quantity(mass, {
    symbol,
    label,
    min: '0 g',
    max: '10 kg',
    example,
    units: ['g', 'kg'],
    ...(description === undefined ? {} : { description }),
  }).optional();
const spread = (symbol: string, label: string, example: string) =>
  quantity(mass, {
    symbol,
    label,
    above: '0 g',
    max: '2 kg',
    usual: ['1 g', '200 g'],
    usualReason: 'a scale gives some grams, a model tens of grams',
    example,
    units: ['g', 'kg'],
  }).optional();

const methods = [
  { key: 'model', label: 'model of the control unit or from oil', value: 'modelAsh', uncertainty: 'modelUncertainty' },
  { key: 'weight', label: 'weight, free of soot', value: 'weighedAsh', uncertainty: 'weighedUncertainty' },
  { key: 'rod', label: 'rod in the channels', value: 'rodAsh', uncertainty: 'rodUncertainty' },
  { key: 'drop', label: 'pressure drop after a complete regeneration', value: 'dropAsh', uncertainty: 'dropUncertainty' },
] as const;

/** Deviations beyond this many standard uncertainties are not taken as chance. */
const farAway = 2;

export const ashConsistencyCalculation = defineCalculation({
  id: 'ash-consistency',
  version: '2.0.0',
  subject: 'soot',
  title: 'Do model, weight, rod and pressure drop agree on the ash?',
  purpose: 'Which of the figures for the ash can be believed, and what is the best one?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['ash', 'plausibility', 'weighing', 'reset', 'counter'],
  method: 'each estimate against the weighted mean of the others',
  inputs: z.strictObject({
    modelAsh: ash('m_{mod}', 'Ash by the model', '41 g', 'What the control unit counts, or oil consumption gives.'),
    modelUncertainty: spread('u_{mod}', 'Standard uncertainty of the ash by the model', '20 g'),
    weighedAsh: ash('m_{w}', 'Ash by weighing', '70 g', 'Weight hot and free of soot, less the weight when new.'),
    weighedUncertainty: spread('u_w', 'Standard uncertainty of the ash by weighing', '6 g'),
    rodAsh: ash('m_r', 'Ash by the rod', '62 g', 'Only the plugs; add what lies on the walls to the uncertainty.'),
    rodUncertainty: spread('u_r', 'Standard uncertainty of the ash by the rod', '12 g'),
    dropAsh: ash('m_d', 'Ash by the pressure drop', '78 g', 'From the drop at known flow after a complete, hot regeneration.'),
    dropUncertainty: spread('u_d', 'Standard uncertainty of the ash by the pressure drop', '25 g'),
  }),
  example: {
    modelAsh: '41 g',
    modelUncertainty: '10 g',
    weighedAsh: '70 g',
    weighedUncertainty: '6 g',
    rodAsh: '62 g',
    rodUncertainty: '10 g',
    dropAsh: '78 g',
    dropUncertainty: '25 g',
  },
  intermediates: {},
  outputs: {
    verdict: choiceOutput({
      label: 'Agreement',
      options: {
        agree: 'they agree',
        'one-out': 'all but one agree',
        disagree: 'they do not agree: no figure can be believed yet',
        'too-few': 'too few figures to compare',
      },
    }),
    bestAsh: optional(
      quantityOutput(mass, { symbol: '\\bar m_a', label: 'Mean of the figures that agree', digits: 3, units: ['g', 'kg'] }),
    ),
    bestUncertainty: optional(
      quantityOutput(mass, { symbol: 'u(\\bar m_a)', label: 'Standard uncertainty of that mean', digits: 2, units: ['g'] }),
    ),
    doubtful: textOutput({ label: 'Figure to doubt first' }),
    comparison: tableOutput({
      label: 'Each figure against the others',
      columns: {
        method: textOutput({ label: 'By' }),
        ash: quantityOutput(mass, { symbol: 'm_a', label: 'Ash', digits: 3, units: ['g'] }),
        uncertainty: quantityOutput(mass, { symbol: 'u', label: 'Standard uncertainty', digits: 2, units: ['g'] }),
        deviation: optional(
          quantityOutput(ratio, { symbol: 'E', label: 'Deviation from the others over its uncertainty', digits: 3, units: ['1'] }),
        ),
      },
    }),
  },
  constants: {},
  steps: [
    {
      gives: 'comparison',
      text: 'Each figure less the weighted mean of the others, over the uncertainty of that difference.',
      source: 'weightedMean',
    },
    { gives: 'doubtful', text: 'The figure with the largest deviation beyond 2.' },
    { gives: 'bestAsh', text: 'Mean of two or more figures that agree, weighted by 1/u²; none where they do not.', source: 'weightedMean' },
    { gives: 'bestUncertainty', text: 'One over the root of the sum of 1/u².', source: 'weightedMean' },
    {
      gives: 'verdict',
      text: 'They agree when no figure lies further than 2 standard uncertainties from the others; all but one when that holds without the furthest.',
      source: 'weightedMean',
    },
  ],
  assumptions: [
    { code: 'independent', text: 'The figures do not depend on each other and their uncertainties are honest standard uncertainties.' },
  ],
  limits: [
    { code: 'rod_and_drop_low', text: 'A rod sees plugs only, and a pressure drop hardly sees plugs: both tend to be low.' },
    { code: 'wet_or_sooty', text: 'A filter weighed cold takes up water, and one that is not burnt free weighs its soot: tens of grams.' },
  ],
  cautions: [
    {
      code: 'never_reset_untrue',
      text: 'Set the ash counter of a vehicle to what is measured, never to zero because a filter was cleaned.',
    },
    cautions.ashDust,
  ],
  sources: { weightedMean: weightedMeanSource, ashPractice },
  compute(input, { warn }) {
    const known: (Estimate & { readonly label: string })[] = [];
    for (const { label, value, uncertainty } of methods) {
      const found = input[value];
      if (found === undefined) continue;
      const doubt = input[uncertainty];
      if (doubt === undefined) return missingInputs(uncertainty);
      known.push({ label, value: found, uncertainty: doubt });
    }
    const deviations = deviationsOf(known);
    const worst = furthest(deviations);
    const disagree = worst !== undefined;
    // Of two that differ neither can be blamed, and the rest must agree among themselves.
    const rest = known.filter((_, index) => index !== worst);
    const oneOut = disagree && rest.length > 1 && furthest(deviationsOf(rest)) === undefined;
    const good = known.length < 2 ? [] : oneOut ? rest : disagree ? [] : known;
    const best = good.length === 0 ? undefined : weightedMean(good);
    if (best !== undefined && best.uncertainty > 0.5 * best.mean)
      warn('agree_by_doubt', 'The figures are so uncertain that almost any would agree: get a better one before acting on them.');
    return {
      verdict: known.length < 2 ? 'too-few' : oneOut ? 'one-out' : disagree ? 'disagree' : 'agree',
      bestAsh: best?.mean,
      bestUncertainty: best?.uncertainty,
      doubtful: oneOut ? (known[worst]?.label ?? 'none') : disagree ? 'any of them; get another figure' : 'none',
      comparison: known.map(({ label, value, uncertainty }, index) => ({
        method: label,
        ash: value,
        uncertainty,
        deviation: deviations[index],
      })),
    };
  },
  advise({ verdict, doubtful }) {
    if (verdict === 'too-few')
      return [{ tone: 'do', text: 'Get a second figure: weigh the filter hot and free of soot, or probe the channels.' }];
    if (verdict === 'agree') return [];
    if (verdict === 'disagree')
      return [
        { tone: 'do', text: 'Weigh the filter hot and free of soot, and probe the channels, before setting anything.' },
        { tone: 'do-not', text: 'Do not set the ash counter on any of these figures.' },
      ];
    return [{ tone: 'do', text: `Check this figure first: ${doubtful}.` }];
  },
});

function deviationsOf(estimates: readonly Estimate[]): (number | undefined)[] {
  return estimates.map((_, index) => (estimates.length > 1 ? deviationFromOthers(estimates, index) : undefined));
}

/** Index of the largest deviation beyond what is taken as chance; undefined when there is none. */
function furthest(deviations: readonly (number | undefined)[]): number | undefined {
  const sizes = deviations.map((deviation) => Math.abs(deviation ?? 0));
  const most = Math.max(0, ...sizes);
  return most > farAway ? sizes.indexOf(most) : undefined;
}
