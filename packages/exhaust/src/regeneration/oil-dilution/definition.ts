import { defineCalculation, optional, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { density, fraction, length, mass, massFraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { dilutionBalance, dilutionPractice } from '../sources.js';
import { eventsUntil, fuelInOil, settledFuelInOil } from './kernel.js';

export const oilDilutionCalculation = defineCalculation({
  id: 'oil-dilution',
  version: '1.0.0',
  subject: 'regeneration',
  title: 'Fuel in the engine oil by regenerations',
  purpose: 'How much fuel do regenerations leave in the oil, and when must it be changed because of it?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['oil dilution', 'post-injection', 'rising oil level', 'oil change'],
  method: 'mass balance of the fuel in the oil from regeneration to regeneration',
  inputs: z.strictObject({
    oilVolume: quantity(volume, {
      symbol: 'V_o',
      label: 'Oil filling',
      above: '0 L',
      max: '100 L',
      usual: ['2 L', '50 L'],
      usualReason: 'a car has 4 to 8 L, a truck up to 40 L',
      example: '5 L',
      units: ['L', 'qt_US'],
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
    fuelPerEvent: quantity(mass, {
      symbol: 'm_i',
      label: 'Fuel injected late in one regeneration',
      min: '0 g',
      max: '20 kg',
      usual: ['0 g', '5 kg'],
      usualReason: 'a car injects some 200 to 500 g',
      example: '250 g',
      units: ['g', 'kg'],
    }),
    shareToOil: quantity(fraction, {
      symbol: 'f_o',
      label: 'Share of it that gets into the oil',
      description: 'Late injection in the cylinder wets the wall; an injector in the exhaust leaves nothing in the oil.',
      min: '0 %',
      max: '50 %',
      example: '5 %',
      units: ['%'],
    }),
    evaporated: quantity(fraction, {
      symbol: 'f_e',
      label: 'Share of the fuel in the oil that evaporates until the next regeneration',
      description: 'Hot driving drives fuel out; short trips do not.',
      min: '0 %',
      max: '100 %',
      example: '20 %',
      units: ['%'],
    }),
    distanceBetween: quantity(length, {
      symbol: 'd',
      label: 'Distance between two regenerations',
      above: '0 km',
      max: '10000 km',
      usual: ['50 km', '1500 km'],
      usualReason: { below: 'so often is a fault: look for its cause', above: 'control units hardly ever wait so long' },
      example: '300 km',
      units: ['km', 'mi'],
    }),
    distanceSinceChange: quantity(length, {
      symbol: 's',
      label: 'Distance since the oil change',
      min: '0 km',
      max: '200000 km',
      example: '8000 km',
      units: ['km', 'mi'],
    }),
    limit: quantityWithDefault(massFraction, {
      symbol: 'w_{max}',
      label: 'Fuel content at which the oil is changed',
      min: '0.5 %',
      max: '20 %',
      example: '4 %',
      default: '4 %',
      defaultReason: 'the safe end of 4 % to 7 %; common practice, no source',
      units: ['%'],
    }),
  }),
  intermediates: {
    fuelMass: quantityOutput(mass, { symbol: 'm_f', label: 'Fuel in the oil now', digits: 3, units: ['g', 'kg'] }),
  },
  outputs: {
    content: quantityOutput(massFraction, { symbol: 'w', label: 'Fuel content of the oil now', digits: 3, units: ['%'] }),
    settledContent: optional(
      quantityOutput(massFraction, { symbol: 'w_\\infty', label: 'Fuel content at which it settles', digits: 3, units: ['%'] }),
    ),
    distanceToLimit: optional(
      quantityOutput(length, {
        symbol: 's_{max}',
        label: 'Distance from now until the oil must be changed because of fuel',
        digits: 3,
        units: ['km', 'mi'],
      }),
    ),
    levelRise: quantityOutput(volume, { symbol: '\\Delta V', label: 'Rise of the oil filling', digits: 3, units: ['L', 'mL'] }),
  },
  constants: {},
  steps: [
    {
      gives: 'fuelMass',
      tex: '[[fuelMass]] = [[fuelPerEvent]]\\,[[shareToOil]]\\,\\frac{1-\\left(1-[[evaporated]]\\right)^{[[distanceSinceChange]]/[[distanceBetween]]}}{[[evaporated]]}',
      source: 'dilutionBalance',
    },
    { gives: 'settledContent', text: 'The same for endlessly many regenerations.', source: 'dilutionBalance' },
    {
      gives: 'distanceToLimit',
      text: 'Distance at which the content reaches [[limit]], less the distance driven.',
      source: 'dilutionBalance',
    },
    { gives: 'levelRise', text: 'Volume of the fuel, taken with the density of the oil.' },
    { gives: 'content', tex: '[[content]] = \\frac{[[fuelMass]]}{[[fuelMass]]+[[oilVolume]]\\,[[oilDensity]]}', source: 'dilutionBalance' },
  ],
  assumptions: [
    {
      code: 'even_intervals',
      text: 'Regenerations come at even distances; every one leaves the same fuel; oil that is burnt is topped up.',
    },
    { code: 'worst_moment', text: 'The content is that right after a regeneration, when it is highest.' },
  ],
  limits: [
    {
      code: 'estimate',
      text: 'The shares differ widely between engines: a laboratory analysis of the oil is the proof, not this estimate.',
    },
  ],
  cautions: [
    {
      code: 'diluted_oil',
      text: 'Oil above the maximum mark or above 4 % fuel can feed a runaway of the engine: change it before any forced regeneration.',
    },
    cautions.makerFirst,
  ],
  sources: { dilutionBalance, dilutionPractice },
  compute(input) {
    const oil = input.oilVolume * input.oilDensity;
    const model = { fuelPerEvent: input.fuelPerEvent * input.shareToOil, evaporated: input.evaporated };
    const fuelMass = fuelInOil(model, input.distanceSinceChange / input.distanceBetween);
    const settled = settledFuelInOil(model);
    const content = (fuel: number) => fuel / (fuel + oil);
    const events = eventsUntil(model, (oil * input.limit) / (1 - input.limit));
    return {
      fuelMass,
      content: content(fuelMass),
      settledContent: settled === undefined ? undefined : content(settled),
      distanceToLimit: events === undefined ? undefined : Math.max(0, events * input.distanceBetween - input.distanceSinceChange),
      levelRise: fuelMass / input.oilDensity,
    };
  },
  advise({ content }, { limit }) {
    if (content >= limit) return [{ tone: 'do', text: 'Change the oil now, before any forced regeneration.' }];
    if (content >= 0.02) return [{ tone: 'note', text: 'Above 2 %: watch the oil level and shorten the oil change interval.' }];
    return [];
  },
});
