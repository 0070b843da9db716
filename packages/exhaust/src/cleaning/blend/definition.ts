import {
  choice,
  defineCalculation,
  inconsistentInputs,
  missingInputs,
  noSolution,
  optional,
  quantity,
  quantityOutput,
} from '@wallflow/calculation';
import { density, fraction, mass, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { massBalance, pearsonSquare } from '../sources.js';
import { alligation, blend } from './kernel.js';

const strength = (symbol: string, label: string, example: string) =>
  quantity(fraction, { symbol, label, min: '0 %', max: '100 %', example });

const stockDensity = (symbol: string, label: string, example: string) =>
  quantity(density, {
    symbol,
    label,
    description: 'From the safety data sheet; only to turn volume into weight or weight into volume.',
    min: '0.5 kg/L',
    max: '2 kg/L',
    example,
    units: ['kg/L', 'g/mL'],
  }).optional();

const massOutput = (symbol: string, label: string) => quantityOutput(mass, { symbol, label, digits: 4, units: ['g', 'kg', 'lb'] });
const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 4, units: ['mL', 'L', 'floz_US'] });

export const blendTwoStrengthsCalculation = defineCalculation({
  id: 'blend-two-strengths',
  version: '2.0.0',
  subject: 'cleaning',
  title: 'Blend two strengths',
  purpose: 'How much of a weaker and a stronger mix make the strength that is needed?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['alligation', 'Pearson square', 'strength', 'blend', 'mix'],
  method: 'alligation (crosswise differences)',
  inputs: z.strictObject({
    wantedVolume: quantity(volume, {
      symbol: 'V',
      label: 'Mix that is needed, by volume',
      description: 'For per cent by volume.',
      above: '0 mL',
      max: '1000 L',
      example: '2 L',
      units: ['L', 'mL', 'gal_US'],
    }).optional(),
    wantedMass: quantity(mass, {
      symbol: 'm',
      label: 'Mix that is needed, by weight',
      description: 'For per cent by mass.',
      above: '0 g',
      max: '1000 kg',
      example: '2 kg',
      units: ['kg', 'g', 'lb'],
    }).optional(),
    wantedStrength: strength('c', 'Strength that is needed', '25 %'),
    weakerStrength: strength('c_1', 'Strength of the weaker mix (water: 0 %)', '10 %'),
    strongerStrength: strength('c_2', 'Strength of the stronger mix (concentrate: 100 %)', '50 %'),
    basis: choice({
      label: 'Per cent by',
      options: { volume: 'volume', mass: 'mass' },
      example: 'volume',
    }),
    weakerDensity: stockDensity('\\rho_1', 'Density of the weaker mix', '1.01 kg/L'),
    strongerDensity: stockDensity('\\rho_2', 'Density of the stronger mix', '1.05 kg/L'),
  }),
  example: { wantedVolume: '2 L' },
  intermediates: {
    strongerParts: quantityOutput(fraction, { symbol: 'p_2', label: 'Parts of the stronger mix', digits: 4, units: ['%'] }),
    weakerParts: quantityOutput(fraction, { symbol: 'p_1', label: 'Parts of the weaker mix', digits: 4, units: ['%'] }),
  },
  outputs: {
    weakerVolume: optional(volumeOutput('V_1', 'Weaker mix to take, by volume')),
    strongerVolume: optional(volumeOutput('V_2', 'Stronger mix to take, by volume')),
    weakerMass: optional(massOutput('m_1', 'Weaker mix to take, by weight')),
    strongerMass: optional(massOutput('m_2', 'Stronger mix to take, by weight')),
    strength: quantityOutput(fraction, { symbol: 'c_b', label: 'Strength of the blend, worked back', digits: 4, units: ['%'] }),
  },
  constants: {},
  steps: [
    { gives: 'strongerParts', tex: '[[strongerParts]] = [[wantedStrength]]-[[weakerStrength]]', source: 'pearsonSquare' },
    { gives: 'weakerParts', tex: '[[weakerParts]] = [[strongerStrength]]-[[wantedStrength]]', source: 'pearsonSquare' },
    {
      gives: 'weakerVolume',
      text: 'Of the volume that is needed, the weaker parts over all parts; per cent by mass: the weight over its density: [[weakerVolume]].',
      source: 'pearsonSquare',
    },
    {
      gives: 'strongerVolume',
      text: 'The rest; per cent by mass: the weight over its density: [[strongerVolume]].',
      source: 'pearsonSquare',
    },
    {
      gives: 'weakerMass',
      text: 'Of the weight that is needed, the weaker parts over all parts; per cent by volume: volume times density: [[weakerMass]].',
      source: 'pearsonSquare',
    },
    { gives: 'strongerMass', text: 'The rest; per cent by volume: volume times density: [[strongerMass]].', source: 'pearsonSquare' },
    { gives: 'strength', text: 'Check: what is in both parts over the whole: [[strength]].', source: 'massBalance' },
  ],
  assumptions: [
    {
      code: 'additive_volumes',
      text: 'Both mixes are of the same cleaner. By volume, volumes are taken to add up; weights always do.',
    },
  ],
  limits: [{ code: 'same_cleaner', text: 'Never blend different cleaners: alkali and acid react and can give off gas and heat.' }],
  cautions: [cautions.caustic, cautions.makerFirst],
  sources: { pearsonSquare, massBalance },
  compute(input) {
    const { wantedVolume, wantedMass, wantedStrength, weakerStrength, strongerStrength } = input;
    const byMass = input.basis === 'mass';
    const wanted = byMass ? wantedMass : wantedVolume;
    const [asked, misplaced] = byMass ? (['wantedMass', 'wantedVolume'] as const) : (['wantedVolume', 'wantedMass'] as const);
    if ((byMass ? wantedVolume : wantedMass) !== undefined) {
      return inconsistentInputs('per cent by mass go with a weight, per cent by volume with a volume', [misplaced], ['basis']);
    }
    if (wanted === undefined) return missingInputs(asked);
    const parts = alligation(wanted, wantedStrength, weakerStrength, strongerStrength);
    if (parts === undefined) {
      return noSolution('the strength that is needed does not lie between the two at hand: no blend of them gives it', ['wantedStrength']);
    }
    const volumeAndMass = (amount: number, stockDensity: number | undefined) => {
      const other = stockDensity === undefined ? undefined : byMass ? amount / stockDensity : amount * stockDensity;
      return byMass ? { volume: other, mass: amount } : { volume: amount, mass: other };
    };
    const weaker = volumeAndMass(parts.weakerAmount, input.weakerDensity);
    const stronger = volumeAndMass(parts.strongerAmount, input.strongerDensity);
    const check = blend([
      { amount: parts.weakerAmount, strength: weakerStrength },
      { amount: parts.strongerAmount, strength: strongerStrength },
    ]);
    return {
      strongerParts: wantedStrength - weakerStrength,
      weakerParts: strongerStrength - wantedStrength,
      weakerVolume: weaker.volume,
      strongerVolume: stronger.volume,
      weakerMass: weaker.mass,
      strongerMass: stronger.mass,
      strength: check.strength,
    };
  },
});
