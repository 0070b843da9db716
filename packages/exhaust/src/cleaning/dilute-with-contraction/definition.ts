import * as wf from '@wallflow/calculation';
import { fraction, mass, massFraction, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { mixWithContraction, weaken } from '../mixing/kernel.js';
import { liquidInputs, liquidModel } from '../mixing/liquids.js';
import { densityOutput, densityStep, liquidConstants, massFractionStep, strengthStep, waterDensityStep } from '../mixing/working.js';
import { massBalance } from '../sources.js';

const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 5, units: ['mL', 'L', 'gal_US'] });
const massFractionOutput = (symbol: string, label: string) => wf.quantityOutput(massFraction, { symbol, label, digits: 5, units: ['%'] });

export const diluteWithContractionCalculation = wf.defineCalculation({
  id: 'dilute-with-contraction',
  subject: 'cleaning',
  title: 'Water to add when volumes do not add up',
  purpose: 'How much water brings this liquid down to a strength, and how far off is the simple rule C1 V1 = C2 V2?',
  keywords: 'contraction, ethanol, urea, dilute, C1V1, DEF, AUS 32, SCR',
  method: 'mass balance of the active substance with the density of the mix',
  inputs: {
    ...liquidInputs,
    startVolume: wf.quantity(volume, {
      symbol: 'V_1',
      label: 'Liquid at hand',
      range: '0 mL < x <= 1000 L',
      example: '500 mL',
      units: ['mL', 'L', 'gal_US', 'gal_imp'],
    }),
    startStrength: wf.quantity(fraction, {
      symbol: 'c_1',
      label: 'Strength of the liquid at hand',
      range: '0 < x <= 100 %',
      example: '75 %',
    }),
    wantedStrength: wf.quantity(fraction, { symbol: 'c_2', label: 'Strength that is needed', range: '0 < x <= 100 %', example: '35 %' }),
  },
  intermediates: {
    startMassFraction: massFractionOutput('w_1', 'Strength at hand by mass'),
    wantedMassFraction: massFractionOutput('w_2', 'Strength that is needed by mass'),
    startDensity: densityOutput('\\rho_1', 'Density of the liquid at hand'),
    wantedDensity: densityOutput('\\rho_2', 'Density of the finished mix'),
    simpleMixDensity: densityOutput('\\rho_s', 'Density of the mix by the simple rule'),
    startMass: wf.quantityOutput(mass, { symbol: 'm_1', label: 'Mass of the liquid at hand', digits: 5, units: ['g', 'kg'] }),
    waterDensity: densityOutput('\\rho_w', 'Density of water at 20 °C'),
    mixMass: wf.quantityOutput(mass, { symbol: 'm_2', label: 'Mass of the finished mix', digits: 5, units: ['g', 'kg'] }),
    simpleVolume: volumeOutput('V_{s,2}', 'Finished mix by the simple rule'),
    simpleWater: volumeOutput('V_s', 'Water by the simple rule'),
    simpleStrengthFraction: massFractionOutput('w_s', 'Strength by mass that the simple rule really gives'),
  },
  outputs: {
    waterMass: wf.quantityOutput(mass, { symbol: 'm_w', label: 'Water to add, weighed', digits: 5, units: ['g', 'kg', 'lb'] }),
    mixVolume: volumeOutput('V', 'Finished mix'),
    simpleError: volumeOutput('\\Delta V', 'Water missing by the simple rule (negative: too much)'),
    simpleStrength: wf.quantityOutput(fraction, {
      symbol: 'c_s',
      label: 'Strength that the simple rule really gives',
      digits: 4,
      units: ['%'],
    }),
    waterToAdd: volumeOutput('V_w', 'Water to add'),
  },
  constants: liquidConstants,
  answer: 'waterToAdd',
  steps: [
    massFractionStep('startMassFraction', 'startStrength', 'startDensity'),
    massFractionStep('wantedMassFraction', 'wantedStrength', 'wantedDensity'),
    densityStep('startDensity', 'startMassFraction'),
    densityStep('wantedDensity', 'wantedMassFraction'),
    waterDensityStep,
    wf.formula('startMass', 'startVolume * startDensity', massBalance),
    wf.formula('mixMass', 'startMass * startMassFraction / wantedMassFraction', massBalance),
    wf.formula('waterMass', 'mixMass - startMass', massBalance),
    wf.formula('waterToAdd', 'waterMass / waterDensity', massBalance),
    wf.formula('mixVolume', 'mixMass / wantedDensity', massBalance),
    wf.formula('simpleVolume', 'startVolume * startStrength / wantedStrength'),
    wf.formula('simpleWater', 'simpleVolume - startVolume'),
    wf.formula('simpleStrengthFraction', 'startMass * startMassFraction / (startMass + simpleWater * waterDensity)', massBalance),
    densityStep('simpleMixDensity', 'simpleStrengthFraction'),
    strengthStep('simpleStrength', 'simpleStrengthFraction', 'simpleMixDensity'),
    wf.formula('simpleError', 'waterToAdd - simpleWater'),
  ],
  assumptions: { twenty_degrees: 'All volumes are at 20 °C; alcohol grows by about 1 % in 10 K, water by 0.2 %.' },
  limits: { not_for_the_tank: 'Reductant that is off is drained, not corrected with water: this shows the arithmetic, not a repair.' },
  cautions: [cautions.flammableLiquid, cautions.makerFirst],
  dimensional: 'the densities come from empirical polynomials in kg/m³',
  compute(input) {
    const { startVolume, startStrength, wantedStrength } = input;
    const model = liquidModel(input.liquid, input.strengthBasis, { startStrength, wantedStrength });
    if (wf.isRefusal(model)) return model;
    if (wantedStrength > startStrength) {
      return wf.noSolution('water only weakens: the strength that is needed is above that of the liquid at hand', ['wantedStrength']);
    }
    const start = { volume: startVolume, massFraction: model.massFraction(startStrength) };
    const wantedMassFraction = model.massFraction(wantedStrength);
    const weakened = weaken(model.density, start, wantedMassFraction);
    const simpleVolume = (startVolume * startStrength) / wantedStrength;
    const simpleWater = simpleVolume - startVolume;
    const simple = mixWithContraction(model.density, [start, { volume: simpleWater, massFraction: 0 }]);
    return {
      startMassFraction: start.massFraction,
      wantedMassFraction,
      startDensity: model.density(start.massFraction),
      wantedDensity: model.density(wantedMassFraction),
      simpleMixDensity: model.density(simple.massFraction),
      startMass: start.volume * model.density(start.massFraction),
      waterDensity: model.density(0),
      mixMass: weakened.mass,
      waterMass: weakened.waterMass,
      mixVolume: weakened.mass / model.density(wantedMassFraction),
      simpleVolume,
      simpleWater,
      simpleStrengthFraction: simple.massFraction,
      simpleStrength: model.strength(simple.massFraction),
      simpleError: weakened.waterVolume - simpleWater,
      waterToAdd: weakened.waterVolume,
    };
  },
});
