import {
  choiceOutput,
  choiceWithDefault,
  commonPractice,
  countOutput,
  defineCalculation,
  flag,
  inconsistentInputs,
  list,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { coverageFactor, mean, standardDeviation } from '@wallflow/numerics';
import {
  density,
  differentialPressure,
  fraction,
  mass,
  massFlow,
  massFraction,
  temperature,
  time,
  volume,
  volumeFlow,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { ureaSolutionDensity } from '../solution/density.js';
import { densitySlopePractice, pace1986 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import { dosingQuantityVerdict, orificeLoss, scaleOrificeFlow } from './kernel.js';

const verdicts = {
  pass: 'passes: right quantity, no drip, even spray',
  'quantity-only': 'right quantity, but drip or spray was not watched: not yet a pass',
  low: 'too little',
  high: 'too much',
  'low-once': 'low on this run: repeat it twice',
  'high-once': 'high on this run: repeat it twice',
  drips: 'fails: it drips after closing',
  'uneven-spray': 'fails: the spray is uneven',
  undecided: 'undecided: the limit lies inside the uncertainty',
  'not-repeatable': 'undecided: the runs differ too much from each other',
  'too-few-runs': 'undecided: at least two runs must count',
} as const;

const run = z.strictObject({
  collectedMass: quantity(mass, {
    symbol: 'm_i',
    label: 'Collected mass',
    min: '0 g',
    max: '5 kg',
    example: '46.9 g',
    units: ['g', 'kg'],
  }).optional(),
  collectedVolume: quantity(volume, {
    symbol: 'V_i',
    label: 'Collected volume',
    min: '0 mL',
    max: '5 L',
    example: '43 mL',
    units: ['mL', 'L'],
  }).optional(),
  duration: quantity(time, { symbol: 't_i', label: 'Time of the run', above: '0 s', max: '1 h', example: '60 s', units: ['s', 'min'] }),
});

export const dosingTestCalculation = defineCalculation({
  id: 'dosing-test',
  version: '1.1.0',
  subject: 'reductant',
  title: 'Dosing test into a measuring cup',
  purpose: 'Does the injector give the quantity it should, every time, and without dripping?',
  usedBy: ['technician', 'trainer'],
  keywords: ['dosing', 'injector', 'quantity test', 'reductant', 'repeatability'],
  method: 'mean of repeated runs against the nominal quantity, with a 95 % interval',
  inputs: z.strictObject({
    runs: list(run, {
      label: 'Runs',
      description: 'Each with a mass, a volume or both. Weighing is better than reading a cup; both together show the density.',
      min: 1,
      max: 20,
      example: [
        { collectedVolume: '38 mL', duration: '60 s' },
        { collectedVolume: '43 mL', duration: '60 s' },
        { collectedVolume: '42.5 mL', duration: '60 s' },
        { collectedVolume: '43.5 mL', duration: '60 s' },
      ],
    }),
    discardFirst: flag({
      label: 'Leave the first run out',
      description: 'Air in the line makes the first run low.',
      example: true,
      default: true,
      defaultReason: 'air in the line makes the first run low; common practice, no source',
    }),
    nominalMass: quantity(mass, {
      symbol: 'm_0',
      label: 'Nominal mass',
      description: "From the vehicle maker's test instruction. There is no universal value.",
      above: '0 g',
      max: '5 kg',
      example: '54.5 g',
      units: ['g', 'kg'],
    }).optional(),
    nominalVolume: quantity(volume, {
      symbol: 'V_0',
      label: 'Nominal volume',
      description: "From the vehicle maker's test instruction. There is no universal value.",
      above: '0 mL',
      max: '5 L',
      example: '50 mL',
      units: ['mL', 'L'],
    }).optional(),
    nominalDuration: quantity(time, {
      symbol: 't_0',
      label: 'Time that the nominal quantity belongs to',
      above: '0 s',
      max: '1 h',
      example: '60 s',
      units: ['s', 'min'],
    }),
    nominalPressure: quantity(differentialPressure, {
      symbol: '\\Delta p_0',
      label: 'Line pressure that the nominal quantity belongs to',
      above: '0 bar',
      max: '30 bar',
      usual: ['3 bar', '12 bar'],
      usualReason: 'pump pressures of about 5 to 9 bar are usual, common practice',
      example: '9 bar',
      units: ['bar', 'kPa', 'psi'],
    }).optional(),
    testPressure: quantity(differentialPressure, {
      symbol: '\\Delta p',
      label: 'Line pressure during the test',
      above: '0 bar',
      max: '30 bar',
      usual: ['3 bar', '12 bar'],
      usualReason: 'pump pressures of about 5 to 9 bar are usual, common practice',
      example: '8.5 bar',
      units: ['bar', 'kPa', 'psi'],
    }).optional(),
    nominalDuty: quantityWithDefault(fraction, {
      symbol: 'd_0',
      label: 'Duty that the nominal quantity belongs to',
      above: '0 %',
      max: '100 %',
      example: '100 %',
      units: ['%'],
      default: '100 %',
      defaultReason: 'test and nominal quantity have the same opening time',
    }),
    testDuty: quantityWithDefault(fraction, {
      symbol: 'd',
      label: 'Duty during the test',
      description: 'Share of the time that the valve is open.',
      above: '0 %',
      max: '100 %',
      example: '100 %',
      units: ['%'],
      default: '100 %',
      defaultReason: 'test and nominal quantity have the same opening time',
    }),
    fluidTemperature: quantityWithDefault(temperature, {
      symbol: 'T',
      label: 'Fluid temperature',
      min: '-10 °C',
      max: '60 °C',
      usual: ['5 °C', '40 °C'],
      usualReason: 'the density line holds near room temperature',
      example: '20 °C',
      units: ['degC', 'degF'],
      default: '20 °C',
      defaultReason: 'room temperature; 10 K change the density by 0.4 %',
    }),
    ureaFraction: quantityWithDefault(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      min: '0 %',
      max: '50 %',
      example: '32.5 %',
      units: ['%'],
      default: '32.5 %',
      defaultReason: 'target of ISO 22241-1; enter 0 % for a test with water',
    }),
    tolerance: quantityWithDefault(fraction, {
      symbol: 't',
      label: 'Tolerance (±)',
      above: '0 %',
      max: '50 %',
      example: '10 %',
      units: ['%'],
      default: '10 %',
      defaultReason: "common practice, no source; the vehicle maker's figure comes first",
    }),
    measuringUncertainty: quantityWithDefault(fraction, {
      symbol: 'u_m',
      label: 'Uncertainty of one reading (±)',
      min: '0 %',
      max: '20 %',
      example: '2 %',
      units: ['%'],
      default: '2 %',
      defaultReason: 'usual for a measuring cup read at eye level; common practice, no source',
    }),
    greatestSpread: quantityWithDefault(fraction, {
      symbol: 's_{max}',
      label: 'Greatest spread of the runs',
      above: '0 %',
      max: '50 %',
      example: '5 %',
      units: ['%'],
      default: '5 %',
      defaultReason: 'half of the usual tolerance; common practice, no source',
    }),
    drip: choiceWithDefault({
      label: 'After closing, for a minute',
      options: { none: 'no drop', drips: 'it drips', 'not-watched': 'not watched' },
      example: 'none',
      default: 'not-watched',
      defaultReason: 'nothing was said about it',
    }),
    spray: choiceWithDefault({
      label: 'Spray',
      options: { even: 'even cone', uneven: 'uneven, streaks or a jet', 'not-watched': 'not watched' },
      example: 'even',
      default: 'not-watched',
      defaultReason: 'nothing was said about it',
    }),
  }),
  example: { nominalVolume: '50 mL' },
  intermediates: {
    runsCounted: countOutput({ symbol: 'n', label: 'Runs that count' }),
    fluidDensity: quantityOutput(density, { symbol: '\\rho', label: 'Density of the fluid', digits: 4, leastDigits: 4, units: ['kg/m3'] }),
    expectedMassFlow: quantityOutput(massFlow, {
      symbol: 'q_0',
      label: 'Expected flow at the test pressure and duty',
      digits: 4,
      units: ['g/min', 'mg/s', 'kg/h'],
    }),
    spread: quantityOutput(fraction, { symbol: 's', label: 'Spread of the runs (standard deviation over mean)', digits: 3, units: ['%'] }),
    uncertainty: quantityOutput(fraction, {
      symbol: 'U',
      label: 'Uncertainty of the mean against the expected flow (95 %)',
      digits: 2,
      units: ['%'],
    }),
  },
  outputs: {
    massFlow: quantityOutput(massFlow, { symbol: 'q', label: 'Mean flow by mass', digits: 4, units: ['g/min', 'mg/s', 'kg/h'] }),
    volumeFlow: quantityOutput(volumeFlow, { symbol: '\\dot V', label: 'Mean flow by volume', digits: 4, units: ['mL/min', 'L/h'] }),
    deviation: quantityOutput(fraction, { symbol: '\\delta', label: 'Deviation from the expected flow', digits: 3, units: ['%'] }),
    missingArea: optional(
      quantityOutput(fraction, {
        symbol: '\\delta_A',
        label: 'Blocked share of the nozzle, if the pressure is right',
        digits: 2,
        units: ['%'],
      }),
    ),
    missingPressure: optional(
      quantityOutput(fraction, { symbol: '\\delta_p', label: 'Pressure too low by, if the nozzle is clear', digits: 2, units: ['%'] }),
    ),
    verdict: choiceOutput({ label: 'Verdict', options: verdicts }),
  },
  constants: {},
  steps: [
    { gives: 'runsCounted', text: 'Runs without the first, where that is to be left out.' },
    { gives: 'fluidDensity', text: 'Density for: [[ureaFraction]], [[fluidTemperature]].', source: 'pace1986' },
    {
      gives: 'expectedMassFlow',
      tex: '[[expectedMassFlow]] = \\frac{m_0}{[[nominalDuration]]}\\,\\frac{[[testDuty]]}{[[nominalDuty]]}\\,\\sqrt{\\frac{\\Delta p}{\\Delta p_0}}',
      source: 'bernoulli',
    },
    {
      gives: 'massFlow',
      tex: '[[massFlow]] = \\frac{1}{n}\\sum_{i}\\frac{m_i}{t_i}',
      source: 'cfr1065',
      locator: '1065.602(b), mean; 1065.247, weighing over an interval',
    },
    { gives: 'volumeFlow', tex: '[[volumeFlow]] = \\frac{[[massFlow]]}{[[fluidDensity]]}' },
    {
      gives: 'spread',
      tex: '[[spread]] = \\frac{1}{\\bar q}\\sqrt{\\frac{\\sum_i (q_i-\\bar q)^2}{n-1}}',
      source: 'cfr1065',
      locator: '1065.602(c), standard deviation',
    },
    {
      gives: 'uncertainty',
      tex: '[[uncertainty]] = \\frac{\\bar q}{q_0}\\sqrt{\\left(\\frac{t_{95}\\,[[spread]]}{\\sqrt{n}}\\right)^{2}+[[measuringUncertainty]]^{2}}',
      source: 'cfr1065',
      locator: '1065.602(g), Student t',
    },
    { gives: 'deviation', tex: '[[deviation]] = \\frac{[[massFlow]]}{[[expectedMassFlow]]}-1' },
    { gives: 'missingArea', tex: '[[missingArea]] = 1-\\frac{[[massFlow]]}{[[expectedMassFlow]]}', source: 'bernoulli' },
    {
      gives: 'missingPressure',
      tex: '[[missingPressure]] = 1-\\left(\\frac{[[massFlow]]}{[[expectedMassFlow]]}\\right)^{2}',
      source: 'bernoulli',
    },
    {
      gives: 'verdict',
      text: 'Quantity with its uncertainty against the tolerance, then drip and spray. A single run counts as low or high only beyond the greatest spread as well. Tolerance: [[tolerance]].',
      source: 'acceptance',
    },
  ],
  assumptions: [
    { code: 'square_root', text: 'The flow goes with the square root of the pressure, as through any sharp hole.' },
    {
      code: 'proportional_duty',
      text: 'The flow goes with the duty; the opening delay of the valve is left out, which counts at low duty.',
    },
  ],
  limits: [{ code: 'nominal_needed', text: "Without the vehicle maker's nominal quantity there is no verdict." }],
  cautions: [cautions.makerFirst, cautions.hotExhaust],
  sources: {
    iso22241Part1,
    pace1986,
    densitySlopePractice,
    cfr1065,
    bernoulli: {
      type: 'derivation',
      title: 'Orifice flow is proportional to area and to the square root of the pressure difference (Bernoulli)',
      mark: 'read',
    },
    acceptance: commonPractice('±10 % of the nominal quantity, no drop within a minute, even cone, two or three repeats'),
  },
  dimensional: 'the density of the fluid is an empirical line in kg/m³ per kelvin',
  compute(input, context) {
    const { nominalMass, nominalVolume, nominalPressure, testPressure } = input;
    if (nominalMass === undefined && nominalVolume === undefined) {
      return inconsistentInputs('give the nominal quantity as a mass or as a volume', ['nominalMass'], ['nominalVolume']);
    }
    if (nominalMass !== undefined && nominalVolume !== undefined) {
      context.warn('nominal_twice', 'The nominal quantity was given twice; the mass was used.', ['nominalVolume']);
    }
    const fluidDensity = ureaSolutionDensity(input.ureaFraction, input.fluidTemperature);
    const counted = input.discardFirst && input.runs.length > 1 ? input.runs.slice(1) : input.runs;
    const flows: number[] = [];
    for (const [index, { collectedMass, collectedVolume, duration }] of input.runs.entries()) {
      if (collectedMass === undefined && collectedVolume === undefined) {
        return inconsistentInputs('give each run a mass or a volume', ['runs', index, 'collectedMass'], ['runs', index, 'collectedVolume']);
      }
      if (collectedMass !== undefined && collectedVolume !== undefined && !sameFluid(collectedMass, collectedVolume, fluidDensity)) {
        const text =
          'Mass and volume of this run do not belong to the fluid entered: foam, a misreading, or diluted fluid. The mass was used.';
        context.warn('density_differs', text, ['runs', index]);
      }
      const collected = collectedMass ?? (collectedVolume ?? 0) * fluidDensity;
      if (index >= input.runs.length - counted.length) flows.push(collected / duration);
    }
    if ((nominalPressure === undefined) !== (testPressure === undefined)) {
      context.warn('pressure_not_scaled', 'Only one of the two pressures was given: the flow was not scaled to the pressure.', [
        'testPressure',
      ]);
    }
    const nominalFlow = (nominalMass ?? (nominalVolume ?? 0) * fluidDensity) / input.nominalDuration;
    const atPressure =
      nominalPressure === undefined || testPressure === undefined
        ? nominalFlow
        : scaleOrificeFlow(nominalFlow, nominalPressure, testPressure);
    const expectedMassFlow = (atPressure * input.testDuty) / input.nominalDuty;
    const average = mean(flows) ?? 0;
    const spread = average === 0 ? 0 : (standardDeviation(flows) ?? 0) / average;
    const factor = coverageFactor(0.95, flows.length - 1) ?? 0;
    const uncertainty = (average / expectedMassFlow) * Math.hypot((factor * spread) / Math.sqrt(flows.length), input.measuringUncertainty);
    const deviation = average / expectedMassFlow - 1;
    const quantityVerdict = dosingQuantityVerdict({
      count: flows.length,
      deviation,
      uncertainty,
      tolerance: input.tolerance,
      spread,
      greatestSpread: input.greatestSpread,
    });
    context.warn('tolerance_by_practice', 'Tolerance, spread and drip criteria are common practice, not a published limit.');
    const low = deviation + uncertainty < 0 ? orificeLoss(1 + deviation) : undefined;
    return {
      runsCounted: flows.length,
      fluidDensity,
      expectedMassFlow,
      spread,
      uncertainty,
      massFlow: average,
      volumeFlow: average / fluidDensity,
      deviation,
      missingArea: low?.area,
      missingPressure: low?.pressure,
      verdict: wholeVerdict(quantityVerdict, input.drip, input.spray),
    };
  },
  advise({ verdict }) {
    if (verdict === 'low-once')
      return [{ tone: 'do', text: 'Fill the line, empty the cup, and run the test twice more: air in the line makes the first run low.' }];
    if (verdict === 'high-once' || verdict === 'too-few-runs') return [{ tone: 'do', text: 'Empty the cup and run the test twice more.' }];
    if (verdict === 'low')
      return [
        {
          tone: 'do',
          text: 'The nozzle is partly clogged or the pressure is low: read the line pressure during the test, then look at filters, line and tip for crystals.',
        },
        { tone: 'do', text: 'Check the strength of the fluid too: weak fluid and a low quantity multiply.' },
      ];
    if (verdict === 'high')
      return [
        { tone: 'do', text: 'Read the line pressure, and see that the valve closes: a worn tip or one that sticks open gives too much.' },
      ];
    return [];
  },
});

/** Mass and volume within 3 % of each other, about what a cup can tell. */
function sameFluid(collectedMass: number, collectedVolume: number, fluidDensity: number): boolean {
  return Math.abs(collectedMass - collectedVolume * fluidDensity) <= 0.03 * collectedMass;
}

function wholeVerdict(
  quantityVerdict: ReturnType<typeof dosingQuantityVerdict>,
  drip: 'none' | 'drips' | 'not-watched',
  spray: 'even' | 'uneven' | 'not-watched',
): keyof typeof verdicts {
  if (drip === 'drips') return 'drips';
  if (quantityVerdict !== 'pass') return quantityVerdict;
  if (spray === 'uneven') return 'uneven-spray';
  return drip === 'none' && spray === 'even' ? 'pass' : 'quantity-only';
}
