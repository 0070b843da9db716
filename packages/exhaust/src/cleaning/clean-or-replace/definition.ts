import * as wf from '@wallflow/calculation';
import { fraction, length, money, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { costPractice, expectedCost } from '../sources.js';
import { cleanOrReplace, sureChance } from './kernel.js';

const price = (symbol: string, label: string, example: string) =>
  wf.quantity(money, {
    symbol,
    label: `${label}, in your currency`,
    description: 'Removal, fitting and resets included.',
    range: '0 <= x <= 1000000',
    example,
  });
const distance = (symbol: string, label: string, description: string, example: string) =>
  wf.quantity(length, { symbol, label, description, range: '100 <= x <= 2000000 km', example, units: ['km', 'mi'] });
const uncertainty = (symbol: string, label: string, value: string) =>
  wf.quantity(fraction, { symbol, label, range: '0 <= x <= 100 %', default: [value, 'a guess: nobody publishes it; enter your own'] });
const costOutput = (symbol: string, label: string) => wf.quantityOutput(money, { symbol, label: `${label}, in your currency`, digits: 3 });
const chance = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 2, units: ['%'] });
const distanceOutput = (symbol: string, label: string) => wf.quantityOutput(length, { symbol, label, digits: 3, units: ['km', 'mi'] });

/** What the spread of the cost rests on. */
const lives = ['cleanedLife', 'cleanedLifeUncertainty', 'newLife', 'newLifeUncertainty'];

const noCleaning = {
  cleanPrice: undefined,
  cleanDistance: undefined,
  payRatio: undefined,
  costDifference: undefined,
  costDifferenceUncertainty: undefined,
  replaceCheaper: undefined,
  cleanCost: undefined,
  breakEvenPrice: undefined,
  cleanCheaper: undefined,
};

const interest: wf.Source = {
  type: 'book',
  by: 'Panneerselvam',
  title: 'Engineering Economics',
  locator: 'Example 6.10, p. 85',
  mark: 'read',
  note: 'Read in a published collection of solutions, not in the book.',
};

