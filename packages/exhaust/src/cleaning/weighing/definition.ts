import {
  choiceOutput,
  constant,
  defineCalculation,
  inconsistentInputs,
  missingInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { absolutePressure, fraction, mass, molarHeatCapacity, molarMass, temperature, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';
import { cfr1065, siBrochure } from '../../sources.js';
import { acceptancePractice, airBuoyancy, weighingPractice, weighingUncertainty, weightDifference } from '../sources.js';
import { airLift, dryMass, dryMassUncertainty, massRecovery } from './kernel.js';
import { recoveryVerdict, sootVerdict } from './verdict.js';

const massInput = (symbol: string, label: string, example: string, description?: string) =>
  quantity(mass, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    above: '0 g',
    max: '200 kg',
    example,
    units: ['g', 'kg', 'lb'],
  });
const temperatureInput = (symbol: string, label: string, example: string) =>
  quantity(temperature, {
    symbol,
    label,
    min: '-40 °C',
    max: '700 °C',
    usual: ['120 °C', '250 °C'],
    usualReason: { below: 'a cooler filter takes up water from the air', above: 'too hot to handle, and its hot air lifts the pan' },
    example,
  });
const moistureInput = (symbol: string, label: string) =>
  quantity(fraction, {
    symbol,
    label,
    description: 'Only for a filter weighed cold: weigh it once cold and once hot; the difference over the hot weight.',
    min: '0 %',
    max: '30 %',
    example: '0.4 %',
  }).optional();
const massOutput = (symbol: string, label: string) => quantityOutput(mass, { symbol, label, digits: 6, units: ['g', 'kg', 'lb'] });
// The difference of two nearly equal weights counts, so the weights are shown in full.
const wholeMass = (symbol: string, label: string) =>
  quantityOutput(mass, { symbol, label, digits: 6, leastDigits: 5, units: ['g', 'kg', 'lb'] });
const shareOutput = (symbol: string, label: string) => quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });

