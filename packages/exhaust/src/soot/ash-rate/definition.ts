import { constant, defineCalculation, missingInputs, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import {
  density,
  fraction,
  length,
  mass,
  massConcentration,
  massFraction,
  massPerDistance,
  massRatio,
  volume,
  volumePerDistance,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { ashGuide, ashMassBalance, ashPractice, ashReview2019 } from '../sources.js';
import { ashFromAdditive, ashFromOil, ashShare, distanceToAshLimit } from './kernel.js';

/** Fe₂O₃ per iron by mass: 159.69 / (2 · 55.845). */
const ironOxidePerIron = 159.687 / (2 * 55.845);

export const ashRateCalculation = defineCalculation({
  id: 'ash-rate',
  version: '1.0.0',
  subject: 'soot',
  title: 'Ash from oil and additive, and the distance to cleaning',
  purpose: 'How fast does ash build up, how much is in the filter by now, and when must it be cleaned?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['ash', 'sulphated ash', 'oil consumption', 'service interval', 'additive'],
  method: 'mass balance of the ash of oil and additive',
  inputs: z.strictObject({
    oilConsumption: quantity(volumePerDistance, {
      symbol: 'q_o',
      label: 'Oil consumption',
      min: '0 L/1000km',
      max: '20 L/1000km',
      usual: ['0 L/1000km', '3 L/1000km'],
      usualReason: 'a healthy car uses 0.02 to 0.3 L per 1000 km, a truck up to 1 L',
      example: '0.12 L/1000km',
      units: ['L/1000km'],
    }),
    sulphatedAsh: quantity(massFraction, {
      symbol: 'w_{SA}',
      label: 'Sulphated ash of the oil',
      description: 'From the data sheet of the oil.',
      min: '0 %',
      max: '3 %',
      usual: ['0.2 %', '2 %'],
      usualReason: { below: 'even low-ash oils have about 0.5 %', above: 'older oils end near 1.8 %' },
      example: '0.8 %',
      units: ['%'],
    }),
    capture: quantityWithDefault(fraction, {
      symbol: '\\eta_a',
      label: "Share of the oil's ash that stays in the filter",
      min: '0 %',
      max: '100 %',
      usual: ['20 %', '70 %'],
      usualReason: 'published shares lie between 20 % and 70 %',
      example: '60 %',
      default: '60 %',
      defaultReason: 'towards the upper end of 20 % to 70 %: the safe side',
    }),
    oilDensity: quantityWithDefault(density, {
      symbol: '\\rho_o',
      label: 'Density of the oil',
      min: '0.7 kg/L',
      max: '1 kg/L',
      example: '0.85 kg/L',
      default: '0.85 kg/L',
      defaultReason: 'usual engine oil, from memory',
      units: ['kg/L', 'kg/m3'],
    }),
    distance: quantity(length, {
      symbol: 's',
      label: 'Distance on this filter',
      description: 'Since it was new or last cleaned of ash.',
      min: '0 km',
      max: '2000000 km',
      example: '146300 km',
      units: ['km', 'mi'],
    }),
    initialAsh: quantityWithDefault(mass, {
      symbol: 'm_{a,0}',
      label: 'Ash at the beginning of that distance',
      description: 'What a cleaning left, measured; zero only for a new filter.',
      min: '0 g',
      max: '5 kg',
      example: '0 g',
      default: '0 g',
      defaultReason: 'a new filter',
      units: ['g', 'kg'],
    }),
    ashLimit: quantity(mass, {
      symbol: 'm_{a,max}',
      label: 'Ash at which the filter is cleaned or replaced',
      above: '0 g',
      max: '10 kg',
      usual: ['10 g', '1 kg'],
      usualReason: 'a car some 40 to 80 g, a truck 200 to 600 g',
      example: '150 g',
      units: ['g', 'kg'],
    }),
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      min: '0.1 L',
      max: '200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    sootLimit: quantityWithDefault(massConcentration, {
      symbol: "m'_{s,max}",
      label: 'Soot load limit',
      min: '0.5 g/L',
      max: '20 g/L',
      example: '6 g/L',
      default: '6 g/L',
      defaultReason: 'the only limit with a published source',
      units: ['g/L'],
    }),
    fuelConsumption: quantity(volumePerDistance, {
      symbol: 'q_f',
      label: 'Fuel consumption',
      description: 'Only with a metal additive in the fuel.',
      above: '0 L/100km',
      max: '100 L/100km',
      usual: ['3 L/100km', '60 L/100km'],
      usualReason: 'a small car uses some 4 L/100km, a truck up to 60 L/100km',
      example: '16 L/100km',
      units: ['L/100km', 'mpg_imp', 'mpg_US'],
    }).optional(),
    additiveMetal: quantity(massConcentration, {
      symbol: 'c_m',
      label: 'Metal of the additive per volume of fuel',
      description: 'Iron or cerium of a fuel-borne catalyst; from its data sheet.',
      min: '0 mg/L',
      max: '200 mg/L',
      example: '10 mg/L',
      units: ['mg/L', 'g/m3'],
    }).optional(),
    oxidePerMetal: quantity(massRatio, {
      symbol: 'r_{ox}',
      label: 'Oxide per metal, by mass',
      min: '1',
      max: '2',
      example: '1.43',
      units: ['1'],
    }).optional(),
  }),
  intermediates: {
    oilRate: quantityOutput(massPerDistance, { symbol: 'r_o', label: 'Ash from oil', digits: 3, units: ['g/1000km'] }),
    additiveRate: quantityOutput(massPerDistance, { symbol: 'r_a', label: 'Ash from the additive', digits: 3, units: ['g/1000km'] }),
  },
  outputs: {
    rate: quantityOutput(massPerDistance, { symbol: 'r', label: 'Ash into the filter', digits: 3, units: ['g/1000km'] }),
    ash: quantityOutput(mass, { symbol: 'm_a', label: 'Ash in the filter by now', digits: 3, units: ['g', 'kg'] }),
    ashLoad: quantityOutput(massConcentration, { symbol: "m'_a", label: 'Ash load by now', digits: 3, units: ['g/L'] }),
    share: quantityOutput(fraction, {
      symbol: 'f_a',
      label: 'Share of ash in the deposit when soot is at its limit',
      digits: 3,
      units: ['%'],
    }),
    serviceDistance: optional(
      quantityOutput(length, { symbol: 's_{max}', label: 'Distance from empty to the ash limit', digits: 3, units: ['km', 'mi'] }),
    ),
    distanceLeft: optional(
      quantityOutput(length, { symbol: 's_{left}', label: 'Distance left to the ash limit', digits: 3, units: ['km', 'mi'] }),
    ),
  },
  constants: {
    ironOxide: constant(massRatio, ironOxidePerIron, { symbol: 'r_{Fe}', label: 'Iron oxide per iron, by mass', source: 'ashMassBalance' }),
  },
  steps: [
    {
      gives: 'oilRate',
      tex: '[[oilRate]] = [[oilConsumption]]\\,[[oilDensity]]\\,[[sulphatedAsh]]\\,[[capture]]',
      source: 'ashMassBalance',
    },
    {
      gives: 'additiveRate',
      text: 'Fuel used times metal content times oxide per metal; zero without an additive.',
      source: 'ashMassBalance',
    },
    { gives: 'rate', tex: '[[rate]] = [[oilRate]]+[[additiveRate]]' },
    { gives: 'ashLoad', tex: '[[ashLoad]] = \\frac{[[ash]]}{[[filterVolume]]}' },
    { gives: 'share', tex: '[[share]] = \\frac{[[ash]]}{[[ash]]+[[sootLimit]]\\,[[filterVolume]]}', source: 'ashGuide' },
    { gives: 'serviceDistance', tex: '[[serviceDistance]] = \\frac{[[ashLimit]]}{[[rate]]}' },
    { gives: 'distanceLeft', tex: '[[distanceLeft]] = \\frac{[[ashLimit]]-[[ash]]}{[[rate]]}' },
    { gives: 'ash', tex: '[[ash]] = [[initialAsh]]+[[rate]]\\,[[distance]]', source: 'ashMassBalance' },
  ],
  assumptions: [
    {
      code: 'steady_consumption',
      text: 'Oil consumption and oil stay as they are; all metal of an additive stays in the filter as oxide.',
    },
  ],
  limits: [
    { code: 'model_not_measurement', text: 'This is a model: weigh the filter, or measure the channel depth, before acting on it.' },
    {
      code: 'oil_defects',
      text: 'A leaking turbocharger or injector brings many times the ash; about a tenth comes from wear, fuel and coolant.',
    },
  ],
  cautions: [
    {
      code: 'never_reset_untrue',
      text: 'Set the ash counter of a vehicle to what is measured, never to zero because a filter was cleaned.',
    },
    cautions.ashDust,
  ],
  sources: { ashMassBalance, ashReview2019, ashGuide, ashPractice },
  compute(input, { constants, assume }) {
    const oilRate = ashFromOil(input);
    const { fuelConsumption, additiveMetal, ashLimit, filterVolume } = input;
    if (additiveMetal !== undefined && fuelConsumption === undefined) {
      return missingInputs('fuelConsumption');
    }
    if (additiveMetal !== undefined && input.oxidePerMetal === undefined)
      assume('iron_additive', 'The metal of the additive is iron (1.43 g of oxide per gram).');
    const additiveRate = ashFromAdditive(fuelConsumption ?? 0, additiveMetal ?? 0, input.oxidePerMetal ?? constants.ironOxide);
    const rate = oilRate + additiveRate;
    const ash = input.initialAsh + rate * input.distance;
    return {
      oilRate,
      additiveRate,
      rate,
      ash,
      ashLoad: ash / filterVolume,
      share: ashShare(ash, input.sootLimit * filterVolume),
      serviceDistance: distanceToAshLimit(0, ashLimit, rate),
      distanceLeft: distanceToAshLimit(ash, ashLimit, rate),
    };
  },
  advise({ ash }, { ashLimit }) {
    if (ash < 0.5 * ashLimit) return [];
    if (ash < ashLimit)
      return [{ tone: 'note', text: 'Over half of the ash limit: no regeneration and no cleaning on the vehicle takes ash out.' }];
    return [{ tone: 'do', text: 'Remove the filter and clean it of ash, or replace it; weigh it before and after.' }];
  },
});
