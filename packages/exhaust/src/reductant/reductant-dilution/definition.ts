import * as wf from '@wallflow/calculation';
import { density, fraction, mass, massFraction, ratio, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { leastUrea, mostUrea } from '../named-constants.js';
import { waterDensityAt20 } from '../solution/density.js';
import { tanaka2001 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import { mixedUreaFraction, waterToReach } from './kernel.js';

export const reductantDilutionCalculation = wf.defineCalculation({
  id: 'reductant-dilution',
  subject: 'reductant',
  title: 'Reductant diluted with water',
  purpose: 'What does water in the tank do to the urea content, and how much water explains a reading?',
  keywords: 'dilution, water, urea, tank, DEF, AUS 32, SCR',
  method: 'mass fractions mix linearly by mass',
  inputs: {
    fluidVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Fluid in the tank',
      range: '0 < x <= 2000 L',
      example: '30 L',
      units: ['L'],
    }),
    ureaFraction: wf.quantity(massFraction, {
      symbol: 'w_1',
      label: 'Urea in the fluid, by mass',
      range: '0 < x <= 50 %',
      units: ['%'],
      default: ['32.5 %', 'target of ISO 22241-1'],
    }),
    fluidDensity: wf.quantity(density, {
      symbol: '\\rho',
      label: 'Density of the fluid',
      range: '990 <= x <= 1160 kg/m3',
      units: ['kg/m3'],
      default: ['1090 kg/m3', 'middle of the range of ISO 22241-1 at 20 °C'],
    }),
    waterVolume: wf.quantity(volume, {
      symbol: 'V_w',
      label: 'Water that got in',
      range: '0 <= x <= 2000 L',
      example: '2 L',
      units: ['L'],
    }),
    measuredFraction: wf.optional(
      wf.quantity(massFraction, {
        symbol: 'w_m',
        label: 'Urea content that was measured',
        description: 'Enter it to see how much water would explain it.',
        range: '0 < x <= 50 %',
        example: '30.1 %',
        units: ['%'],
      }),
    ),
  },
  intermediates: {
    fluidMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Mass of the fluid', digits: 5, units: ['kg'] }),
    waterMass: wf.quantityOutput(mass, { symbol: 'm_w', label: 'Mass of the water', digits: 5, units: ['kg'] }),
  },
  outputs: {
    waterForMeasured: wf.optional(
      wf.quantityOutput(volume, { symbol: 'V_x', label: 'Water that would explain the measured content', digits: 3, units: ['L'] }),
    ),
    demandFactor: wf.quantityOutput(ratio, { symbol: 'f', label: 'Fluid needed for the same NOx, against undiluted fluid', digits: 4 }),
    lostAmmonia: wf.quantityOutput(fraction, {
      symbol: '\\lambda',
      label: 'Ammonia missing if the dosed quantity stays the same',
      digits: 3,
      units: ['%'],
    }),
    quality: wf.choiceOutput({
      label: 'Quality',
      options: { within: 'inside the limits of ISO 22241-1', 'too-weak': 'too weak', 'too-strong': 'too strong' },
    }),
    mixedFraction: wf.quantityOutput(massFraction, { symbol: 'w', label: 'Urea in the mixture, by mass', digits: 6, units: ['%'] }),
  },
  constants: {
    leastUrea,
    mostUrea,
    waterDensity: wf.constant(density, waterDensityAt20, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: tanaka2001 }),
  },
  answer: 'mixedFraction',
  steps: [
    wf.formula('fluidMass', 'fluidDensity * fluidVolume'),
    wf.formula('waterMass', 'waterDensity * waterVolume', tanaka2001),
    wf.formula('mixedFraction', 'fluidMass * ureaFraction / (fluidMass + waterMass)'),
    wf.formula('demandFactor', 'ureaFraction / mixedFraction'),
    wf.formula('lostAmmonia', 'waterMass / (fluidMass + waterMass)'),
    wf.formula('waterForMeasured', 'fluidMass / waterDensity * (ureaFraction / measuredFraction - 1)'),
    wf.verdict(
      'quality',
      { 'too-weak': 'mixedFraction < leastUrea', 'too-strong': 'mixedFraction > mostUrea', within: 'otherwise' },
      iso22241Part1,
    ),
  ],
  assumptions: { mixed: 'The water is fully mixed in.' },
  limits: {
    not_a_repair: 'Drain fluid outside the limits; do not correct it. Tap water brings calcium and metals that poison the catalyst.',
  },
  cautions: [cautions.waste, cautions.makerFirst],
  compute(input, { constants }) {
    const fluidMass = input.fluidDensity * input.fluidVolume;
    const waterMass = constants.waterDensity * input.waterVolume;
    const mixed = mixedUreaFraction([
      { mass: fluidMass, fraction: input.ureaFraction },
      { mass: waterMass, fraction: 0 },
    ]);
    const { leastUrea, mostUrea } = constants;
    const explained =
      input.measuredFraction === undefined ? undefined : waterToReach(fluidMass, input.ureaFraction, input.measuredFraction);
    return {
      fluidMass,
      waterMass,
      mixedFraction: mixed,
      demandFactor: input.ureaFraction / mixed,
      lostAmmonia: waterMass / (fluidMass + waterMass),
      quality: mixed < leastUrea ? 'too-weak' : mixed > mostUrea ? 'too-strong' : 'within',
      waterForMeasured: explained === undefined || explained < 0 ? undefined : explained / constants.waterDensity,
    };
  },
});