export const filterWeighingCalculation = defineCalculation({
  id: 'filter-weighing',
  version: '2.0.0',
  subject: 'cleaning',
  title: 'Weighing before and after a clean',
  purpose: 'How much came out of the filter, how much ash stayed, and is that sure enough?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['weigh', 'mass', 'recovery', 'ash', 'moisture', 'hot'],
  method: 'dry masses compared, weighed hot or corrected for moisture, and for the lift of the hot air inside',
  inputs: z.strictObject({
    massBefore: massInput('m_1', 'Weight before cleaning', '12.200 kg'),
    temperatureBefore: temperatureInput('T_1', 'Temperature of the filter at that weighing', '150 °C'),
    massAfter: massInput('m_2', 'Weight after cleaning', '12.010 kg'),
    temperatureAfter: temperatureInput('T_2', 'Temperature of the filter at that weighing', '150 °C'),
    moistureBefore: moistureInput('u_1', 'Moisture in it before'),
    moistureAfter: moistureInput('u_2', 'Moisture in it after'),
    newMass: massInput(
      'm_0',
      'Weight of this filter when new, dry',
      '12.000 kg',
      'From your own record of this part or from its maker.',
    ).optional(),
    bakedMass: massInput('m_3', 'Weight after baking it once more, hot', '12.009 kg', 'Shows whether soot is left.').optional(),
    gasVolume: quantity(volume, {
      symbol: 'V_g',
      label: 'Air inside the filter',
      description: 'Channels and pores, about 0.8 to 0.85 of its volume. Given, the weights are corrected for the lift of the hot air.',
      above: '0 L',
      max: '200 L',
      example: '2.1 L',
      units: ['L', 'in3'],
    }).optional(),
    ambientTemperature: quantityWithDefault(temperature, {
      symbol: 'T_a',
      label: 'Temperature of the air in the room',
      min: '-40 °C',
      max: '60 °C',
      example: '20 °C',
      default: '20 °C',
      defaultReason: 'an indoor workshop; 5 K change the lift by 2 %',
    }),
    ambientPressure: quantityWithDefault(absolutePressure, {
      symbol: 'p_a',
      label: 'Pressure of the air in the room',
      min: '50 kPa',
      max: '110 kPa',
      example: '1013.25 hPa',
      units: ['hPa', 'kPa', 'mbar'],
      default: '1013.25 hPa',
      defaultReason: 'sea level; 1000 m up the lift is a tenth smaller',
    }),
    scaleUncertainty: quantityWithDefault(mass, {
      symbol: 'u_m',
      label: 'Standard uncertainty of one weighing',
      description: 'Of the mean, if each weighing is the mean of several: that of the scale over the square root of their number.',
      min: '0.01 g',
      max: '500 g',
      example: '2 g',
      units: ['g'],
      default: '2 g',
      defaultReason: 'common practice, no source: workshop scales are good to 1 to 5 g',
    }),
    moistureUncertainty: quantityWithDefault(fraction, {
      symbol: 'u_u',
      label: 'Standard uncertainty of a moisture',
      description: 'Only counts for a filter weighed cold. What is typed as ± of a moisture shows in the results, not in the verdict.',
      min: '0 %',
      max: '10 %',
      example: '0.1 %',
      default: '0.1 %',
      defaultReason: 'a guess: a moisture measured on another day is hardly better; that is 12 g of a filter of 12 kg',
    }),
    neededRecovery: quantityWithDefault(fraction, {
      symbol: 'r_0',
      label: 'Recovery that is asked for',
      min: '1 %',
      max: '100 %',
      example: '90 %',
      default: '90 %',
      defaultReason: 'common practice, no source: 90 to 95 %',
    }),
    bakeLimit: quantityWithDefault(mass, {
      symbol: 'd_0',
      label: 'Loss by one more bake that still counts as free of soot',
      min: '0.1 g',
      max: '100 g',
      example: '2 g',
      units: ['g'],
      default: '2 g',
      defaultReason: 'common practice, no source: 1 to 2 g',
    }),
  }),
  example: { newMass: '12.000 kg', bakedMass: '12.009 kg' },
  intermediates: {
    liftBefore: optional(massOutput('l_1', 'Lift of the hot air in it before')),
    liftAfter: optional(massOutput('l_2', 'Lift of the hot air in it after')),
    dryBefore: wholeMass('d_1', 'Dry weight before'),
    dryAfter: wholeMass('d_2', 'Dry weight after'),
    removedUncertainty: massOutput('u_r', 'Standard uncertainty of what came out'),
    bakeLoss: optional(massOutput('d_3', 'Loss by one more bake')),
    bakeLossUncertainty: optional(massOutput('u_3', 'Standard uncertainty of that loss')),
  },
  outputs: {
    removed: massOutput('m_r', 'Came out'),
    residue: optional(massOutput('m_a', 'Still in it against new, ash if it was baked')),
    residueUncertainty: optional(massOutput('u_a', 'Standard uncertainty of it')),
    recovery: optional(shareOutput('r', 'Recovery')),
    recoveryUncertainty: optional(shareOutput('u(r)', 'Standard uncertainty of the recovery')),
    soot: choiceOutput({
      label: 'Soot',
      options: {
        none: 'free of soot: one more bake took out no more than the limit, error counted',
        left: 'soot is left: one more bake made it lighter than the limit and the error allow',
        unclear: 'cannot be told: the limit lies within twice the error of the loss, or the filter got heavier',
        unknown: 'not known: it was not baked and weighed again',
      },
    }),
    verdict: choiceOutput({
      label: 'Verdict by weight',
      options: {
        clean: 'clean by weight, by more than twice the error of the weighings',
        'not-clean': 'not clean by weight, by more than twice the error of the weighings',
        unclear: 'cannot be told: what is asked for lies within twice the error of the weighings',
        lighter:
          'lighter than when new, by more than twice the error: parts are missing, other parts were weighed, or the reference is wrong',
        unknown: 'not known: the weight when new is missing',
      },
    }),
  },
  constants: {
    dryAbove: constant(temperature, 393.15, {
      symbol: 'T_d',
      label: 'Weighed hotter than this it counts as dry',
      source: 'weighingPractice',
    }),
    airMolarMass: constant(molarMass, molarMassOfDryAir, { symbol: 'M', label: 'Molar mass of dry air', source: 'cfr1065' }),
    gasConstant: constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: 'siBrochure' }),
  },
  steps: [
    {
      gives: 'liftBefore',
      tex: '[[liftBefore]] = [[gasVolume]]\\,\\frac{[[ambientPressure]]\\,[[airMolarMass]]}{[[gasConstant]]}\\left(\\frac{1}{[[ambientTemperature]]}-\\frac{1}{[[temperatureBefore]]}\\right)',
      source: 'airBuoyancy',
    },
    { gives: 'liftAfter', text: 'The same after cleaning: [[liftAfter]].', source: 'airBuoyancy' },
    {
      gives: 'dryBefore',
      text: 'As weighed, with the lift added; if it was not hot, over one plus the moisture: [[dryBefore]].',
      source: 'weighingPractice',
    },
    { gives: 'dryAfter', text: 'The same after cleaning: [[dryAfter]].', source: 'weighingPractice' },
    { gives: 'removed', tex: '[[removed]] = [[dryBefore]]-[[dryAfter]]', source: 'weightDifference' },
    {
      gives: 'removedUncertainty',
      text: 'Error of the scale ([[scaleUncertainty]]) at both weighings, and of the moisture at a cold one: [[removedUncertainty]].',
      source: 'weighingUncertainty',
    },
    { gives: 'residue', tex: '[[residue]] = [[dryAfter]]-[[newMass]]', source: 'weightDifference' },
    {
      gives: 'residueUncertainty',
      text: 'The same for the weight after and that when new: [[residueUncertainty]].',
      source: 'weighingUncertainty',
    },
    {
      gives: 'recovery',
      tex: '[[recovery]] = \\frac{[[dryBefore]]-[[dryAfter]]}{[[dryBefore]]-[[newMass]]}',
      source: 'acceptancePractice',
    },
    { gives: 'recoveryUncertainty', text: 'From the three weighings: [[recoveryUncertainty]].', source: 'weighingUncertainty' },
    {
      gives: 'bakeLoss',
      text: 'Dry weight after, less the weight after one more bake, weighed as hot as before it and with the same lift: [[bakeLoss]].',
      source: 'acceptancePractice',
    },
    {
      gives: 'bakeLossUncertainty',
      text: 'From the weighing after cleaning and the one after the bake: [[bakeLossUncertainty]].',
      source: 'weighingUncertainty',
    },
    {
      gives: 'soot',
      text: 'Loss by one more bake with twice its uncertainty on either side, against its limit ([[bakeLimit]]).',
      source: 'acceptancePractice',
    },
    {
      gives: 'verdict',
      text: 'Weight that stays against new first; then the recovery, with twice its uncertainty, against what is asked for ([[neededRecovery]]).',
      source: 'acceptancePractice',
    },
  ],
  assumptions: [
    { code: 'same_parts', text: 'The same parts are on the scale each time: clamps, sensors and gaskets off.' },
    {
      code: 'new_is_cold',
      text: 'The weight when new is that of the cold, dry part, or, where no lift is counted, of the part as hot as now.',
    },
  ],
  limits: [
    {
      code: 'air_currents',
      text: 'Warm air that rises round a hot part lifts it too, by a gram or so that is not counted here: weigh at the same temperature both times, out of draughts.',
    },
    {
      code: 'weight_is_not_flow',
      text: 'A filter can be light and still have a blocked face or a crack: flow, depth and light belong to the judgement.',
    },
  ],
  cautions: [cautions.ashDust, cautions.hotExhaust, cautions.waste, cautions.makerFirst],
  sources: { weightDifference, weighingUncertainty, weighingPractice, acceptancePractice, airBuoyancy, cfr1065, siBrochure },
  compute(input, { constants, warn }) {
    const { massBefore, massAfter, temperatureBefore, temperatureAfter, newMass, bakedMass, scaleUncertainty } = input;
    const cold = (at: number) => at < constants.dryAbove;
    if (cold(temperatureBefore) && input.moistureBefore === undefined) return missingInputs('moistureBefore');
    if (cold(temperatureAfter) && input.moistureAfter === undefined) return missingInputs('moistureAfter');
    if (Math.abs(temperatureBefore - temperatureAfter) > 30) {
      warn('unequal_temperature', 'The two weighings differ by more than 30 K: moisture and air currents do not cancel.', [
        'temperatureAfter',
      ]);
    }
    const lift = (at: number) =>
      input.gasVolume === undefined
        ? undefined
        : airLift({ ...input, gasVolume: input.gasVolume, temperature: at, molarMass: constants.airMolarMass }, constants.gasConstant);
    const liftBefore = lift(temperatureBefore);
    const liftAfter = lift(temperatureAfter);
    const dry = (weighed: number, at: number, moisture = 0) => ({
      mass: cold(at) ? dryMass(weighed, moisture) : weighed,
      uncertainty: cold(at) ? dryMassUncertainty(weighed, moisture, scaleUncertainty, input.moistureUncertainty) : scaleUncertainty,
    });
    const before = dry(massBefore + (liftBefore ?? 0), temperatureBefore, input.moistureBefore);
    const after = dry(massAfter + (liftAfter ?? 0), temperatureAfter, input.moistureAfter);
    const whenNew = newMass === undefined ? undefined : { mass: newMass, uncertainty: scaleUncertainty };
    if (whenNew !== undefined && before.mass <= whenNew.mass + Math.hypot(before.uncertainty, whenNew.uncertainty)) {
      return inconsistentInputs(
        'the dirty filter is no heavier than a new one, beyond the error of the weighings: weighed wrongly, or not the same part',
        ['newMass'],
        ['massBefore'],
      );
    }
    const recovery = whenNew === undefined ? undefined : massRecovery({ before, after, whenNew });
    const liftBaked = lift(Math.max(temperatureAfter, constants.dryAbove)) ?? 0;
    const bakeLoss =
      bakedMass === undefined
        ? undefined
        : { mass: after.mass - (bakedMass + liftBaked), uncertainty: Math.hypot(after.uncertainty, scaleUncertainty) };
    if (bakeLoss !== undefined && bakeLoss.mass < -2 * bakeLoss.uncertainty) {
      warn('heavier_after_bake', 'Heavier after the bake than before it: it took up water while it cooled, or a weight was misread.', [
        'bakedMass',
      ]);
    }
    return {
      liftBefore,
      liftAfter,
      dryBefore: before.mass,
      dryAfter: after.mass,
      removed: before.mass - after.mass,
      removedUncertainty: Math.hypot(before.uncertainty, after.uncertainty),
      residue: recovery?.residue.mass,
      residueUncertainty: recovery?.residue.uncertainty,
      recovery: recovery?.share,
      recoveryUncertainty: recovery?.uncertainty,
      bakeLoss: bakeLoss?.mass,
      bakeLossUncertainty: bakeLoss?.uncertainty,
      soot: sootVerdict(bakeLoss, input.bakeLimit),
      verdict: recoveryVerdict(recovery, input.neededRecovery),
    };
  },
  advise: ({ soot, verdict }) => [
    ...(soot === 'left' ? ([{ tone: 'do', text: 'Bake it once more: what still burns off is soot, not ash.' }] as const) : []),
    ...(soot === 'unclear'
      ? ([
          {
            tone: 'do',
            text: 'Weigh both times on a finer scale, or several times and give the uncertainty of the mean, at the same heat.',
          },
        ] as const)
      : []),
    ...(verdict === 'lighter'
      ? ([
          { tone: 'do-not', text: 'Do not take it for clean: ash cannot weigh less than nothing.' },
          {
            tone: 'do',
            text: 'Look for broken ceramic and a lost mat or clamp, weigh the same parts as when new, and check the weight of the new part.',
          },
          { tone: 'note', text: 'A hot filter reads lighter by the lift of the air in it: give the air inside to count it.' },
        ] as const)
      : []),
    ...(verdict === 'unknown'
      ? ([{ tone: 'note', text: 'Note the dry weight of this part now: it is the reference for its next clean.' }] as const)
      : []),
    ...(verdict === 'not-clean'
      ? ([{ tone: 'do', text: 'Clean it again, backwards, before it goes on; do not reset the ash value yet.' }] as const)
      : []),
  ],
});