export const cleanOrReplaceCalculation = wf.defineCalculation({
  id: 'clean-or-replace',
  subject: 'cleaning',
  title: 'Clean the filter or replace it?',
  purpose: 'Which costs less per remaining kilometre, and is the difference larger than the guesswork?',
  keywords: 'cost, economics, per kilometre, replace, price, DPF',
  method: 'expected cost over expected distance, with the uncertainty of the lives',
  inputs: {
    filterCondition: wf.choice({
      label: 'Condition of filter and housing',
      options: { sound: 'inspected and sound', damaged: 'cracked, melted, leaking or shifted', unknown: 'not looked at' },
      example: 'sound',
    }),
    cleaningPrice: price('C', 'Price of cleaning', '350'),
    cleanedLife: distance(
      'L_c',
      'Distance until the cleaned filter is due again',
      'From the ash that stays and the ash per distance.',
      '73000 km',
    ),
    newPrice: price('N', 'Price of a new filter', '1400'),
    newLife: distance('L_n', 'Distance until a new filter is due', 'From the ash limit and the ash per distance.', '146000 km'),
    remainingDistance: wf.optional(
      distance(
        'D',
        'Distance the vehicle will still be driven',
        'By this owner. Leave blank if no life is wasted at the end.',
        '120000 km',
      ),
    ),
    failureRisk: wf.quantity(fraction, {
      symbol: 'p',
      label: 'Risk that cleaning fails and a new filter follows',
      range: '0 <= x <= 100 %',
      default: ['15 %', 'a guess: nobody publishes it; enter your own'],
    }),
    cleanedLifeUncertainty: uncertainty('u_c', 'Standard uncertainty of the life after cleaning', '30 %'),
    newLifeUncertainty: uncertainty('u_n', 'Standard uncertainty of the life of a new filter', '20 %'),
  },
  example: { remainingDistance: '120000 km' },
  intermediates: {
    cleanPrice: wf.optional(costOutput('E_c', 'Expected price of cleaning, with the risk')),
    cleanedUse: distanceOutput('L_{c,u}', 'Useful distance after cleaning'),
    cleanDistance: wf.optional(distanceOutput('D_c', 'Expected distance by cleaning')),
    newDistance: distanceOutput('D_n', 'Useful distance of a new filter'),
    payRatio: wf.optional(
      wf.quantityOutput(ratio, { symbol: 'y', label: 'Cleaned life over new life from which cleaning pays', digits: 3 }),
    ),
    costDifference: wf.optional(costOutput('\\Delta k', 'Cleaning minus replacing, per 1000 km')),
    costDifferenceUncertainty: wf.optional(costOutput('u(\\Delta k)', 'Standard deviation of the difference, per 1000 km')),
    replaceCheaper: wf.optional(chance('P_n', 'Chance that replacing is cheaper')),
  },
  outputs: {
    cleanCost: wf.optional(costOutput('k_c', 'Cleaning, per 1000 km')),
    newCost: costOutput('k_n', 'Replacing, per 1000 km'),
    breakEvenPrice: wf.optional(costOutput('C^*', 'Highest price at which cleaning pays (below zero: never)')),
    cleanCheaper: wf.optional(chance('P_c', 'Chance that cleaning is cheaper')),
    verdict: wf.choiceOutput({
      label: 'Clean or replace?',
      options: {
        clean: 'clean it: cheaper per kilometre in at least 975 of 1000 cases within the guesses',
        replace: 'replace it: cheaper per kilometre in at least 975 of 1000 cases within the guesses',
        close: 'too close to call by cost: let condition and customer decide',
        'look-first': 'look at it first: a damaged filter is not worth cleaning',
        'not-sound': 'replace it with an approved part: cleaning does not repair it',
      },
    }),
  },
  constants: {
    statedDistance: wf.constant(length, 1e6, { symbol: 'l', label: 'Distance that costs are stated for', source: costPractice }),
  },
  answer: 'verdict',
  steps: [
    wf.formula('cleanPrice', 'cleaningPrice + failureRisk * newPrice', expectedCost),
    wf.cases('cleanedUse', { 'known(remainingDistance)': 'min(cleanedLife, remainingDistance)', otherwise: 'cleanedLife' }, expectedCost),
    wf.cases('newDistance', { 'known(remainingDistance)': 'min(newLife, remainingDistance)', otherwise: 'newLife' }, expectedCost),
    wf.formula('cleanDistance', '(1 - failureRisk) * cleanedUse + failureRisk * newDistance', expectedCost),
    wf.formula('cleanCost', 'statedDistance * cleanPrice / cleanDistance', expectedCost),
    wf.formula('newCost', 'statedDistance * newPrice / newDistance', expectedCost),
    wf.formula('costDifference', 'cleanCost - newCost', expectedCost),
    wf.formula('breakEvenPrice', 'newPrice * cleanDistance / newDistance - failureRisk * newPrice', costPractice),
    wf.formula('payRatio', 'cleaningPrice / ((1 - failureRisk) * newPrice)', expectedCost),
    wf.fromTable(
      'costDifferenceUncertainty',
      lives,
      expectedCost,
      undefined,
      'Both lives spread lognormally about their means, each up to what is still driven.',
    ),
    wf.fromTable(
      'cleanCheaper',
      ['payRatio', ...lives],
      expectedCost,
      undefined,
      'Chance that the cleaned life is longer than this multiple of the new life.',
    ),
    wf.fromTable('replaceCheaper', ['payRatio', ...lives], expectedCost, undefined, 'Chance that it is shorter.'),
    wf.verdict(
      'verdict',
      {
        'not-sound': "filterCondition == 'damaged'",
        'look-first': "filterCondition == 'unknown'",
        clean: 'cleanCheaper >= 0.975',
        replace: 'replaceCheaper >= 0.975',
        close: 'otherwise',
      },
      costPractice,
    ),
  ],
  assumptions: {
    same_risk_of_engine: 'The cause of the blockage is repaired either way; otherwise the new filter blocks as fast as the cleaned one.',
    lognormal_lives: 'A life entered is the mean of a lognormal distribution, which never goes below zero.',
    no_interest:
      'Interest is left out: money now and later counts the same. With interest the lower price now weighs more, and a close verdict can turn: of four tyres in a textbook the dearest is cheapest per month without interest, and the third at 12 % a year. Days off the road count only if the prices include them.',
  },
  limits: {
    approved_part: 'Only a part approved for the vehicle counts as a new filter; an empty housing is neither an option nor a saving.',
  },
  cautions: [cautions.noDefeat, cautions.makerFirst],
  precision: 1e-8,
  sources: [interest],
  compute(input, { constants }) {
    const result = cleanOrReplace(input);
    const { difference, differenceUncertainty, cleanCheaper, replaceCheaper } = result;
    const byCost = cleanCheaper >= sureChance ? 'clean' : replaceCheaper >= sureChance ? 'replace' : 'close';
    const { statedDistance } = constants;
    const cleanedUse = Math.min(input.cleanedLife, input.remainingDistance ?? Infinity);
    const payRatio = input.cleaningPrice / ((1 - input.failureRisk) * input.newPrice);
    const newCost = (statedDistance * result.replace.price) / result.replace.distance;
    // A filter that cleaning does not mend has no cost of cleaning: figures for it would speak against the verdict.
    if (input.filterCondition === 'damaged')
      return { ...noCleaning, cleanedUse, newDistance: result.replace.distance, newCost, verdict: 'not-sound' as const };
    return {
      cleanPrice: result.clean.price,
      cleanDistance: result.clean.distance,
      cleanedUse,
      newDistance: result.replace.distance,
      payRatio: Number.isFinite(payRatio) ? payRatio : undefined,
      costDifference: statedDistance * difference,
      costDifferenceUncertainty: statedDistance * differenceUncertainty,
      cleanCost: (statedDistance * result.clean.price) / result.clean.distance,
      newCost,
      cleanCheaper,
      replaceCheaper,
      breakEvenPrice: result.breakEvenPrice,
      verdict: input.filterCondition === 'unknown' ? ('look-first' as const) : byCost,
    };
  },
  advise: ({ verdict: decision }) => [
    ...(decision === 'look-first'
      ? ([{ tone: 'do', text: 'Look at both faces, the housing and the mat before you make an offer.' }] as const)
      : []),
    {
      tone: 'note',
      text: 'Show the customer the assumptions with the figures: lives and risk are guesses, and others may expect something else.',
    },
  ],
});
