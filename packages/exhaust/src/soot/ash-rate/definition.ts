import * as wf from '@wallflow/calculation';
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
import { cautions } from '../../cautions.js';
import { sootLimitInput } from '../ash-inputs.js';
import { limitBounds, limitMaterial, limitRefusal } from '../limit-bound.js';
import { ashGuide, ashMassBalance, ashPractice, ashReview2019 } from '../sources.js';
import { ashFromAdditive, ashFromOil, ashShare, distanceToAshLimit } from './kernel.js';

const perDistance = (symbol: string, label: string) =>
  wf.quantityOutput(massPerDistance, { symbol, label, digits: 3, units: ['g/1000km'] });

const fullOfAsh: wf.Source = {
  type: 'derivation',
  title: 'Inlet channels of 200 cells per square inch with 12 mil walls, 34.5 % of the volume, full of ash at 0.4 kg/L',
  mark: 'read',
};

export const ashRateCalculation = wf.defineCalculation({
  id: 'ash-rate',
  subject: 'soot',
  title: 'Ash from oil and additive, and the distance to cleaning',
  purpose: 'How fast does ash build up, how much is in the filter by now, and when must it be cleaned?',
  keywords: 'ash, sulphated ash, SAPS, oil consumption, service interval, additive, DPF',
  method: 'mass balance of the ash of oil and additive',
  inputs: {
    oilConsumption: wf.quantity(volumePerDistance, {
      symbol: 'q_o',
      label: 'Oil consumption',
      range: '0 <= x <= 20 L/1000km',
      usual: ['0 L/1000km', '3 L/1000km', { above: 'a healthy car uses 0.02 to 0.3 L per 1000 km, a truck up to 1 L' }],
      example: '0.12 L/1000km',
      units: ['L/1000km'],
    }),
    sulphatedAsh: wf.quantity(massFraction, {
      symbol: 'w_{SA}',
      label: 'Sulphated ash of the oil',
      description: 'From the data sheet of the oil.',
      range: '0 <= x <= 3 %',
      usual: ['0.2 %', '2 %', { below: 'even low-ash oils have about 0.5 %', above: 'older oils end near 1.8 %' }],
      example: '0.8 %',
      units: ['%'],
    }),
    ashCapture: wf.quantity(fraction, {
      symbol: '\\eta_a',
      label: "Share of the oil's ash that stays in the filter",
      range: '0 <= x <= 100 %',
      usual: ['20 %', '70 %', 'published shares lie between 20 % and 70 %'],
      default: ['60 %', 'towards the upper end of 20 % to 70 %: the safe side'],
    }),
    oilDensity: wf.quantity(density, {
      symbol: '\\rho_o',
      label: 'Density of the oil',
      range: '0.7 <= x <= 1 kg/L',
      default: ['0.85 kg/L', 'usual engine oil, from memory'],
      units: ['kg/L', 'kg/m3'],
    }),
    distanceDriven: wf.quantity(length, {
      symbol: 's',
      label: 'Distance on this filter',
      description: 'Since it was new or last cleaned of ash.',
      range: '0 <= x <= 2000000 km',
      example: '146300 km',
      units: ['km', 'mi'],
    }),
    initialAsh: wf.quantity(mass, {
      symbol: 'm_{a,0}',
      label: 'Ash at the beginning of that distance',
      description: 'What a cleaning left, measured; zero only for a new filter.',
      range: '0 g <= x <= 5 kg',
      default: ['0 g', 'a new filter'],
      units: ['g', 'kg'],
    }),
    ashLimit: wf.quantity(mass, {
      symbol: 'm_{a,max}',
      label: 'Ash at which the filter is cleaned or replaced',
      range: '0 g < x <= 10 kg',
      usual: ['10 g', '1 kg', 'a car some 40 to 80 g, a truck 200 to 600 g'],
      example: '150 g',
      units: ['g', 'kg'],
    }),
    filterVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      range: '0.1 <= x <= 200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    sootLimit: sootLimitInput('Soot load limit'),
    substrate: limitMaterial,
    additiveMetal: wf.optional(
      wf.quantity(massConcentration, {
        symbol: 'c_m',
        label: 'Metal of the additive per volume of fuel',
        description: 'Iron or cerium of a fuel-borne catalyst; from its data sheet.',
        range: '0 <= x <= 200 mg/L',
        example: '10 mg/L',
        units: ['mg/L', 'g/m3'],
      }),
    ),
    ...wf.whenGiven('additiveMetal', {
      fuelConsumption: wf.quantity(volumePerDistance, {
        symbol: 'q_f',
        label: 'Fuel consumption',
        range: '0 < x <= 100 L/100km',
        usual: ['3 L/100km', '60 L/100km', 'a small car uses some 4 L/100km, a truck up to 60 L/100km'],
        example: '16 L/100km',
        units: ['L/100km', 'mpg_imp', 'mpg_US'],
      }),
      oxidePerMetal: wf.quantity(massRatio, {
        symbol: 'r_{ox}',
        label: 'Oxide per metal, by mass',
        range: '1 <= x <= 2',
        default: ['1.429734', 'iron to Fe₂O₃: 159.687/(2 × 55.845)'],
        units: ['1'],
      }),
    }),
  },
  intermediates: {
    oilAshRate: perDistance('r_o', 'Ash from oil'),
    additiveAshRate: perDistance('r_a', 'Ash from the additive'),
  },
  outputs: {
    ashRate: perDistance('r', 'Ash into the filter'),
    ashMass: wf.quantityOutput(mass, { symbol: 'm_a', label: 'Ash in the filter', digits: 3, units: ['g', 'kg'] }),
    ashLoad: wf.quantityOutput(massConcentration, { symbol: "m'_a", label: 'Ash load', digits: 3, units: ['g/L'] }),
    ashShare: wf.quantityOutput(fraction, {
      symbol: 'f_a',
      label: 'Share of ash in the deposit when soot is at its limit',
      digits: 3,
      units: ['%'],
    }),
    serviceDistance: wf.optional(
      wf.quantityOutput(length, { symbol: 's_{max}', label: 'Distance from empty to the ash limit', digits: 3, units: ['km', 'mi'] }),
    ),
    distanceLeft: wf.optional(
      wf.quantityOutput(length, { symbol: 's_{left}', label: 'Distance left to the ash limit', digits: 3, units: ['km', 'mi'] }),
    ),
  },
  constants: {
    ...limitBounds,
    documentedAshLoad: wf.constant(massConcentration, '42 g/L', {
      symbol: "m'_{doc}",
      label: 'Highest ash load documented',
      source: ashReview2019,
    }),
    fullAshLoad: wf.constant(massConcentration, '140 g/L', {
      symbol: "m'_{full}",
      label: 'Ash load at which the inlet channels are full',
      source: fullOfAsh,
    }),
  },
  answer: 'ashMass',
  picture: wf.gauge('ashMass', [
    ['good', 'below the ash limit', 'ashLimit'],
    ['bad', 'above the ash limit'],
  ]),
  steps: [
    wf.formula('oilAshRate', 'oilConsumption * oilDensity * sulphatedAsh * ashCapture', ashMassBalance),
    wf.cases(
      'additiveAshRate',
      { 'known(additiveMetal)': 'fuelConsumption * additiveMetal * oxidePerMetal', otherwise: '0' },
      ashMassBalance,
    ),
    wf.formula('ashRate', 'oilAshRate + additiveAshRate'),
    wf.formula('ashMass', 'initialAsh + ashRate * distanceDriven', ashMassBalance),
    wf.formula('ashLoad', 'ashMass / filterVolume'),
    wf.formula('ashShare', 'ashMass / (ashMass + sootLimit * filterVolume)', ashGuide),
    wf.formula('serviceDistance', 'ashLimit / ashRate'),
    wf.cases('distanceLeft', { 'ashMass >= ashLimit': '0', otherwise: '(ashLimit - ashMass) / ashRate' }),
  ],
  assumptions: { steady_consumption: 'Oil consumption and oil stay as they are; all metal of an additive stays in the filter as oxide.' },
  limits: {
    model_not_measurement: 'This is a model: weigh the filter or measure the depth of the channels before acting on it.',
    oil_defects: 'A leaking turbocharger or injector brings many times the ash; about a tenth comes from wear, fuel and coolant.',
  },
  cautions: [
    {
      code: 'never_reset_untrue',
      text: 'Set the ash counter of a vehicle to what is measured, never to zero because a filter was cleaned.',
    },
    cautions.ashDust,
  ],
  sources: [ashPractice],
  compute(input, { constants, warn }) {
    const { ashLimit, filterVolume, fuelConsumption = 0, additiveMetal = 0, oxidePerMetal = 0 } = input;
    const refusal = limitRefusal(input.sootLimit, 'sootLimit', input.substrate, constants);
    if (refusal !== undefined) return refusal;
    if (ashLimit > constants.fullAshLoad * filterVolume)
      return wf.inconsistentInputs('the inlet channels of this filter would be full before this much ash', ['ashLimit'], ['filterVolume']);
    if (ashLimit > constants.documentedAshLoad * filterVolume)
      warn('ash_limit_loose', 'The ash limit is above the highest ash load documented, 42 g/L: check limit and filter volume.', [
        'ashLimit',
      ]);
    const oilAshRate = ashFromOil(input);
    const additiveAshRate = ashFromAdditive(fuelConsumption, additiveMetal, oxidePerMetal);
    const ashRate = oilAshRate + additiveAshRate;
    const ashMass = input.initialAsh + ashRate * input.distanceDriven;
    return {
      oilAshRate,
      additiveAshRate,
      ashRate,
      ashMass,
      ashLoad: ashMass / filterVolume,
      ashShare: ashShare(ashMass, input.sootLimit * filterVolume),
      serviceDistance: distanceToAshLimit(0, ashLimit, ashRate),
      distanceLeft: distanceToAshLimit(ashMass, ashLimit, ashRate),
    };
  },
  advise({ ashMass }, { ashLimit }) {
    if (ashMass < 0.5 * ashLimit) return [];
    if (ashMass < ashLimit)
      return [
        { tone: 'note', text: 'Over half of the ash limit is reached. Neither a regeneration nor a clean on the vehicle takes ash out.' },
      ];
    return [{ tone: 'do', text: 'Remove the filter and clean it of ash, or replace it; weigh it before and after.' }];
  },
});
