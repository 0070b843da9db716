import * as wf from '@wallflow/calculation';
import { area, cellDensity, fraction, length, mass, massConcentration, surfaceLoad, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { limitBounds, limitMaterial, limitRefusal } from '../limit-bound.js';
import { loadDefinition, percentPractice, squareCells } from '../sources.js';
import { sootLoadFrom, sootLoadIn, squareCellFiltrationArea } from './kernel.js';

const perLitre = { units: ['g/L', 'kg/m3'] } as const;

const inputs = {
  loadStatedAs: wf.choice({
    label: 'Soot is stated as',
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
  filterVolume: wf.quantity(volume, {
    symbol: 'V',
    label: 'Filter volume',
    description: 'Outer volume of the honeycomb.',
    range: '0.1 <= x <= 200 L',
    usual: ['1 L', '40 L', 'a car filter has 2 to 5 L, a truck filter 10 to 30 L'],
    example: '5.79 L',
    units: ['L', 'm3', 'in3'],
  }),
  ...wf.relevantWhen('loadStatedAs', 'mass', {
    knownMass: wf.quantity(mass, {
      symbol: 'm_k',
      label: 'Soot mass',
      range: '0 g <= x <= 5 kg',
      example: '17.4 g',
      units: ['g', 'kg', 'oz'],
    }),
  }),
  ...wf.relevantWhen('loadStatedAs', 'load', {
    knownLoad: wf.quantity(massConcentration, {
      symbol: "m'_k",
      label: 'Soot load per litre',
      range: '0 <= x <= 60 g/L',
      example: '3.0 g/L',
      ...perLitre,
    }),
  }),
  ...wf.relevantWhen('loadStatedAs', 'surface-load', {
    knownSurfaceLoad: wf.quantity(surfaceLoad, {
      symbol: "m''_k",
      label: 'Soot load per wall area, as stated',
      range: '0 <= x <= 60 g/m2',
      example: '4 g/m2',
      units: ['g/m2', 'kg/m2'],
    }),
  }),
  ...wf.relevantWhen('loadStatedAs', ['percent-of-trigger', 'percent-of-limit'], {
    knownPercent: wf.quantity(fraction, {
      symbol: 'P',
      label: 'Soot percent',
      range: '0 <= x <= 300 %',
      example: '60 %',
      units: ['%', '1'],
    }),
  }),
  triggerLoad: wf.optional(
    wf.quantity(massConcentration, {
      symbol: "m'_{trig}",
      label: 'Load at which a regeneration is triggered',
      range: '0 < x <= 12 g/L',
      example: '4 g/L',
      ...perLitre,
    }),
  ),
  limitLoad: wf.optional(
    wf.quantity(massConcentration, {
      symbol: "m'_{lim}",
      label: 'Load limit',
      description: 'The load above which the filter must not be heated.',
      range: '0 < x <= 12 g/L',
      usual: [
        '2 g/L',
        '8 g/L',
        { below: 'filters may hold more', above: 'limits above 8 g/L are rare; take one only from the vehicle maker' },
      ],
      example: '5 g/L',
      ...perLitre,
    }),
  ),
  ...wf.whenGiven('limitLoad', { substrate: limitMaterial }),
  ...wf.oneOf(
    {
      filtrationArea: wf.quantity(area, {
        symbol: 'A',
        label: 'Filtration area',
        description: 'Wall area of all inlet channels, if you know it; otherwise enter cell density and wall thickness.',
        range: '0 < x <= 300 m2',
        example: '5.1 m2',
        units: ['m2', 'cm2'],
      }),
      cellDensity: wf.quantity(cellDensity, {
        symbol: '\\sigma',
        label: 'Cell density',
        range: '50 <= x <= 600 cpsi',
        example: '200 cpsi',
      }),
    },
    { required: false, prefer: 'filtrationArea' },
  ),
  ...wf.whenGiven('cellDensity', {
    wallThickness: wf.quantity(length, {
      symbol: 'w_s',
      label: 'Wall thickness',
      range: '0.05 <= x <= 1 mm',
      example: '0.305 mm',
      units: ['mm', 'um', 'mil'],
    }),
  }),
};

type Inputs = wf.CheckedOf<typeof inputs>;

/** Filtration area per volume in 1/m, from the area or from the cells. */
function areaPerVolume({ filtrationArea, filterVolume, cellDensity: cells, wallThickness }: Inputs): number | undefined | wf.Refusal {
  if (filtrationArea !== undefined) return filtrationArea / filterVolume;
  if (cells === undefined || wallThickness === undefined) return undefined;
  if (wallThickness * Math.sqrt(cells) >= 1)
    return wf.inconsistentInputs('the wall is thicker than the distance between the walls', ['wallThickness'], ['cellDensity']);
  return squareCellFiltrationArea(cells, wallThickness);
}

function missingReference({ loadStatedAs }: Inputs): wf.Refusal {
  if (loadStatedAs === 'percent-of-trigger') return wf.missingInputs('triggerLoad');
  return wf.missingInputs(loadStatedAs === 'percent-of-limit' ? 'limitLoad' : 'filtrationArea');
}

export const sootLoadCalculation = wf.defineCalculation({
  id: 'soot-load',
  subject: 'soot',
  title: 'Soot load: grams, g/L, g/m² and percent',
  purpose: 'How much soot is that in the other ways people state it, and what does the percent figure mean?',
  keywords: 'soot, percent, trigger, limit, g/L, g/m², DPF',
  method: 'ratio of masses, volumes and areas',
  inputs,
  example: { knownPercent: '60 %', limitLoad: '5 g/L', triggerLoad: '4 g/L', cellDensity: '200 cpsi', wallThickness: '0.305 mm' },
  intermediates: {
    wallArea: wf.optional(
      wf.quantityOutput(area, { symbol: 'A_f', label: 'Filtration area of the whole filter', digits: 4, units: ['m2'] }),
    ),
  },
  outputs: {
    sootMass: wf.quantityOutput(mass, { symbol: 'm_s', label: 'Soot in the filter', digits: 4, units: ['g', 'kg'] }),
    sootLoad: wf.quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load', digits: 4, units: ['g/L'] }),
    surfaceLoad: wf.optional(
      wf.quantityOutput(surfaceLoad, { symbol: "m''", label: 'Soot load per wall area', digits: 4, units: ['g/m2'] }),
    ),
    fractionOfTrigger: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'P_{trig}', label: 'Percent of the trigger load', digits: 4, units: ['%'] }),
    ),
    fractionOfLimit: wf.optional(
      wf.quantityOutput(fraction, { symbol: 'P_{lim}', label: 'Percent of the load limit', digits: 4, units: ['%'] }),
    ),
  },
  answer: 'sootMass',
  picture: wf.gauge('sootLoad', [
    ['good', 'below the trigger', 'triggerLoad'],
    ['mind', 'regeneration due', 'limitLoad'],
    ['bad', 'above the load limit'],
  ]),
  constants: limitBounds,
  steps: [
    wf.cases(
      'wallArea',
      {
        'known(filtrationArea)': 'filtrationArea',
        otherwise: '2 * (1 / sqrt(cellDensity) - wallThickness) * cellDensity * filterVolume',
      },
      squareCells,
      'Eq. A3',
      'For square cells, inlet channels only.',
    ),
    wf.cases(
      'sootLoad',
      {
        "loadStatedAs == 'mass'": 'knownMass / filterVolume',
        "loadStatedAs == 'load'": 'knownLoad',
        "loadStatedAs == 'surface-load'": 'knownSurfaceLoad * wallArea / filterVolume',
        "loadStatedAs == 'percent-of-trigger'": 'knownPercent * triggerLoad',
        otherwise: 'knownPercent * limitLoad',
      },
      loadDefinition,
    ),
    wf.formula('sootMass', 'sootLoad * filterVolume', loadDefinition),
    wf.formula('surfaceLoad', 'sootMass / wallArea', loadDefinition),
    wf.formula('fractionOfTrigger', 'sootLoad / triggerLoad', percentPractice),
    wf.formula('fractionOfLimit', 'sootLoad / limitLoad', percentPractice),
  ],
  assumptions: {
    soot_spread_evenly: 'The load is the mean over the filter; parts of it can hold more, as after interrupted regenerations.',
  },
  limits: {
    ash_takes_volume: 'Ash takes up room: in an old filter the same grams are a denser load.',
    estimate: 'A load shown by a control unit is an estimate; a percent of one make is not a percent of another.',
  },
  cautions: [cautions.makerFirst, cautions.sensorFirst],
  compute(input, { constants }) {
    const { triggerLoad, limitLoad, filterVolume } = input;
    const refusal = limitRefusal(limitLoad, 'limitLoad', input.substrate ?? 'unknown', constants);
    if (refusal !== undefined) return refusal;
    if (triggerLoad !== undefined && limitLoad !== undefined && triggerLoad > limitLoad) {
      return wf.inconsistentInputs('a regeneration would only be triggered above the limit', ['triggerLoad'], ['limitLoad']);
    }
    const value = wf.known(input.knownMass ?? input.knownLoad ?? input.knownSurfaceLoad ?? input.knownPercent);
    const filtrationAreaPerVolume = areaPerVolume(input);
    if (typeof filtrationAreaPerVolume === 'object') return filtrationAreaPerVolume;
    const reference = { filterVolume, filtrationAreaPerVolume, triggerLoad, limitLoad };
    const sootLoad = sootLoadFrom(input.loadStatedAs, value, reference);
    if (sootLoad === undefined) return missingReference(input);
    const { mass: sootMass, ...others } = sootLoadIn(sootLoad, reference);
    const wallArea = filtrationAreaPerVolume === undefined ? undefined : filtrationAreaPerVolume * filterVolume;
    return { wallArea, sootMass, sootLoad, ...others };
  },
});
