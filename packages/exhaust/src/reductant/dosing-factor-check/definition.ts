import { choiceOutput, commonPractice, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { fraction, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { scrReactions } from '../sources.js';
import { dosedOverWanted, dosingFactorVerdict } from './kernel.js';

export const dosingFactorCheckCalculation = defineCalculation({
  id: 'dosing-factor-check',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Learned dosing factor after work on the injector',
  purpose: 'Does the learned factor still belong to the injector that is fitted now, or will it over-dose?',
  usedBy: ['technician', 'trainer'],
  keywords: ['adaptation', 'learned value', 'dosing', 'injector clean', 'over-dosing'],
  method: 'learned factor times measured injector quantity',
  inputs: z.strictObject({
    learnedFactor: quantity(ratio, {
      symbol: 'f',
      label: 'Learned dosing factor',
      description: 'As read from the control unit; 1 means no correction. Shown as a percentage, 25 % is 1.25.',
      min: '0.2',
      max: '3',
      usual: ['0.7', '1.4'],
      usualReason: 'control units limit what they learn; far outside, the value may be scaled otherwise',
      example: '1.25',
    }),
    injectorRatio: quantity(ratio, {
      symbol: 'q',
      label: 'Measured quantity over nominal quantity',
      description: 'From the dosing test, after the work.',
      min: '0',
      max: '3',
      example: '0.99',
    }),
    injectorUncertainty: quantityWithDefault(fraction, {
      symbol: 'u',
      label: 'How well that is known (±)',
      min: '0 %',
      max: '50 %',
      example: '3 %',
      units: ['%'],
      default: '3 %',
      defaultReason: 'about what three runs into a cup give; common practice, no source',
    }),
    targetRatio: quantityWithDefault(ratio, {
      symbol: '\\alpha_t',
      label: 'Ammonia-to-NOx ratio that the control aims at',
      min: '0.3',
      max: '1.5',
      example: '1',
      default: '1',
      defaultReason: 'the chemical demand at full conversion',
    }),
    tolerance: quantityWithDefault(fraction, {
      symbol: 't',
      label: 'Tolerance (±)',
      above: '0 %',
      max: '50 %',
      example: '10 %',
      units: ['%'],
      default: '10 %',
      defaultReason: 'as for the dosed quantity; common practice, no source',
    }),
  }),
  intermediates: { resultingRatio: quantityOutput(ratio, { symbol: '\\alpha', label: 'Ammonia-to-NOx ratio that results', digits: 3 }) },
  outputs: {
    factorToExpect: quantityOutput(ratio, { symbol: 'f_e', label: 'Factor that would fit this injector', digits: 3 }),
    excess: quantityOutput(fraction, {
      symbol: '\\epsilon',
      label: 'Dosed beyond what is wanted',
      description: 'Negative when too little is dosed.',
      digits: 3,
      units: ['%'],
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        consistent: 'factor and injector belong together',
        'over-dosing': 'too much is dosed: slip, and crystals follow',
        'under-dosing': 'too little is dosed',
        undecided: 'undecided: the limit lies inside the uncertainty',
      },
    }),
  },
  constants: {},
  steps: [
    { gives: 'factorToExpect', tex: '[[factorToExpect]] = \\frac{1}{[[injectorRatio]]}' },
    { gives: 'excess', tex: '[[excess]] = [[learnedFactor]]\\,[[injectorRatio]]-1' },
    {
      gives: 'resultingRatio',
      tex: '[[resultingRatio]] = [[targetRatio]]\\,[[learnedFactor]]\\,[[injectorRatio]]',
      source: 'scrReactions',
    },
    { gives: 'verdict', text: 'The excess is compared with: [[tolerance]].', source: 'practice' },
  ],
  assumptions: [{ code: 'factor_multiplies', text: 'The learned factor multiplies the commanded quantity.' }],
  limits: [
    {
      code: 'other_causes',
      text: 'A factor above 1 can also come from diluted fluid, low pressure, a leak or a sensor that reads high. Rule these out first.',
    },
  ],
  cautions: [cautions.makerFirst, cautions.noDefeat],
  sources: {
    scrReactions,
    practice: commonPractice(
      'After an injector, pump or tank has been changed or cleaned, the learned dosing values are reset or learned anew',
    ),
  },
  compute(input, { warn }) {
    const resulting = dosedOverWanted(input.learnedFactor, input.injectorRatio);
    warn('tolerance_by_practice', 'The tolerance is common practice, not a published limit.');
    if (input.injectorRatio < 0.05) warn('no_flow', 'The injector gives next to nothing: no factor fits it.', ['injectorRatio']);
    return {
      factorToExpect: 1 / Math.max(0.05, input.injectorRatio),
      excess: resulting - 1,
      resultingRatio: input.targetRatio * resulting,
      verdict: dosingFactorVerdict(resulting, resulting * input.injectorUncertainty, input.tolerance),
    };
  },
  advise({ verdict }) {
    if (verdict === 'over-dosing') {
      return [
        { tone: 'do', text: "Have the factor learned again by the vehicle maker's routine, once the injector has passed its test." },
        { tone: 'do-not', text: 'Do not reset it before the cause of the old fault is repaired; it is evidence.' },
      ];
    }
    return [];
  },
});
