import { choice, choiceOutput, constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
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

export const cleanOrReplaceCalculation = defineCalculation({
  id: 'clean-or-replace',
  version: '1.1.0',
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
    cleanPrice: costOutput('E_c', 'Expected price of cleaning, with the risk'),
    cleanDistance: distanceOutput('D_c', 'Expected distance of cleaning'),
    newDistance: distanceOutput('D_n', 'Useful distance of a new filter'),
    difference: costOutput('\\Delta k', 'Cleaning less replacing, per 1000 km'),
    differenceUncertainty: costOutput('u(\\Delta k)', 'Standard deviation of that, per 1000 km'),
    replaceCheaper: chance('P_n', 'Chance that replacing is cheaper'),
  },
  outputs: {
    cleanCost: costOutput('k_c', 'Cleaning, per 1000 km'),
    newCost: costOutput('k_n', 'Replacing, per 1000 km'),
    breakEvenPrice: costOutput('C^*', 'Cleaning may cost up to (below zero: never worth it)'),
    cleanCheaper: chance('P_c', 'Chance that cleaning is cheaper'),
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
    { code: 'no_interest', text: 'Money now and later counts the same; days off the road are not in it unless they are in the prices.' },
  ],
  limits: [
    {
      code: 'approved_part',
      text: 'Only a part approved for the vehicle counts as a new filter; an empty can is no option and no saving.',
    },
  ],
  cautions: [cautions.noDefeat, cautions.makerFirst],
  sources: { expectedCost, costPractice },
  precision: 1e-8,
  compute(input, { constants }) {
    const result = cleanOrReplace(input);
    const { difference, differenceUncertainty, cleanCheaper, replaceCheaper } = result;
    const byCost = cleanCheaper >= sureChance ? 'clean' : replaceCheaper >= sureChance ? 'replace' : 'close';
    return {
      cleanPrice: result.clean.price,
      cleanDistance: result.clean.distance,
      newDistance: result.replace.distance,
      difference: constants.perDistance * difference,
      differenceUncertainty: constants.perDistance * differenceUncertainty,
      cleanCost: (constants.perDistance * result.clean.price) / result.clean.distance,
      newCost: (constants.perDistance * result.replace.price) / result.replace.distance,
      cleanCheaper,
      replaceCheaper,
      breakEvenPrice: result.breakEvenPrice,
      verdict: input.condition === 'damaged' ? 'not-sound' : input.condition === 'unknown' ? 'look-first' : byCost,
    };
  },
  advise: ({ verdict }) => [
    ...(verdict === 'look-first'
      ? ([{ tone: 'do', text: 'Look at both faces, the can and the mat before any offer is made.' }] as const)
      : []),
    { tone: 'note', text: 'Show the customer the assumptions with the figures: lives and risk are guesses, and theirs may differ.' },
  ],
});
