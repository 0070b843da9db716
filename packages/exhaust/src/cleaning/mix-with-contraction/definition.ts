import { choice, defineCalculation, isRefusal, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { density, fraction, mass, massFraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { mixWithContraction, volumeFractionOf } from '../mixing/kernel.js';
import { basisOptions, liquidModel, liquidOptions } from '../mixing/liquids.js';
import { massBalance, oimlR22, ureaDensity } from '../sources.js';

const partVolume = (symbol: string, label: string, example: string) =>
  quantity(volume, { symbol, label, above: '0 mL', max: '1000 L', example, units: ['mL', 'L', 'gal_US', 'gal_imp'] });
const partStrength = (symbol: string, label: string, example: string) =>
  quantity(fraction, { symbol, label, min: '0 %', max: '100 %', example });
const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 5, units: ['mL', 'L', 'gal_US'] });
const shareOutput = (symbol: string, label: string, digits = 4) => quantityOutput(fraction, { symbol, label, digits, units: ['%'] });

export const mixWithContractionCalculation = defineCalculation({
  id: 'mix-with-contraction',
  version: '1.0.0',
  subject: 'cleaning',
  title: 'What two liquids really make',
  purpose: 'How much mix and what strength do two liquids give when volumes do not add up, and how wrong is it to add them?',
  usedBy: ['developer', 'trainer', 'technician'],
  keywords: ['contraction', 'ethanol', 'urea', 'mix', 'density', 'alcohol'],
  method: 'masses add up; the volume follows from the density of the mix',
  inputs: z.strictObject({
    liquid: choice({ label: 'Liquids', options: liquidOptions, example: 'ethanol-water' }),
    strengthBasis: choice({ label: 'Strengths are per cent by', options: basisOptions, example: 'volume' }),
    firstVolume: partVolume('V_1', 'First part', '500 mL'),
    firstStrength: partStrength('c_1', 'Strength of the first part', '100 %'),
    secondVolume: partVolume('V_2', 'Second part', '500 mL'),
    secondStrength: partStrength('c_2', 'Strength of the second part (water: 0 %)', '0 %'),
  }),
  intermediates: {
    firstDensity: quantityOutput(density, { symbol: '\\rho_1', label: 'Density of the first part', digits: 6, units: ['kg/m3', 'g/mL'] }),
    secondDensity: quantityOutput(density, { symbol: '\\rho_2', label: 'Density of the second part', digits: 6, units: ['kg/m3', 'g/mL'] }),
    firstMassFraction: quantityOutput(massFraction, {
      symbol: 'w_1',
      label: 'Strength of the first part by mass',
      digits: 5,
      units: ['%'],
    }),
    secondMassFraction: quantityOutput(massFraction, {
      symbol: 'w_2',
      label: 'Strength of the second part by mass',
      digits: 5,
      units: ['%'],
    }),
    totalMass: quantityOutput(mass, { symbol: 'm', label: 'Mass of the mix', digits: 5, units: ['g', 'kg'] }),
    mixDensity: quantityOutput(density, { symbol: '\\rho', label: 'Density of the mix', digits: 6, units: ['kg/m3', 'g/mL'] }),
    additiveVolume: volumeOutput('V_a', 'Sum of the volumes'),
    additiveStrength: shareOutput('c_a', 'Strength if volumes are simply added', 5),
  },
  outputs: {
    massFraction: quantityOutput(massFraction, { symbol: 'w', label: 'Strength by mass', digits: 5, units: ['%'] }),
    volumeFraction: optional(shareOutput('\\varphi', 'Strength by volume', 5)),
    contraction: shareOutput('\\kappa', 'Shrinkage against the sum of the volumes', 3),
    strengthError: shareOutput('\\delta', 'Error of the strength when volumes are simply added', 3),
    mixVolume: volumeOutput('V', 'Volume of the mix'),
  },
  constants: {},
  steps: [
    { gives: 'firstMassFraction', text: 'From [[firstStrength]] by [[strengthBasis]]: [[firstMassFraction]].', source: 'oimlR22' },
    { gives: 'secondMassFraction', text: 'From [[secondStrength]] by [[strengthBasis]]: [[secondMassFraction]].', source: 'oimlR22' },
    { gives: 'firstDensity', text: 'Density at 20 °C by the formula for [[liquid]]: [[firstDensity]].', source: 'oimlR22' },
    { gives: 'secondDensity', text: 'The same for the second part: [[secondDensity]].', source: 'oimlR22' },
    {
      gives: 'totalMass',
      tex: '[[totalMass]] = [[firstDensity]]\\,[[firstVolume]]+[[secondDensity]]\\,[[secondVolume]]',
      source: 'massBalance',
    },
    {
      gives: 'massFraction',
      tex: '[[massFraction]] = \\frac{[[firstMassFraction]]\\,[[firstDensity]]\\,[[firstVolume]]+[[secondMassFraction]]\\,[[secondDensity]]\\,[[secondVolume]]}{[[totalMass]]}',
      source: 'massBalance',
    },
    {
      gives: 'volumeFraction',
      text: 'By volume, for a liquid: mass fraction times density over that of the pure liquid: [[volumeFraction]].',
    },
    { gives: 'mixDensity', text: 'Density of that mix: [[mixDensity]].', source: 'oimlR22' },
    { gives: 'additiveVolume', tex: '[[additiveVolume]] = [[firstVolume]]+[[secondVolume]]' },
    {
      gives: 'additiveStrength',
      tex: '[[additiveStrength]] = \\frac{[[firstStrength]]\\,[[firstVolume]]+[[secondStrength]]\\,[[secondVolume]]}{[[additiveVolume]]}',
    },
    { gives: 'strengthError', text: 'What simple adding gives, less the real strength on the same basis: [[strengthError]].' },
    { gives: 'contraction', tex: '[[contraction]] = 1-\\frac{[[mixVolume]]}{[[additiveVolume]]}' },
    { gives: 'mixVolume', tex: '[[mixVolume]] = \\frac{[[totalMass]]}{[[mixDensity]]}', source: 'massBalance' },
  ],
  assumptions: [{ code: 'twenty_degrees', text: 'All volumes are at 20 °C; alcohol grows by about 1 % in 10 K, water by 0.2 %.' }],
  limits: [
    { code: 'other_cleaners', text: 'Other cleaners have no published density tables; weigh the parts if the strength must be exact.' },
  ],
  cautions: [cautions.flammableLiquid, cautions.makerFirst],
  sources: { oimlR22, ureaDensity, massBalance },
  dimensional: 'the densities come from empirical polynomials in kg/m³',
  compute(input, { method }) {
    const { firstVolume, firstStrength, secondVolume, secondStrength } = input;
    const model = liquidModel(input.liquid, input.strengthBasis, { firstStrength, secondStrength });
    if (isRefusal(model)) return model;
    if (input.liquid === 'urea-water') method('masses add up; density of urea solution');
    const first = { volume: firstVolume, massFraction: model.massFraction(firstStrength) };
    const second = { volume: secondVolume, massFraction: model.massFraction(secondStrength) };
    const mix = mixWithContraction(model.density, [first, second]);
    const additiveStrength = (firstStrength * firstVolume + secondStrength * secondVolume) / mix.additiveVolume;
    return {
      firstMassFraction: first.massFraction,
      secondMassFraction: second.massFraction,
      firstDensity: model.density(first.massFraction),
      secondDensity: model.density(second.massFraction),
      totalMass: mix.mass,
      massFraction: mix.massFraction,
      volumeFraction: input.liquid === 'ethanol-water' ? volumeFractionOf(model.density, mix.massFraction) : undefined,
      mixDensity: mix.mass / mix.volume,
      additiveVolume: mix.additiveVolume,
      additiveStrength,
      strengthError: additiveStrength - model.strength(mix.massFraction),
      contraction: 1 - mix.volume / mix.additiveVolume,
      mixVolume: mix.volume,
    };
  },
});
