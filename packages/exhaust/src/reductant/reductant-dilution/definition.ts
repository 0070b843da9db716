import { choiceOutput, constant, defineCalculation, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { density, fraction, mass, massFraction, ratio, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { iso22241Limits } from '../reductant-concentration/kernel.js';
import { waterDensityAt20 } from '../solution/density.js';
import { tanaka2001 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import { mixedFraction, waterToReach } from './kernel.js';

export const reductantDilutionCalculation = defineCalculation({
  id: 'reductant-dilution',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Reductant diluted with water',
  purpose: 'What does water in the tank do to the urea content, and how much water explains a reading?',
  usedBy: ['technician', 'trainer'],
  keywords: ['dilution', 'water', 'urea', 'tank'],
  method: 'mass fractions mix linearly by mass',
  inputs: z.strictObject({
    fluidVolume: quantity(volume, {
      symbol: 'V',
      label: 'Reductant in the tank',
      above: '0 L',
      max: '2000 L',
      example: '15 L',
      units: ['L'],
    }),
    ureaFraction: quantityWithDefault(massFraction, {
      symbol: 'w_1',
      label: 'Urea in it, by mass',
      above: '0 %',
      max: '50 %',
      example: '32.5 %',
      units: ['%'],
      default: '32.5 %',
      defaultReason: 'target of ISO 22241-1',
    }),
    fluidDensity: quantityWithDefault(density, {
      symbol: '\\rho',
      label: 'Density of it',
      min: '990 kg/m3',
      max: '1160 kg/m3',
      example: '1090 kg/m3',
      units: ['kg/m3'],
      default: '1090 kg/m3',
      defaultReason: 'middle of the range of ISO 22241-1 at 20 °C',
    }),
    waterVolume: quantity(volume, { symbol: 'V_w', label: 'Water that got in', min: '0 L', max: '2000 L', example: '2 L', units: ['L'] }),
    measuredFraction: quantity(massFraction, {
      symbol: 'w_m',
      label: 'Urea content that was measured',
      description: 'Give it to get the water that would explain it.',
      above: '0 %',
      max: '50 %',
      example: '29 %',
      units: ['%'],
    }).optional(),
  }),
  intermediates: {
    fluidMass: quantityOutput(mass, { symbol: 'm', label: 'Mass of the reductant', digits: 5, units: ['kg'] }),
    waterMass: quantityOutput(mass, { symbol: 'm_w', label: 'Mass of the water', digits: 5, units: ['kg'] }),
  },
  outputs: {
    waterForMeasured: optional(
      quantityOutput(volume, { symbol: 'V_x', label: 'Water that would explain the measured content', digits: 3, units: ['L'] }),
    ),
    demandFactor: quantityOutput(ratio, { symbol: 'f', label: 'Fluid needed for the same NOx, against before', digits: 4 }),
    lostAmmonia: quantityOutput(fraction, {
      symbol: '\\lambda',
      label: 'Ammonia missing if the dosed quantity stays the same',
      digits: 3,
      units: ['%'],
    }),
    quality: choiceOutput({
      label: 'Quality',
      options: { within: 'inside the limits of ISO 22241-1', 'too-weak': 'too weak', 'too-strong': 'too strong' },
    }),
    mixedFraction: quantityOutput(massFraction, { symbol: 'w', label: 'Urea in the mixture, by mass', digits: 6, units: ['%'] }),
  },
  constants: {
    waterDensity: constant(density, waterDensityAt20, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: 'tanaka2001' }),
  },
  steps: [
    { gives: 'fluidMass', tex: '[[fluidMass]] = [[fluidDensity]]\\,[[fluidVolume]]' },
    { gives: 'waterMass', tex: '[[waterMass]] = [[waterDensity]]\\,[[waterVolume]]', source: 'tanaka2001' },
    {
      gives: 'waterForMeasured',
      tex: '[[waterForMeasured]] = \\frac{[[fluidMass]]}{[[waterDensity]]}\\left(\\frac{[[ureaFraction]]}{[[measuredFraction]]}-1\\right)',
    },
    { gives: 'demandFactor', tex: '[[demandFactor]] = \\frac{[[ureaFraction]]}{[[mixedFraction]]}' },
    { gives: 'lostAmmonia', tex: '[[lostAmmonia]] = 1-\\frac{[[mixedFraction]]}{[[ureaFraction]]}' },
    { gives: 'quality', text: 'Mixture against 31.8 % to 33.2 %.', source: 'iso22241Part1' },
    { gives: 'mixedFraction', tex: '[[mixedFraction]] = \\frac{[[fluidMass]]\\,[[ureaFraction]]}{[[fluidMass]]+[[waterMass]]}' },
  ],
  assumptions: [{ code: 'mixed', text: 'The water is fully mixed in.' }],
  limits: [
    {
      code: 'not_a_repair',
      text: 'Fluid that is off is drained, not corrected: water from the tap brings calcium and metals that poison the catalyst.',
    },
  ],
  cautions: [cautions.waste, cautions.makerFirst],
  sources: { iso22241Part1, tanaka2001 },
  compute(input, { constants }) {
    const fluidMass = input.fluidDensity * input.fluidVolume;
    const waterMass = constants.waterDensity * input.waterVolume;
    const mixed = mixedFraction([
      { mass: fluidMass, fraction: input.ureaFraction },
      { mass: waterMass, fraction: 0 },
    ]);
    const [low, high] = iso22241Limits.ureaFraction;
    const explained =
      input.measuredFraction === undefined ? undefined : waterToReach(fluidMass, input.ureaFraction, input.measuredFraction);
    return {
      fluidMass,
      waterMass,
      mixedFraction: mixed,
      demandFactor: input.ureaFraction / mixed,
      lostAmmonia: 1 - mixed / input.ureaFraction,
      quality: mixed < low ? 'too-weak' : mixed > high ? 'too-strong' : 'within',
      waterForMeasured: explained === undefined || explained < 0 ? undefined : explained / constants.waterDensity,
    };
  },
});
