import {
  choice,
  defineCalculation,
  inconsistentInputs,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  type Refusal,
} from '@wallflow/calculation';
import { area, cellDensity, fraction, length, mass, massConcentration, surfaceLoad, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { loadDefinition, percentPractice, squareCells } from '../sources.js';
import { sootLoadFrom, sootLoadIn, squareCellFiltrationArea } from './kernel.js';

const inputs = z.strictObject({
  given: choice({
    label: 'What you have',
    description: 'A percent figure means nothing without what 100 % stands for: ask whether it is the trigger or the limit.',
    options: {
      mass: 'soot mass',
      load: 'load per litre of filter',
      'surface-load': 'load per area of filter wall',
      'percent-of-trigger': 'percent, 100 % = regeneration is triggered',
      'percent-of-limit': 'percent, 100 % = load limit',
    },
    example: 'percent-of-limit',
  }),
  filterVolume: quantity(volume, {
    symbol: 'V',
    label: 'Filter volume',
    description: 'Outer volume of the honeycomb.',
    min: '0.1 L',
    max: '200 L',
    usual: ['1 L', '40 L'],
    usualReason: 'a car filter has 2 to 5 L, a truck filter 10 to 30 L',
    example: '5.79 L',
    units: ['L', 'm3', 'in3'],
  }),
  knownMass: quantity(mass, {
    symbol: 'm_s',
    label: 'Soot mass',
    min: '0 g',
    max: '5 kg',
    example: '17.4 g',
    units: ['g', 'kg', 'oz'],
  }).optional(),
  knownLoad: quantity(massConcentration, {
    symbol: "m'",
    label: 'Soot load per litre',
    min: '0 g/L',
    max: '60 g/L',
    example: '3.0 g/L',
    units: ['g/L', 'kg/m3'],
  }).optional(),
  knownSurfaceLoad: quantity(surfaceLoad, {
    symbol: "m''",
    label: 'Soot load per wall area',
    min: '0 g/m2',
    max: '60 g/m2',
    example: '4 g/m2',
    units: ['g/m2', 'kg/m2'],
  }).optional(),
  knownPercent: quantity(fraction, {
    symbol: 'P',
    label: 'Soot percent',
    min: '0 %',
    max: '300 %',
    example: '60 %',
    units: ['%', '1'],
  }).optional(),
  triggerLoad: quantity(massConcentration, {
    symbol: "m'_{trig}",
    label: 'Load at which a regeneration is triggered',
    above: '0 g/L',
    max: '30 g/L',
    example: '4 g/L',
    units: ['g/L', 'kg/m3'],
  }).optional(),
  limitLoad: quantity(massConcentration, {
    symbol: "m'_{lim}",
    label: 'Load limit',
    description: 'The load above which the filter must not be heated.',
    above: '0 g/L',
    max: '30 g/L',
    example: '5 g/L',
    units: ['g/L', 'kg/m3'],
  }).optional(),
  filtrationArea: quantity(area, {
    symbol: 'A',
    label: 'Filtration area',
    description: 'Wall area of all inlet channels, if you know it; otherwise give the cells.',
    above: '0 m2',
    max: '300 m2',
    example: '5.1 m2',
    units: ['m2', 'cm2'],
  }).optional(),
  cellDensity: quantity(cellDensity, {
    symbol: '\\sigma',
    label: 'Cell density',
    min: '50 cpsi',
    max: '600 cpsi',
    example: '200 cpsi',
  }).optional(),
  wallThickness: quantity(length, {
    symbol: 'w_s',
    label: 'Wall thickness',
    min: '0.05 mm',
    max: '1 mm',
    example: '0.305 mm',
    units: ['mm', 'um', 'mil'],
  }).optional(),
});

type Inputs = z.output<typeof inputs>;

/** The value that the choice names, or the issue that says which input is missing. */
function givenValue(input: Inputs): number | Refusal {
  switch (input.given) {
    case 'mass':
      return input.knownMass ?? missingInputs('knownMass');
    case 'load':
      return input.knownLoad ?? missingInputs('knownLoad');
    case 'surface-load':
      return input.knownSurfaceLoad ?? missingInputs('knownSurfaceLoad');
    default:
      return input.knownPercent ?? missingInputs('knownPercent');
  }
}

/** Filtration area per volume in 1/m, from the area or from the cells. */
function areaPerVolume(input: Inputs): number | undefined | Refusal {
  if (input.filtrationArea !== undefined) return input.filtrationArea / input.filterVolume;
  if (input.cellDensity === undefined || input.wallThickness === undefined) return undefined;
  if (input.wallThickness * Math.sqrt(input.cellDensity) >= 1) {
    return inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
  }
  return squareCellFiltrationArea(input.cellDensity, input.wallThickness);
}

function missingReference(input: Inputs): Refusal {
  if (input.given === 'percent-of-trigger') return missingInputs('triggerLoad');
  if (input.given === 'percent-of-limit') return missingInputs('limitLoad');
  return missingInputs('filtrationArea');
}

export const sootLoadCalculation = defineCalculation({
  id: 'soot-load',
  version: '1.0.0',
  subject: 'soot',
  title: 'Soot load: grams, g/L, g/m² and percent',
  purpose: 'How much soot is that, in the other ways people state it, and what does the percent figure mean?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['soot', 'percent', 'trigger', 'limit', 'g/L', 'g/m²'],
  method: 'ratio of masses, volumes and areas',
  inputs,
  example: { knownPercent: '60 %', limitLoad: '5 g/L', triggerLoad: '4 g/L', cellDensity: '200 cpsi', wallThickness: '0.305 mm' },
  intermediates: {
    wallArea: optional(quantityOutput(area, { symbol: 'A_f', label: 'Filtration area of the whole filter', digits: 4, units: ['m2'] })),
  },
  outputs: {
    sootMass: quantityOutput(mass, { symbol: 'm_s', label: 'Soot mass', digits: 4, units: ['g', 'kg'] }),
    sootLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load per litre of filter', digits: 4, units: ['g/L'] }),
    surfaceLoad: optional(quantityOutput(surfaceLoad, { symbol: "m''", label: 'Soot load per wall area', digits: 4, units: ['g/m2'] })),
    fractionOfTrigger: optional(
      quantityOutput(fraction, { symbol: 'P_{trig}', label: 'Percent of the trigger load', digits: 4, units: ['%'] }),
    ),
    fractionOfLimit: optional(quantityOutput(fraction, { symbol: 'P_{lim}', label: 'Percent of the load limit', digits: 4, units: ['%'] })),
  },
  constants: {},
  steps: [
    {
      gives: 'wallArea',
      text: 'Given, or for square cells 2 α/s² times the volume, with pitch s = 1/√σ and channel width α = s − w; inlet channels only.',
      source: 'squareCells',
      locator: 'Eq. A3',
    },
    { gives: 'sootLoad', text: 'Converted from what was given: [[given]].', source: 'loadDefinition' },
    { gives: 'surfaceLoad', tex: '[[surfaceLoad]] = \\frac{[[sootLoad]]\\,[[filterVolume]]}{[[wallArea]]}', source: 'loadDefinition' },
    { gives: 'fractionOfTrigger', tex: '[[fractionOfTrigger]] = \\frac{[[sootLoad]]}{[[triggerLoad]]}', source: 'percentPractice' },
    { gives: 'fractionOfLimit', tex: '[[fractionOfLimit]] = \\frac{[[sootLoad]]}{[[limitLoad]]}', source: 'percentPractice' },
    { gives: 'sootMass', tex: '[[sootMass]] = [[sootLoad]]\\,[[filterVolume]]', source: 'loadDefinition' },
  ],
  assumptions: [
    {
      code: 'soot_spread_evenly',
      text: 'The load is the mean over the filter; parts of it can hold more, as after interrupted regenerations.',
    },
  ],
  limits: [
    { code: 'ash_takes_volume', text: 'Ash takes volume and area away: an old filter carries the same grams as a denser load.' },
    { code: 'estimate', text: 'A load shown by a control unit is an estimate; a percent of one make is not a percent of another.' },
  ],
  cautions: [cautions.makerFirst, cautions.sensorFirst],
  sources: { loadDefinition, percentPractice, squareCells },
  compute(input) {
    const { triggerLoad, limitLoad, filterVolume } = input;
    if (triggerLoad !== undefined && limitLoad !== undefined && triggerLoad > limitLoad) {
      return inconsistentInputs('a regeneration would be triggered only above the limit', ['triggerLoad'], ['limitLoad']);
    }
    const value = givenValue(input);
    if (typeof value !== 'number') return value;
    const filtrationAreaPerVolume = areaPerVolume(input);
    if (typeof filtrationAreaPerVolume === 'object') return filtrationAreaPerVolume;
    const reference = { filterVolume, filtrationAreaPerVolume, triggerLoad, limitLoad };
    const sootLoad = sootLoadFrom(input.given, value, reference);
    if (sootLoad === undefined) return missingReference(input);
    const { mass: sootMass, ...others } = sootLoadIn(sootLoad, reference);
    const wallArea = filtrationAreaPerVolume === undefined ? undefined : filtrationAreaPerVolume * filterVolume;
    return { wallArea, sootMass, sootLoad, ...others };
  },
});
