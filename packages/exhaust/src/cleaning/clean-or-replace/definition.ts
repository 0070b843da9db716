import {
  choice,
  choiceOutput,
  constant,
  defineCalculation,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { fraction, length, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { costPractice, expectedCost } from '../sources.js';
import { cleanOrReplace, sureChance } from './kernel.js';

const price = (symbol: string, label: string, example: string) =>
  quantity(ratio, {
    symbol,
    label: `${label}, in your currency`,
    description: 'Removal, fitting and resets included.',
    min: '0',
    max: '1000000',
    example,
  });
const distance = (symbol: string, label: string, description: string, example: string) =>
  quantity(length, { symbol, label, description, min: '100 km', max: '2000000 km', example, units: ['km', 'mi'] });
const uncertainty = (symbol: string, label: string, value: string) =>
  quantityWithDefault(fraction, {
    symbol,
    label,
    min: '0 %',
    max: '100 %',
    example: value,
    default: value,
    defaultReason: 'a guess: nobody publishes it; enter your own',
  });
const costOutput = (symbol: string, label: string) => quantityOutput(ratio, { symbol, label: `${label}, in your currency`, digits: 3 });
const chance = (symbol: string, label: string) => quantityOutput(fraction, { symbol, label, digits: 2, units: ['%'] });
const distanceOutput = (symbol: string, label: string) => quantityOutput(length, { symbol, label, digits: 3, units: ['km', 'mi'] });

const noCleaning = {
  cleanPrice: undefined,
  cleanDistance: undefined,
  difference: undefined,
  differenceUncertainty: undefined,
  replaceCheaper: undefined,
  cleanCost: undefined,
  breakEvenPrice: undefined,
  cleanCheaper: undefined,
};

export const cleanOrReplaceCalculation = defineCalculation({
  id: 'clean-or-replace',
  version: '1.2.0',
  subject: 'cleaning',
  title: 'Clean the filter or replace it?',
  purpose: 'Which costs less per remaining kilometre, and is that beyond what the guesses can tell?',
  usedBy: ['technician', 'trainer'],
  keywords: ['cost', 'economics', 'per kilometre', 'replace', 'price'],
  method: 'expected cost over expected distance, with the uncertainty of the lives',
  inputs: z.strictObject({
    condition: choice({
      label: 'Filter and can',
      options: { sound: 'looked at and sound', damaged: 'cracked, melted, leaking or shifted', unknown: 'not looked at' },
      example: 'sound',
    }),
    cleaningPrice: price('C', 'Price of cleaning', '350'),
    cleanedLife: distance(
      'L_c',
      'Distance until the cleaned filter is due again',
      'From the ash that stays and the ash per distance.',
      '60000 km',
    ),
    newPrice: price('N', 'Price of a new filter', '1400'),
    newLife: distance('L_n', 'Distance until a new filter is due', 'From the ash limit and the ash per distance.', '140000 km'),
    remainingDistance: distance(
      'D',
      'Distance the vehicle will still be driven',
      'By this owner. Left out, life is never wasted.',
      '120000 km',
    ).optional(),
    failureRisk: quantityWithDefault(fraction, {
      symbol: 'p',
      label: 'Risk that the clean does not hold and a new filter follows',
      min: '0 %',
      max: '100 %',
      example: '15 %',
      default: '15 %',
      defaultReason: 'a guess: nobody publishes it; enter your own',
    }),
    cleanedLifeUncertainty: uncertainty('u_c', 'Standard uncertainty of the life after cleaning', '30 %'),
    newLifeUncertainty: uncertainty('u_n', 'Standard uncertainty of the life of a new filter', '20 %'),
  }),
  example: { remainingDistance: '120000 km' },
  intermediates: {
    cleanPrice: optional(costOutput('E_c', 'Expected price of cleaning, with the risk')),
    cleanDistance: optional(distanceOutput('D_c', 'Expected distance of cleaning')),
    newDistance: distanceOutput('D_n', 'Useful distance of a new filter'),
    difference: optional(costOutput('\\Delta k', 'Cleaning less replacing, per 1000 km')),
    differenceUncertainty: optional(costOutput('u(\\Delta k)', 'Standard deviation of that, per 1000 km')),
    replaceCheaper: optional(chance('P_n', 'Chance that replacing is cheaper')),
  },
  outputs: {
    cleanCost: optional(costOutput('k_c', 'Cleaning, per 1000 km')),
    newCost: costOutput('k_n', 'Replacing, per 1000 km'),
    breakEvenPrice: optional(costOutput('C^*', 'Cleaning may cost up to (below zero: never worth it)')),
    cleanCheaper: optional(chance('P_c', 'Chance that cleaning is cheaper')),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        clean: 'clean it: cheaper per kilometre in at least 975 of 1000 cases that the guesses allow',
        replace: 'replace it: cheaper per kilometre in at least 975 of 1000 cases that the guesses allow',
        close: 'too close to call by cost: let the condition and the customer decide',
        'look-first': 'look at it first: a filter that is not sound is not cleaned',
        'not-sound': 'replace it with an approved part: cleaning does not mend it',
      },
    }),
  },
  constants: {
    perDistance: constant(length, 1e6, { symbol: 'l', label: 'Distance that costs are stated for, 1000 km', source: 'costPractice' }),
  },
  steps: [
    { gives: 'cleanPrice', tex: '[[cleanPrice]] = [[cleaningPrice]]+[[failureRisk]]\\,[[newPrice]]', source: 'expectedCost' },
    {
      gives: 'cleanDistance',
      text: 'Life after cleaning and life of a new filter, neither beyond what is still driven, weighted with the risk: [[cleanDistance]].',
      source: 'expectedCost',
    },
    { gives: 'newDistance', text: 'Life of a new filter, not beyond what is still driven: [[newDistance]].', source: 'expectedCost' },
    { gives: 'cleanCost', tex: '[[cleanCost]] = [[perDistance]]\\,\\frac{[[cleanPrice]]}{[[cleanDistance]]}', source: 'expectedCost' },
    { gives: 'newCost', tex: '[[newCost]] = [[perDistance]]\\,\\frac{[[newPrice]]}{[[newDistance]]}', source: 'expectedCost' },
    { gives: 'difference', tex: '[[difference]] = [[cleanCost]]-[[newCost]]', source: 'expectedCost' },
    {
      gives: 'differenceUncertainty',
      text: 'Both lives spread lognormally about what is given, each up to what is still driven; spread of the difference: [[differenceUncertainty]].',
      source: 'expectedCost',
    },
    {
      gives: 'cleanCheaper',
      text: 'Chance that cleaning price times new life is below new price times cleaned life, less the risk: [[cleanCheaper]].',
      source: 'expectedCost',
    },
    { gives: 'replaceCheaper', text: 'Chance of the opposite: [[replaceCheaper]].', source: 'expectedCost' },
    {
      gives: 'breakEvenPrice',
      tex: '[[breakEvenPrice]] = [[newPrice]]\\left(\\frac{[[cleanDistance]]}{[[newDistance]]}-[[failureRisk]]\\right)',
      source: 'costPractice',
    },
    { gives: 'verdict', text: 'Condition first; then a chance of 97.5 % at least that one way is cheaper.', source: 'costPractice' },
  ],
  assumptions: [
    {
      code: 'same_risk_of_engine',
      text: 'The cause of the blockage is mended either way; otherwise the new filter blocks as fast as the cleaned one.',
    },
    { code: 'lognormal_lives', text: 'What is given of a life is its mean; it spreads as a lognormal, never below zero.' },
    {
      code: 'no_interest',
      text: 'Interest is left out: money now and later counts the same. With interest the lower price now weighs more, and a close verdict can turn: of four tyres in a textbook the dearest is cheapest per month without interest, and the third at 12 % a year. Days off the road count only where they are in the prices.',
    },
  ],
  limits: [
    {
      code: 'approved_part',
      text: 'Only a part approved for the vehicle counts as a new filter; an empty can is no option and no saving.',
    },
  ],
  cautions: [cautions.noDefeat, cautions.makerFirst],
  sources: {
    expectedCost,
    costPractice,
    interest: {
      type: 'book',
      by: 'Panneerselvam',
      title: 'Engineering Economics',
      locator: 'Example 6.10, p. 85',
      mark: 'read',
      note: 'Read in a published collection of solutions, not in the book.',
    },
  },
  precision: 1e-8,
  compute(input, { constants }) {
    const result = cleanOrReplace(input);
    const { difference, differenceUncertainty, cleanCheaper, replaceCheaper } = result;
    const byCost = cleanCheaper >= sureChance ? 'clean' : replaceCheaper >= sureChance ? 'replace' : 'close';
    const perDistance = constants.perDistance;
    const newCost = (perDistance * result.replace.price) / result.replace.distance;
    // A filter that cleaning does not mend has no cost of cleaning: figures for it would speak against the verdict.
    if (input.condition === 'damaged')
      return { ...noCleaning, newDistance: result.replace.distance, newCost, verdict: 'not-sound' as const };
    return {
      cleanPrice: result.clean.price,
      cleanDistance: result.clean.distance,
      newDistance: result.replace.distance,
      difference: perDistance * difference,
      differenceUncertainty: perDistance * differenceUncertainty,
      cleanCost: (perDistance * result.clean.price) / result.clean.distance,
      newCost,
      cleanCheaper,
      replaceCheaper,
      breakEvenPrice: result.breakEvenPrice,
      verdict: input.condition === 'unknown' ? ('look-first' as const) : byCost,
    };
  },
  advise: ({ verdict }) => [
    ...(verdict === 'look-first'
      ? ([{ tone: 'do', text: 'Look at both faces, the can and the mat before any offer is made.' }] as const)
      : []),
    { tone: 'note', text: 'Show the customer the assumptions with the figures: lives and risk are guesses, and theirs may differ.' },
  ],
});
