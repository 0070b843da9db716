import {
  choiceOutput,
  commonPractice,
  constant,
  defineCalculation,
  inconsistentInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import { density, fraction, length, mass, massFraction, molarMass, ratio, volume, volumePerDistance } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { cfr1065 } from '../../sources.js';
import { molarMassOfNitrogenDioxide, molarMassOfUrea } from '../constants.js';
import { iso22241Part1, ureaHydrolysis } from '../sources.js';
import { effectiveAmmoniaRatio, effectiveRatioVerdict } from './kernel.js';

export const effectiveRatioCalculation = defineCalculation({
  id: 'effective-ratio',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Effective ammonia ratio from fills and sensors',
  purpose: 'Does the reductant that was used between two fills match the NOx that was converted?',
  usedBy: ['technician', 'trainer'],
  keywords: ['ammonia-to-NOx ratio', 'consumption', 'fills', 'under-dosing', 'leak', 'dilution'],
  method: 'moles of ammonia in the fluid used over moles of NOx',
  inputs: z.strictObject({
    reductantVolume: quantity(volume, {
      symbol: 'V_r',
      label: 'Reductant used between two fills',
      description: 'Filled to the same mark both times.',
      above: '0 L',
      max: '2000 L',
      example: '12.5 L',
      units: ['L'],
    }),
    noxBefore: quantity(mass, {
      symbol: 'm_1',
      label: 'NOx before the catalyst over the same time, as NO2',
      description: 'Flow times reading, added up. Ammonia is not read here.',
      above: '0 kg',
      max: '10000 kg',
      example: '7.8 kg',
      units: ['kg', 'g'],
    }),
    noxBehind: quantity(mass, {
      symbol: 'm_2',
      label: 'NOx behind the catalyst over the same time, as NO2',
      description: 'May hold ammonia slip that the sensor reads as NOx.',
      min: '0 kg',
      max: '10000 kg',
      example: '1.1 kg',
      units: ['kg', 'g'],
    }),
    ureaFraction: quantityWithDefault(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      min: '5 %',
      max: '52 %',
      usual: ['31.8 %', '33.2 %'],
      usualReason: 'ISO 22241-1',
      example: '32.5 %',
      units: ['%'],
      default: '32.5 %',
      defaultReason: 'target of ISO 22241-1; measure it before blaming the dosing',
    }),
    reductantDensity: quantityWithDefault(density, {
      symbol: '\\rho_r',
      label: 'Density of the fluid',
      min: '990 kg/m3',
      max: '1160 kg/m3',
      usual: ['1087 kg/m3', '1093 kg/m3'],
      usualReason: 'ISO 22241-1 at 20 °C',
      example: '1090 kg/m3',
      units: ['kg/m3'],
      default: '1090 kg/m3',
      defaultReason: 'middle of the range of ISO 22241-1',
    }),
    relativeUncertainty: quantityWithDefault(fraction, {
      symbol: 'u',
      label: 'How well the ratio is known (±)',
      min: '0 %',
      max: '80 %',
      example: '20 %',
      units: ['%'],
      default: '20 %',
      defaultReason: 'two sensors, a flow and a fill mark together; common practice, no source',
    }),
    lowestRatio: quantityWithDefault(ratio, {
      symbol: 'r_{lo}',
      label: 'Lowest plausible ratio',
      min: '0.1',
      max: '1.2',
      example: '0.8',
      default: '0.8',
      defaultReason: 'common practice, no source',
    }),
    highestRatio: quantityWithDefault(ratio, {
      symbol: 'r_{hi}',
      label: 'Highest plausible ratio',
      min: '1',
      max: '3',
      example: '1.3',
      default: '1.3',
      defaultReason: 'common practice, no source',
    }),
    distance: quantity(length, {
      symbol: 's',
      label: 'Distance between the fills',
      above: '0 km',
      max: '100000 km',
      example: '10000 km',
      units: ['km', 'mi'],
    }).optional(),
  }),
  intermediates: {
    reductantMass: quantityOutput(mass, { symbol: 'm_r', label: 'Reductant used, by mass', digits: 4, units: ['kg'] }),
    conversion: quantityOutput(fraction, { symbol: '\\eta', label: 'Conversion by the sensors', digits: 3, units: ['%'] }),
    expectedReductant: quantityOutput(volume, { symbol: 'V_e', label: 'Reductant that the converted NOx needs', digits: 3, units: ['L'] }),
  },
  outputs: {
    ratioToInlet: quantityOutput(ratio, { symbol: '\\alpha', label: 'Ammonia per NOx before the catalyst', digits: 3 }),
    ratioToConverted: quantityOutput(ratio, { symbol: 'r', label: 'Ammonia per converted NOx', digits: 3 }),
    reductantPerDistance: optional(
      quantityOutput(volumePerDistance, { symbol: 'c', label: 'Reductant per distance', digits: 3, units: ['L/1000km'] }),
    ),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        plausible: 'fluid used and NOx converted match',
        'too-little': 'less fluid than the conversion needs: under-dosing with a sensor fault, or a wrong flow',
        'too-much': 'more fluid than the conversion needs: a leak, slip, diluted fluid or a sensor that reads wrong',
        undecided: 'undecided: the limit lies inside the uncertainty',
      },
    }),
  },
  constants: {
    urea: constant(molarMass, molarMassOfUrea, { symbol: 'M_u', label: 'Molar mass of urea', source: 'cfr1065' }),
    nitrogenDioxide: constant(molarMass, molarMassOfNitrogenDioxide, { symbol: 'M_{NO_2}', label: 'Molar mass of NO2', source: 'cfr1065' }),
  },
  steps: [
    { gives: 'reductantMass', tex: '[[reductantMass]] = [[reductantDensity]]\\,[[reductantVolume]]' },
    { gives: 'conversion', tex: '[[conversion]] = 1-\\frac{[[noxBehind]]}{[[noxBefore]]}' },
    {
      gives: 'ratioToInlet',
      tex: '[[ratioToInlet]] = \\frac{2\\,[[reductantMass]]\\,[[ureaFraction]]/[[urea]]}{[[noxBefore]]/[[nitrogenDioxide]]}',
      source: 'ureaHydrolysis',
    },
    { gives: 'ratioToConverted', tex: '[[ratioToConverted]] = \\frac{[[ratioToInlet]]}{[[conversion]]}' },
    { gives: 'expectedReductant', tex: '[[expectedReductant]] = \\frac{[[reductantVolume]]}{[[ratioToConverted]]}' },
    { gives: 'reductantPerDistance', tex: '[[reductantPerDistance]] = \\frac{[[reductantVolume]]}{[[distance]]}' },
    { gives: 'verdict', text: 'Ammonia per converted NOx against the plausible range.', source: 'practice' },
  ],
  assumptions: [{ code: 'one_to_one', text: 'One ammonia per converted NOx, which holds up to equal parts of NO and NO2.' }],
  limits: [{ code: 'long_enough', text: 'Over less than about one tank the fill mark and the stored ammonia rule the result.' }],
  cautions: [cautions.sensorFirst, cautions.noDefeat],
  sources: {
    cfr1065,
    ureaHydrolysis,
    iso22241Part1,
    practice: commonPractice('Below 0.8 under-dosing or dilution, above 1.3 a leak, slip or a sensor bias'),
  },
  compute(input, context) {
    if (input.noxBehind >= input.noxBefore)
      return inconsistentInputs('behind the catalyst there must be less NOx than before it', ['noxBehind'], ['noxBefore']);
    const { urea, nitrogenDioxide } = context.constants;
    const reductantMass = input.reductantDensity * input.reductantVolume;
    const ratioToInlet = effectiveAmmoniaRatio(
      { reductantMass, ureaFraction: input.ureaFraction, noxMass: input.noxBefore },
      { urea, nitrogenDioxide },
    );
    const conversion = 1 - input.noxBehind / input.noxBefore;
    const ratioToConverted = ratioToInlet / conversion;
    context.warn('range_by_practice', 'The plausible range is common practice, not a published limit.');
    return {
      reductantMass,
      conversion,
      ratioToInlet,
      ratioToConverted,
      expectedReductant: input.reductantVolume / ratioToConverted,
      reductantPerDistance: input.distance === undefined ? undefined : input.reductantVolume / input.distance,
      verdict: effectiveRatioVerdict(ratioToConverted, input.relativeUncertainty, input.lowestRatio, input.highestRatio),
    };
  },
  advise({ verdict }) {
    if (verdict === 'too-much')
      return [
        {
          tone: 'do',
          text: 'Look for leaks and crystals at tank, lines and injector, measure the urea content, then compare the sensors.',
        },
      ];
    if (verdict === 'too-little')
      return [{ tone: 'do', text: 'Compare the sensors in the same gas and check the flow signal; then test the dosed quantity.' }];
    return [];
  },
});
