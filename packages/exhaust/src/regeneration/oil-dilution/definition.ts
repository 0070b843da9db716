import * as wf from '@wallflow/calculation';
import { density, fraction, length, mass, massFraction, ratio, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { dilutionBalance, dilutionPractice } from '../sources.js';
import { eventsUntil, fuelInOil, settledFuelInOil } from './kernel.js';

export const oilDilutionCalculation = wf.defineCalculation({
  id: 'oil-dilution',
  subject: 'regeneration',
  title: 'Fuel in the engine oil by regenerations',
  purpose: 'How much fuel do regenerations leave in the oil, and when must the oil be changed because of it?',
  keywords: 'oil dilution, post-injection, late injection, rising oil level, oil change, DPF, regen, burn-off',
  method: 'mass balance of the fuel in the oil from regeneration to regeneration',
  inputs: {
    oilVolume: wf.quantity(volume, {
      symbol: 'V_o',
      label: 'Oil filling',
      range: '0 < x <= 100 L',
      usual: ['2 L', '50 L', 'a car holds 4 to 8 L, a truck up to 40 L'],
      example: '11 L',
      units: ['L', 'qt_US'],
    }),
    oilDensity: wf.quantity(density, {
      symbol: '\\rho_o',
      label: 'Density of the oil',
      range: '0.7 <= x <= 1 kg/L',
      default: ['0.85 kg/L', 'usual engine oil, from memory'],
      units: ['kg/L', 'kg/m3'],
    }),
    fuelMassPerEvent: wf.quantity(mass, {
      symbol: 'm_i',
      label: 'Fuel injected late in one regeneration',
      range: '0 g <= x <= 20 kg',
      usual: ['0 g', '5 kg', 'a car injects about 200 to 500 g, a truck up to a few kilograms'],
      example: '400 g',
      units: ['g', 'kg'],
    }),
    shareToOil: wf.quantity(fraction, {
      symbol: 'f_o',
      label: 'Share of that fuel that gets into the oil',
      description: 'Late injection in the cylinder wets the wall: a few per cent. An injector in the exhaust leaves nothing in the oil.',
      range: '0 <= x <= 50 %',
      example: '5 %',
      units: ['%'],
    }),
    evaporated: wf.quantity(fraction, {
      symbol: 'f_e',
      label: 'Share of the fuel in the oil that evaporates before the next regeneration',
      description: 'Hot driving drives fuel out; short trips do not.',
      range: '0 <= x <= 100 %',
      example: '10 %',
      units: ['%'],
    }),
    distanceBetween: wf.quantity(length, {
      symbol: 'd',
      label: 'Distance between two regenerations',
      range: '0 < x <= 10000 km',
      usual: [
        '50 km',
        '1500 km',
        { below: 'regenerations this frequent are a fault: look for the cause', above: 'control units hardly ever wait this long' },
      ],
      example: '280 km',
      units: ['km', 'mi'],
    }),
    distanceSinceChange: wf.quantity(length, {
      symbol: 's',
      label: 'Distance since the oil change',
      range: '0 <= x <= 200000 km',
      example: '9000 km',
      units: ['km', 'mi'],
    }),
    dilutionLimit: wf.quantity(massFraction, {
      symbol: 'w_{max}',
      label: 'Fuel content at which the oil is changed (limit)',
      range: '0.5 <= x <= 20 %',
      default: ['4 %', 'the safe end of 4 % to 7 %; common practice, no source'],
      units: ['%'],
    }),
  },
  intermediates: {
    regenerationsSinceChange: wf.quantityOutput(ratio, {
      symbol: 'n',
      label: 'Regenerations since the oil change',
      digits: 4,
      units: ['1'],
    }),
    eventFuel: wf.quantityOutput(mass, {
      symbol: 'm_1',
      label: 'Fuel that one regeneration leaves in the oil',
      digits: 3,
      units: ['g', 'kg'],
    }),
    oilMass: wf.quantityOutput(mass, { symbol: 'm_o', label: 'Mass of the oil', digits: 4, units: ['kg', 'g'] }),
    settledMass: wf.optional(
      wf.quantityOutput(mass, { symbol: 'm_\\infty', label: 'Fuel that is never exceeded', digits: 3, units: ['g', 'kg'] }),
    ),
    limitMass: wf.quantityOutput(mass, { symbol: 'm_{max}', label: 'Fuel in the oil at the limit', digits: 3, units: ['g', 'kg'] }),
    eventsToLimit: wf.optional(
      wf.quantityOutput(ratio, { symbol: 'n_{max}', label: 'Regenerations from oil change to limit', digits: 4, units: ['1'] }),
    ),
    oilFuelMass: wf.quantityOutput(mass, { symbol: 'm_f', label: 'Fuel in the oil now', digits: 3, units: ['g', 'kg'] }),
  },
  outputs: {
    content: wf.quantityOutput(massFraction, { symbol: 'w', label: 'Fuel content of the oil now', digits: 3, units: ['%'] }),
    settledContent: wf.optional(
      wf.quantityOutput(massFraction, { symbol: 'w_\\infty', label: 'Fuel content at which the oil settles', digits: 3, units: ['%'] }),
    ),
    distanceToLimit: wf.optional(
      wf.quantityOutput(length, {
        symbol: 's_{max}',
        label: 'Distance from now until the fuel calls for an oil change',
        digits: 3,
        units: ['km', 'mi'],
      }),
    ),
    levelRise: wf.quantityOutput(volume, {
      symbol: '\\Delta V',
      label: 'Added to the oil filling by the fuel',
      digits: 3,
      units: ['L', 'mL'],
    }),
  },
  answer: 'content',
  steps: [
    wf.formula('regenerationsSinceChange', 'distanceSinceChange / distanceBetween'),
    wf.formula('eventFuel', 'fuelMassPerEvent * shareToOil'),
    wf.formula('oilMass', 'oilVolume * oilDensity'),
    wf.cases(
      'oilFuelMass',
      {
        'evaporated == 0': 'eventFuel * regenerationsSinceChange',
        'evaporated == 1': 'eventFuel * min(1, regenerationsSinceChange)',
        otherwise: 'eventFuel * (1 - (1 - evaporated) ^ regenerationsSinceChange) / evaporated',
      },
      dilutionBalance,
    ),
    wf.formula('content', 'oilFuelMass / (oilFuelMass + oilMass)', dilutionBalance),
    wf.formula('settledMass', 'eventFuel / evaporated', dilutionBalance, undefined, 'After very many regenerations.'),
    wf.formula('settledContent', 'settledMass / (settledMass + oilMass)', dilutionBalance),
    wf.formula('limitMass', 'oilMass * dilutionLimit / (1 - dilutionLimit)', dilutionBalance),
    wf.cases(
      'eventsToLimit',
      {
        'evaporated == 0 or evaporated == 1': 'limitMass / eventFuel',
        otherwise: 'ln(1 - limitMass * evaporated / eventFuel) / ln(1 - evaporated)',
      },
      dilutionBalance,
    ),
    wf.formula('distanceToLimit', 'max(0, eventsToLimit * distanceBetween - distanceSinceChange)', dilutionBalance),
    wf.formula('levelRise', 'oilFuelMass / oilDensity', undefined, undefined, 'With the density of the oil.'),
  ],
  assumptions: {
    even_intervals: 'Regenerations come at even distances, each leaves the same amount of fuel, and burnt oil is topped up.',
    worst_moment: 'The content is that right after a regeneration, when it is highest.',
  },
  limits: { estimate: 'The shares differ widely between engines: only a laboratory analysis of the oil is proof.' },
  cautions: [
    {
      code: 'diluted_oil',
      text: 'Oil above the maximum mark or above 4 % fuel can feed a runaway of the engine: change it before any forced regeneration.',
    },
    cautions.makerFirst,
  ],
  sources: [dilutionPractice],
  compute(input) {
    const oilMass = input.oilVolume * input.oilDensity;
    const eventFuel = input.fuelMassPerEvent * input.shareToOil;
    const model = { fuelPerEvent: eventFuel, evaporated: input.evaporated };
    const regenerationsSinceChange = input.distanceSinceChange / input.distanceBetween;
    const now = fuelInOil(model, regenerationsSinceChange);
    const settledMass = settledFuelInOil(model);
    const content = (fuel: number) => fuel / (fuel + oilMass);
    const limitMass = (oilMass * input.dilutionLimit) / (1 - input.dilutionLimit);
    const eventsToLimit = eventsUntil(model, limitMass);
    const toLimit = eventsToLimit === undefined ? undefined : eventsToLimit * input.distanceBetween - input.distanceSinceChange;
    return {
      regenerationsSinceChange,
      eventFuel,
      oilMass,
      oilFuelMass: now,
      content: content(now),
      settledMass,
      settledContent: settledMass === undefined ? undefined : content(settledMass),
      limitMass,
      eventsToLimit,
      distanceToLimit: toLimit === undefined ? undefined : Math.max(0, toLimit),
      levelRise: now / input.oilDensity,
    };
  },
  advise({ content }, { dilutionLimit }) {
    if (content >= dilutionLimit) return [{ tone: 'do', text: 'Change the oil now, before any forced regeneration.' }];
    if (content >= 0.02)
      return [{ tone: 'note', text: 'There is more than 2 % fuel in the oil: watch the oil level and shorten the oil change interval.' }];
    return [];
  },
});
