import { choice, defineCalculation, isRefusal, noSolution, quantity, quantityOutput } from '@wallflow/calculation';
import { density, fraction, mass, massFraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { mixWithContraction, waterToWeaken } from '../mixing/kernel.js';
import { basisOptions, liquidModel, liquidOptions } from '../mixing/liquids.js';
import { massBalance, oimlR22, ureaDensity } from '../sources.js';

const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 5, units: ['mL', 'L', 'gal_US'] });
const massFractionOutput = (symbol: string, label: string) => quantityOutput(massFraction, { symbol, label, digits: 5, units: ['%'] });

export const diluteWithContractionCalculation = defineCalculation({
  id: 'dilute-with-contraction',
  version: '1.0.0',
  subject: 'cleaning',
  title: 'Water to add when volumes do not add up',
  purpose: 'How much water brings this liquid down to a strength, and how far off is the simple rule C1 V1 = C2 V2?',
  usedBy: ['developer', 'trainer', 'technician'],
  keywords: ['contraction', 'ethanol', 'urea', 'dilute', 'C1V1'],
  method: 'mass balance of the active substance with the density of the mix',
  inputs: z.strictObject({
    liquid: choice({ label: 'Liquids', options: liquidOptions, example: 'ethanol-water' }),
    strengthBasis: choice({ label: 'Strengths are per cent by', options: basisOptions, example: 'volume' }),
    startVolume: quantity(volume, {
      symbol: 'V_1',
      label: 'Liquid at hand',
      above: '0 mL',
      max: '1000 L',
      example: '500 mL',
      units: ['mL', 'L', 'gal_US', 'gal_imp'],
    }),
    startStrength: quantity(fraction, { symbol: 'c_1', label: 'Its strength', above: '0 %', max: '100 %', example: '75 %' }),
    wantedStrength: quantity(fraction, { symbol: 'c_2', label: 'Strength that is needed', above: '0 %', max: '100 %', example: '35 %' }),
  }),
  intermediates: {
    startMassFraction: massFractionOutput('w_1', 'Strength at hand by mass'),
    wantedMassFraction: massFractionOutput('w_2', 'Strength that is needed by mass'),
    startMass: quantityOutput(mass, { symbol: 'm_1', label: 'Mass of the liquid at hand', digits: 5, units: ['g', 'kg'] }),
    waterDensity: quantityOutput(density, { symbol: '\\rho_w', label: 'Density of water at 20 °C', digits: 6, units: ['kg/m3'] }),
    simpleWater: volumeOutput('V_s', 'Water by the simple rule'),
    simpleStrengthFraction: massFractionOutput('w_s', 'Strength by mass that the simple rule really gives'),
  },
  outputs: {
    waterMass: quantityOutput(mass, { symbol: 'm_w', label: 'Water to add, weighed', digits: 5, units: ['g', 'kg', 'lb'] }),
    mixVolume: volumeOutput('V', 'Mix in the end'),
    simpleError: volumeOutput('\\Delta V', 'Water that the simple rule leaves out (negative: too much)'),
    simpleStrength: quantityOutput(fraction, {
      symbol: 'c_s',
      label: 'Strength that the simple rule really gives',
      digits: 4,
      units: ['%'],
    }),
    waterToAdd: volumeOutput('V_w', 'Water to add'),
  },
  constants: {},
  steps: [
    { gives: 'startMassFraction', text: 'From [[startStrength]] by [[strengthBasis]]: [[startMassFraction]].', source: 'oimlR22' },
    { gives: 'wantedMassFraction', text: 'From [[wantedStrength]] by [[strengthBasis]]: [[wantedMassFraction]].', source: 'oimlR22' },
    { gives: 'startMass', text: 'Volume times the density of [[liquid]] at that strength: [[startMass]].', source: 'oimlR22' },
    { gives: 'waterDensity', text: 'The same relation at a strength of zero: [[waterDensity]].', source: 'oimlR22' },
    {
      gives: 'waterMass',
      tex: '[[waterMass]] = [[startMass]]\\left(\\frac{[[startMassFraction]]}{[[wantedMassFraction]]}-1\\right)',
      source: 'massBalance',
    },
    { gives: 'mixVolume', text: 'Mass of the mix over its density: [[mixVolume]].', source: 'oimlR22' },
    { gives: 'simpleWater', tex: '[[simpleWater]] = [[startVolume]]\\left(\\frac{[[startStrength]]}{[[wantedStrength]]}-1\\right)' },
    { gives: 'simpleStrengthFraction', text: 'Mixed with that much water: [[simpleStrengthFraction]].' },
    { gives: 'simpleStrength', text: 'On the basis of the question: [[simpleStrength]].' },
    { gives: 'simpleError', tex: '[[simpleError]] = [[waterToAdd]]-[[simpleWater]]' },
    { gives: 'waterToAdd', tex: '[[waterToAdd]] = \\frac{[[waterMass]]}{[[waterDensity]]}', source: 'massBalance' },
  ],
  assumptions: [{ code: 'twenty_degrees', text: 'All volumes are at 20 °C; alcohol grows by about 1 % in 10 K, water by 0.2 %.' }],
  limits: [
    {
      code: 'not_for_the_tank',
      text: 'Reductant that is off is drained, not corrected with water: this shows the arithmetic, not a repair.',
    },
  ],
  cautions: [cautions.flammableLiquid, cautions.makerFirst],
  sources: { oimlR22, ureaDensity, massBalance },
  dimensional: 'the densities come from empirical polynomials in kg/m³',
  compute(input) {
    const { startVolume, startStrength, wantedStrength } = input;
    const model = liquidModel(input.liquid, input.strengthBasis, { startStrength, wantedStrength });
    if (isRefusal(model)) return model;
    if (wantedStrength > startStrength) {
      return noSolution('water only weakens: the strength that is needed lies above what is at hand', ['wantedStrength']);
    }
    const start = { volume: startVolume, massFraction: model.massFraction(startStrength) };
    const wantedMassFraction = model.massFraction(wantedStrength);
    const waterToAdd = waterToWeaken(model.density, start, wantedMassFraction);
    const mixed = (water: number) => mixWithContraction(model.density, [start, { volume: water, massFraction: 0 }]);
    const simpleWater = startVolume * (startStrength / wantedStrength - 1);
    const simple = mixed(simpleWater);
    return {
      startMassFraction: start.massFraction,
      wantedMassFraction,
      startMass: start.volume * model.density(start.massFraction),
      waterDensity: model.density(0),
      waterMass: waterToAdd * model.density(0),
      mixVolume: mixed(waterToAdd).volume,
      simpleWater,
      simpleStrengthFraction: simple.massFraction,
      simpleStrength: model.strength(simple.massFraction),
      simpleError: waterToAdd - simpleWater,
      waterToAdd,
    };
  },
});
