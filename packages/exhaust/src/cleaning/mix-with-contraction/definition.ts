import * as wf from '@wallflow/calculation';
import { fraction, mass, massFraction, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { mixWithContraction, volumeFractionOf } from '../mixing/kernel.js';
import { liquidInputs, liquidModel } from '../mixing/liquids.js';
import { densityOutput, densityStep, liquidConstants, massFractionStep } from '../mixing/working.js';
import { massBalance, oimlR22 } from '../sources.js';

const partVolume = (symbol: string, label: string, example: string) =>
  wf.quantity(volume, { symbol, label, range: '0 mL < x <= 1000 L', example, units: ['mL', 'L', 'gal_US', 'gal_imp'] });
const partStrength = (symbol: string, label: string, example: string) =>
  wf.quantity(fraction, { symbol, label, range: '0 <= x <= 100 %', example });
const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 5, units: ['mL', 'L', 'gal_US'] });
const shareOutput = (symbol: string, label: string, digits = 4) => wf.quantityOutput(fraction, { symbol, label, digits, units: ['%'] });

export const mixWithContractionCalculation = wf.defineCalculation({
  id: 'mix-with-contraction',
  subject: 'cleaning',
  title: 'What two liquids really make',
  purpose: 'How much mix and what strength do two liquids give when volumes do not add up, and how wrong is it to add them?',
  keywords: 'contraction, ethanol, urea, mix, density, alcohol, DEF, AUS 32, SCR',
  method: 'masses add up; the volume follows from the density of the mix',
  inputs: {
    ...liquidInputs,
    firstVolume: partVolume('V_1', 'First part', '500 mL'),
    firstStrength: partStrength('c_1', 'Strength of the first part', '100 %'),
    secondVolume: partVolume('V_2', 'Second part', '500 mL'),
    secondStrength: partStrength('c_2', 'Strength of the second part (water: 0 %)', '0 %'),
  },
  intermediates: {
    firstDensity: densityOutput('\\rho_1', 'Density of the first part'),
    secondDensity: densityOutput('\\rho_2', 'Density of the second part'),
    firstMassFraction: wf.quantityOutput(massFraction, {
      symbol: 'w_1',
      label: 'Strength of the first part by mass',
      digits: 5,
      units: ['%'],
    }),
    secondMassFraction: wf.quantityOutput(massFraction, {
      symbol: 'w_2',
      label: 'Strength of the second part by mass',
      digits: 5,
      units: ['%'],
    }),
    totalMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Mass of the mix', digits: 5, units: ['g', 'kg'] }),
    mixDensity: densityOutput('\\rho', 'Density of the mix'),
    additiveVolume: volumeOutput('V_a', 'Sum of the volumes'),
    shrinkage: volumeOutput('\\Delta V', 'Volume lost by mixing'),
    additiveStrength: shareOutput('c_a', 'Strength if volumes are simply added', 5),
  },
  outputs: {
    massFraction: wf.quantityOutput(massFraction, { symbol: 'w', label: 'Strength by mass', digits: 5, units: ['%'] }),
    volumeFraction: wf.optional(shareOutput('\\varphi', 'Strength by volume', 5)),
    contraction: shareOutput('\\kappa', 'Shrinkage, of the sum of the volumes', 3),
    strengthError: shareOutput('\\delta', 'Error of the strength when volumes are simply added', 3),
    mixVolume: volumeOutput('V', 'Finished mix'),
  },
  constants: liquidConstants,
  answer: 'mixVolume',
  steps: [
    massFractionStep('firstMassFraction', 'firstStrength', 'firstDensity'),
    massFractionStep('secondMassFraction', 'secondStrength', 'secondDensity'),
    densityStep('firstDensity', 'firstMassFraction'),
    densityStep('secondDensity', 'secondMassFraction'),
    wf.formula('totalMass', 'firstDensity * firstVolume + secondDensity * secondVolume', massBalance),
    wf.formula(
      'massFraction',
      '(firstMassFraction * firstDensity * firstVolume + secondMassFraction * secondDensity * secondVolume) / totalMass',
      massBalance,
    ),
    densityStep('mixDensity', 'massFraction'),
    wf.formula('mixVolume', 'totalMass / mixDensity', massBalance),
    wf.formula('volumeFraction', 'massFraction * mixDensity / pureDensity', oimlR22),
    wf.formula('additiveVolume', 'firstVolume + secondVolume'),
    wf.formula('additiveStrength', '(firstStrength * firstVolume + secondStrength * secondVolume) / additiveVolume'),
    wf.cases('strengthError', {
      "strengthBasis == 'volume'": 'additiveStrength - volumeFraction',
      otherwise: 'additiveStrength - massFraction',
    }),
    wf.formula('shrinkage', 'additiveVolume - mixVolume'),
    wf.formula('contraction', 'shrinkage / additiveVolume'),
  ],
  assumptions: { twenty_degrees: 'All volumes are at 20 °C; alcohol grows by about 1 % in 10 K, water by 0.2 %.' },
  limits: { other_cleaners: 'Other cleaners have no published density tables: weigh the parts if the strength must be exact.' },
  cautions: [cautions.flammableLiquid, cautions.makerFirst],
  dimensional: 'the densities come from empirical polynomials in kg/m³',
  compute(input, { method }) {
    const { firstVolume, firstStrength, secondVolume, secondStrength } = input;
    const model = liquidModel(input.liquid, input.strengthBasis, { firstStrength, secondStrength });
    if (wf.isRefusal(model)) return model;
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
      shrinkage: mix.additiveVolume - mix.volume,
      contraction: (mix.additiveVolume - mix.volume) / mix.additiveVolume,
      mixVolume: mix.volume,
    };
  },
});
