import * as wf from '@wallflow/calculation';
import { fraction, massFraction, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { targetUreaFraction } from '../named-constants.js';
import { iso22241Part1, scrReactions } from '../sources.js';
import { dosedOverWanted, dosingFactorVerdict } from './kernel.js';

const practice = wf.commonPractice(
  'After an injector, pump or tank has been changed or cleaned, the learned dosing values are reset or relearned',
);

export const dosingFactorCheckCalculation = wf.defineCalculation({
  id: 'dosing-factor-check',
  subject: 'reductant',
  title: 'Learned dosing factor after work on the injector',
  purpose: 'Does the learned factor still suit this injector and this fluid, or does it dose too much or too little?',
  keywords: 'adaptation, learned value, relearn, dosing, injector clean, over-dosing, weak fluid',
  method: 'learned factor times measured quantity times strength of the fluid',
  inputs: {
    learnedFactor: wf.quantity(ratio, {
      symbol: 'f',
      label: 'Learned dosing factor',
      description: 'As read from the control unit; 1 means no correction. If it shows a correction of +25 %, enter 1.25.',
      range: '0.2 <= x <= 3',
      usual: ['0.7', '1.4', 'control units limit what they learn; far outside, the value may be scaled differently'],
      example: '1.25',
    }),
    injectorRatio: wf.quantity(ratio, {
      symbol: 'q',
      label: 'Measured quantity over nominal quantity',
      description: 'From the dosing test, after the work.',
      range: '0 <= x <= 3',
      example: '0.99',
    }),
    injectorUncertainty: wf.quantity(fraction, {
      symbol: 'u',
      label: 'Uncertainty of the measured quantity (±)',
      range: '0 <= x <= 50 %',
      units: ['%'],
      default: ['3 %', 'about what three runs into a cup give; common practice, no source'],
    }),
    ureaFraction: wf.quantity(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      description: 'Weak fluid and a low quantity multiply: 30.1 % of urea and 43 mL of 50 mL make 20 % less ammonia together.',
      range: '0 <= w <= 50 %',
      units: ['%'],
      default: ['32.5 %', 'target of ISO 22241-1; measure it before you blame the injector'],
    }),
    targetRatio: wf.quantity(ratio, {
      symbol: '\\alpha_t',
      label: 'Ammonia-to-NOx ratio that the control aims at',
      range: '0.3 <= x <= 1.5',
      default: ['1', 'the chemical demand at full conversion'],
    }),
    tolerance: wf.quantity(fraction, {
      symbol: 't',
      label: 'Tolerance (±)',
      range: '0 < x <= 50 %',
      units: ['%'],
      default: ['10 %', 'as for the dosed quantity; common practice, no source'],
    }),
  },
  intermediates: {
    fluidStrength: wf.quantityOutput(ratio, { symbol: 's', label: 'Strength of the fluid over that of the standard', digits: 3 }),
    deliveredShare: wf.quantityOutput(fraction, {
      symbol: 'd',
      label: 'Ammonia delivered for one unit commanded',
      description: 'Measured quantity times strength of the fluid.',
      digits: 3,
      units: ['%'],
    }),
    resultingRatio: wf.quantityOutput(ratio, { symbol: '\\alpha', label: 'Ammonia-to-NOx ratio that results', digits: 3 }),
  },
  outputs: {
    factorToExpect: wf.quantityOutput(ratio, { symbol: 'f_e', label: 'Factor that would suit this injector and fluid', digits: 3 }),
    excess: wf.quantityOutput(fraction, {
      symbol: '\\epsilon',
      label: 'Ammonia dosed above target',
      description: 'Negative when too little is dosed.',
      digits: 3,
      units: ['%'],
    }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        consistent: 'the factor suits this injector and this fluid',
        'over-dosing': 'too much ammonia: slip and crystals will follow',
        'under-dosing': 'too little ammonia',
        undecided: 'not clear: the limit lies inside the uncertainty',
      },
    }),
  },
  answer: 'verdict',
  constants: { targetUreaFraction },
  steps: [
    wf.formula('fluidStrength', 'ureaFraction / targetUreaFraction', iso22241Part1),
    wf.formula('deliveredShare', 'injectorRatio * fluidStrength'),
    wf.formula('factorToExpect', '1 / max(0.05, deliveredShare)'),
    wf.formula('excess', 'learnedFactor * deliveredShare - 1'),
    wf.formula('resultingRatio', 'targetRatio * learnedFactor * deliveredShare', scrReactions),
    wf.verdict(
      'verdict',
      {
        'over-dosing': 'excess - (1 + excess) * injectorUncertainty > tolerance',
        'under-dosing': 'excess + (1 + excess) * injectorUncertainty < -tolerance',
        consistent: 'abs(excess) + (1 + excess) * injectorUncertainty <= tolerance',
        undecided: 'otherwise',
      },
      practice,
    ),
  ],
  assumptions: { factor_multiplies: 'The control unit multiplies the commanded quantity by the learned factor.' },
  limits: {
    other_causes: 'A factor above 1 can also come from weak fluid, low pressure, a leak or a sensor that reads high. Rule these out first.',
  },
  cautions: [cautions.makerFirst, cautions.noDefeat],
  compute(input, { constants, warn }) {
    const fluidStrength = input.ureaFraction / constants.targetUreaFraction;
    const deliveredShare = input.injectorRatio * fluidStrength;
    const resulting = dosedOverWanted(input.learnedFactor, deliveredShare);
    warn('tolerance_by_practice', 'The tolerance is common practice, not a published limit.');
    if (input.injectorRatio < 0.05) warn('no_flow', 'The injector gives next to nothing: no factor suits it.', ['injectorRatio']);
    else if (deliveredShare < 0.05) warn('no_urea', 'The fluid holds next to no urea: no factor suits it.', ['ureaFraction']);
    return {
      fluidStrength,
      deliveredShare,
      factorToExpect: 1 / Math.max(0.05, deliveredShare),
      excess: resulting - 1,
      resultingRatio: input.targetRatio * resulting,
      verdict: dosingFactorVerdict(resulting, resulting * input.injectorUncertainty, input.tolerance),
    };
  },
  advise({ verdict, fluidStrength }) {
    if (verdict === 'over-dosing') {
      return [
        { tone: 'do', text: "Relearn the factor with the vehicle maker's routine once the injector has passed its test." },
        { tone: 'do-not', text: 'Do not reset it before the cause of the old fault is repaired; it is evidence.' },
      ];
    }
    if (verdict === 'under-dosing' && fluidStrength < 0.97) {
      return [
        {
          tone: 'do',
          text: 'Drain the weak fluid and fill with fresh fluid, then repeat the dosing test: the two shortfalls multiply and make one fault.',
        },
      ];
    }
    return verdict === 'under-dosing'
      ? [{ tone: 'do', text: 'Check line pressure, filters, line and nozzle, and measure the urea content.' }]
      : [];
  },
});
