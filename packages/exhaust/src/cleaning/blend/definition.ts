import * as wf from '@wallflow/calculation';
import { density, fraction, mass, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { massBalance, pearsonSquare } from '../sources.js';
import { alligation, blendedLiquid } from './kernel.js';

const strength = (symbol: string, label: string, example: string) =>
  wf.quantity(fraction, { symbol, label, range: '0 <= x <= 100 %', example });

const stockDensity = (symbol: string, label: string, example: string) =>
  wf.optional(
    wf.quantity(density, {
      symbol,
      label,
      description: 'From the safety data sheet; only to turn volume into weight or weight into volume.',
      range: '0.5 <= x <= 2 kg/L',
      example,
      units: ['kg/L', 'g/mL'],
    }),
  );

const massOutput = (symbol: string, label: string) => wf.quantityOutput(mass, { symbol, label, digits: 4, units: ['g', 'kg', 'lb'] });
const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 4, units: ['mL', 'L', 'floz_US'] });

export const blendTwoStrengthsCalculation = wf.defineCalculation({
  id: 'blend-two-strengths',
  subject: 'cleaning',
  title: 'Blend two strengths',
  purpose: 'How much of a weaker and a stronger mix make the strength that is needed?',
  keywords: 'alligation, Pearson square, strength, blend, mix',
  method: 'alligation (crosswise differences)',
  inputs: {
    strengthBasis: wf.choice({ label: 'Strengths are per cent by', options: { volume: 'volume', mass: 'mass' }, example: 'volume' }),
    ...wf.relevantWhen('strengthBasis', 'volume', {
      wantedVolume: wf.quantity(volume, {
        symbol: 'V',
        label: 'Finished mix that is needed',
        range: '0 mL < x <= 1000 L',
        example: '2 L',
        units: ['L', 'mL', 'gal_US'],
      }),
    }),
    ...wf.relevantWhen('strengthBasis', 'mass', {
      wantedMass: wf.quantity(mass, {
        symbol: 'm',
        label: 'Mix that is needed, by weight',
        range: '0 g < x <= 1000 kg',
        example: '2 kg',
        units: ['kg', 'g', 'lb'],
      }),
    }),
    wantedStrength: strength('c', 'Strength that is needed', '20 %'),
    weakerStrength: strength('c_1', 'Strength of the weaker mix (water: 0 %)', '16.7 %'),
    strongerStrength: strength('c_2', 'Strength of the stronger mix (concentrate: 100 %)', '100 %'),
    weakerDensity: stockDensity('\\rho_1', 'Density of the weaker mix', '1.01 kg/L'),
    strongerDensity: stockDensity('\\rho_2', 'Density of the stronger mix', '1.08 kg/L'),
  },
  intermediates: {
    strongerParts: wf.quantityOutput(fraction, { symbol: 'p_2', label: 'Parts of the stronger mix', digits: 4, units: ['%'] }),
    weakerParts: wf.quantityOutput(fraction, { symbol: 'p_1', label: 'Parts of the weaker mix', digits: 4, units: ['%'] }),
    strongerShare: wf.quantityOutput(fraction, { symbol: 's_2', label: 'Share of the stronger mix in the blend', digits: 4, units: ['%'] }),
  },
  outputs: {
    weakerVolume: wf.optional(volumeOutput('V_1', 'Weaker mix to take, by volume')),
    strongerVolume: wf.optional(volumeOutput('V_2', 'Stronger mix to take, by volume')),
    weakerMass: wf.optional(massOutput('m_1', 'Weaker mix to take, by weight')),
    strongerMass: wf.optional(massOutput('m_2', 'Stronger mix to take, by weight')),
    strength: wf.quantityOutput(fraction, { symbol: 'c_b', label: 'Strength of the finished mix, checked', digits: 4, units: ['%'] }),
  },
  answer: 'strength',
  steps: [
    wf.formula('strongerParts', 'wantedStrength - weakerStrength', pearsonSquare),
    wf.formula('weakerParts', 'strongerStrength - wantedStrength', pearsonSquare),
    wf.formula('strongerShare', 'strongerParts / (weakerParts + strongerParts)', pearsonSquare),
    wf.cases('strongerVolume', {
      "strengthBasis == 'volume'": 'strongerShare * wantedVolume',
      otherwise: 'strongerShare * wantedMass / strongerDensity',
    }),
    wf.cases('weakerVolume', {
      "strengthBasis == 'volume'": 'wantedVolume - strongerVolume',
      otherwise: '(1 - strongerShare) * wantedMass / weakerDensity',
    }),
    wf.cases('strongerMass', {
      "strengthBasis == 'mass'": 'strongerShare * wantedMass',
      otherwise: 'strongerVolume * strongerDensity',
    }),
    wf.cases('weakerMass', { "strengthBasis == 'mass'": 'wantedMass - strongerMass', otherwise: 'weakerVolume * weakerDensity' }),
    wf.formula(
      'strength',
      'strongerShare * strongerStrength + (1 - strongerShare) * weakerStrength',
      massBalance,
      undefined,
      'The check: what is in both parts over the whole.',
    ),
  ],
  assumptions: { additive_volumes: 'Both mixes are of the same cleaner. By volume, volumes are taken to add up; weights always do.' },
  limits: { same_cleaner: 'Never blend different cleaners: alkali and acid react and can give off gas and heat.' },
  cautions: [cautions.caustic, cautions.makerFirst],
  compute(input) {
    const { wantedStrength, weakerStrength, strongerStrength } = input;
    const byMass = input.strengthBasis === 'mass';
    const wanted = wf.known(byMass ? input.wantedMass : input.wantedVolume);
    const parts = alligation(wanted, wantedStrength, weakerStrength, strongerStrength);
    if (parts === undefined) {
      return wf.noSolution('the strength that is needed does not lie between the two at hand: no blend of them gives it', [
        'wantedStrength',
      ]);
    }
    const volumeAndMass = (amount: number, stockDensity: number | undefined) => {
      const other = stockDensity === undefined ? undefined : byMass ? amount / stockDensity : amount * stockDensity;
      return byMass ? { volume: other, mass: amount } : { volume: amount, mass: other };
    };
    const weaker = volumeAndMass(parts.weakerAmount, input.weakerDensity);
    const stronger = volumeAndMass(parts.strongerAmount, input.strongerDensity);
    const check = blendedLiquid([
      { amount: parts.weakerAmount, strength: weakerStrength },
      { amount: parts.strongerAmount, strength: strongerStrength },
    ]);
    return {
      strongerParts: wantedStrength - weakerStrength,
      weakerParts: strongerStrength - wantedStrength,
      strongerShare: parts.strongerAmount / wanted,
      weakerVolume: weaker.volume,
      strongerVolume: stronger.volume,
      weakerMass: weaker.mass,
      strongerMass: stronger.mass,
      strength: check.strength,
    };
  },
});
