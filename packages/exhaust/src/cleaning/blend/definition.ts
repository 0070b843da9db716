import { choice, defineCalculation, noSolution, quantity, quantityOutput } from '@wallflow/calculation';
import { fraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { massBalance, pearsonSquare } from '../sources.js';
import { alligation, blend } from './kernel.js';

const strength = (symbol: string, label: string, example: string) =>
  quantity(fraction, { symbol, label, min: '0 %', max: '100 %', example });

const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 4, units: ['mL', 'L', 'floz_US'] });

export const blendTwoStrengthsCalculation = defineCalculation({
  id: 'blend-two-strengths',
  version: '1.0.0',
  subject: 'cleaning',
  title: 'Blend two strengths',
  purpose: 'How much of a weaker and a stronger mix make the strength that is needed?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['alligation', 'Pearson square', 'strength', 'blend', 'mix'],
  method: 'alligation (crosswise differences)',
  inputs: z.strictObject({
    wantedVolume: quantity(volume, {
      symbol: 'V',
      label: 'Mix that is needed',
      above: '0 mL',
      max: '1000 L',
      example: '2 L',
      units: ['L', 'mL', 'gal_US'],
    }),
    wantedStrength: strength('c', 'Strength that is needed', '25 %'),
    weakerStrength: strength('c_1', 'Strength of the weaker mix (water: 0 %)', '10 %'),
    strongerStrength: strength('c_2', 'Strength of the stronger mix (concentrate: 100 %)', '50 %'),
    basis: choice({
      label: 'Per cent by',
      options: { volume: 'volume', mass: 'mass' },
      example: 'volume',
    }),
  }),
  intermediates: {
    strongerParts: quantityOutput(fraction, { symbol: 'p_2', label: 'Parts of the stronger mix', digits: 4, units: ['%'] }),
    weakerParts: quantityOutput(fraction, { symbol: 'p_1', label: 'Parts of the weaker mix', digits: 4, units: ['%'] }),
  },
  outputs: {
    weakerVolume: volumeOutput('V_1', 'Weaker mix to take'),
    strength: quantityOutput(fraction, { symbol: 'c_b', label: 'Strength of the blend, worked back', digits: 4, units: ['%'] }),
    strongerVolume: volumeOutput('V_2', 'Stronger mix to take'),
  },
  constants: {},
  steps: [
    { gives: 'strongerParts', tex: '[[strongerParts]] = [[wantedStrength]]-[[weakerStrength]]', source: 'pearsonSquare' },
    { gives: 'weakerParts', tex: '[[weakerParts]] = [[strongerStrength]]-[[wantedStrength]]', source: 'pearsonSquare' },
    {
      gives: 'weakerVolume',
      tex: '[[weakerVolume]] = [[wantedVolume]]\\,\\frac{[[weakerParts]]}{[[weakerParts]]+[[strongerParts]]}',
      source: 'pearsonSquare',
    },
    { gives: 'strength', text: 'Check: what is in both parts over the whole: [[strength]].', source: 'massBalance' },
    {
      gives: 'strongerVolume',
      tex: '[[strongerVolume]] = [[wantedVolume]]\\,\\frac{[[strongerParts]]}{[[weakerParts]]+[[strongerParts]]}',
      source: 'pearsonSquare',
    },
  ],
  assumptions: [{ code: 'additive_volumes', text: 'Volumes add up and both mixes are of the same cleaner.' }],
  limits: [{ code: 'same_cleaner', text: 'Never blend different cleaners: alkali and acid react and can give off gas and heat.' }],
  cautions: [cautions.caustic, cautions.makerFirst],
  sources: { pearsonSquare, massBalance },
  compute(input, { warn }) {
    const { wantedVolume, wantedStrength, weakerStrength, strongerStrength } = input;
    const parts = alligation(wantedVolume, wantedStrength, weakerStrength, strongerStrength);
    if (parts === undefined) {
      return noSolution('the strength that is needed does not lie between the two at hand: no blend of them gives it', ['wantedStrength']);
    }
    if (input.basis === 'mass') {
      warn('mass_basis', 'Per cent by mass mix by weight: read the volumes as parts by weight, or weigh both instead of measuring them.');
    }
    const check = blend([
      { amount: parts.weakerAmount, strength: weakerStrength },
      { amount: parts.strongerAmount, strength: strongerStrength },
    ]);
    return {
      strongerParts: wantedStrength - weakerStrength,
      weakerParts: strongerStrength - wantedStrength,
      weakerVolume: parts.weakerAmount,
      strongerVolume: parts.strongerAmount,
      strength: check.strength,
    };
  },
});
