import * as wf from '@wallflow/calculation';
import { density, fraction, length, mass, massFraction, ratio, volume, volumePerDistance } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { nitrogenDioxideMolarMass, ureaMolarMass } from '../named-constants.js';
import { iso22241Part1, ureaHydrolysis } from '../sources.js';
import { effectiveAmmoniaRatio, effectiveRatioVerdict } from './kernel.js';

const practice = wf.commonPractice('Below 0.8 under-dosing or dilution, above 1.3 a leak, slip or a sensor bias');

export const effectiveRatioCalculation = wf.defineCalculation({
  id: 'effective-ratio',
  subject: 'reductant',
  title: 'Effective ammonia ratio from fills and sensors',
  purpose: 'Does the reductant that was used between two fills match the NOx that was converted?',
  keywords: 'ammonia-to-NOx ratio, consumption, fills, under-dosing, leak, dilution, DEF, AUS 32, SCR',
  method: 'moles of ammonia in the fluid used over moles of NOx',
  inputs: {
    reductantVolume: wf.quantity(volume, {
      symbol: 'V_r',
      label: 'Reductant used between two fills',
      description: 'Filled to the same mark both times.',
      range: '0 < x <= 2000 L',
      example: '10.6 L',
      units: ['L'],
    }),
    noxMassBefore: wf.quantity(mass, {
      symbol: 'm_1',
      label: 'NOx before the catalyst over the same time, as NO2',
      description: 'Exhaust flow times reading, added up. There is no ammonia here to be read as NOx.',
      range: '0 < x <= 10000 kg',
      example: '7.8 kg',
      units: ['kg', 'g'],
    }),
    noxMassAfter: wf.quantity(mass, {
      symbol: 'm_2',
      label: 'NOx after the catalyst over the same time, as NO2',
      description: 'Ammonia slip is read as NOx and counts here.',
      range: '0 <= x <= 10000 kg',
      example: '2.55 kg',
      units: ['kg', 'g'],
    }),
    ureaFraction: wf.quantity(massFraction, {
      symbol: 'w_u',
      label: 'Urea in the fluid, by mass',
      description: 'Weak fluid and a low dosed quantity multiply: 30.1 % of urea and 43 mL of 50 mL make 20 % less ammonia together.',
      range: '5 <= x <= 52 %',
      example: '30.1 %',
      usual: ['31.8 %', '33.2 %', 'ISO 22241-1'],
      units: ['%'],
      default: ['32.5 %', 'target of ISO 22241-1; measure it before blaming the dosing'],
    }),
    reductantDensity: wf.quantity(density, {
      symbol: '\\rho_r',
      label: 'Density of the reductant',
      range: '990 <= x <= 1160 kg/m3',
      usual: ['1087 kg/m3', '1093 kg/m3', 'ISO 22241-1 at 20 °C'],
      example: '1084 kg/m3',
      units: ['kg/m3'],
      default: ['1090 kg/m3', 'middle of the range of ISO 22241-1'],
    }),
    relativeUncertainty: wf.quantity(fraction, {
      symbol: 'u',
      label: 'Uncertainty of the ratio (±)',
      range: '0 <= x <= 80 %',
      units: ['%'],
      default: ['20 %', 'two sensors, a flow and a fill mark together; common practice, no source'],
    }),
    lowestDosingRatio: wf.quantity(ratio, {
      symbol: 'r_{lo}',
      label: 'Lowest plausible ratio',
      range: '0.1 <= x <= 1.2',
      default: ['0.8', 'common practice, no source'],
    }),
    highestDosingRatio: wf.quantity(ratio, {
      symbol: 'r_{hi}',
      label: 'Highest plausible ratio',
      range: '1 <= x <= 3',
      default: ['1.3', 'common practice, no source'],
    }),
    distance: wf.optional(
      wf.quantity(length, {
        symbol: 's',
        label: 'Distance between the fills',
        range: '0 < x <= 100000 km',
        example: '1000 km',
        units: ['km', 'mi'],
      }),
    ),
  },
  example: { distance: '1000 km' },
  intermediates: {
    reductantMass: wf.quantityOutput(mass, { symbol: 'm_r', label: 'Reductant used, by mass', digits: 4, units: ['kg'] }),
    conversion: wf.quantityOutput(fraction, { symbol: '\\eta', label: 'Conversion', digits: 3, units: ['%'] }),
    expectedReductant: wf.quantityOutput(volume, {
      symbol: 'V_e',
      label: 'Reductant that the converted NOx needs',
      digits: 3,
      units: ['L'],
    }),
  },
  outputs: {
    ratioToInlet: wf.quantityOutput(ratio, { symbol: '\\alpha', label: 'Ammonia per NOx before the catalyst', digits: 3 }),
    ratioToConverted: wf.quantityOutput(ratio, { symbol: 'r', label: 'Ammonia per converted NOx', digits: 3 }),
    reductantPerDistance: wf.optional(
      wf.quantityOutput(volumePerDistance, { symbol: 'c', label: 'Reductant per distance', digits: 3, units: ['L/1000km'] }),
    ),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        plausible: 'fluid used and NOx converted match',
        'too-little': 'less fluid than the conversion needs: too little dosed with a sensor fault, or a wrong flow',
        'too-much': 'more fluid than the conversion needs: a leak, slip, weak fluid or a sensor that reads wrong',
        undecided: 'not clear: the limit lies inside the uncertainty',
      },
    }),
  },
  constants: { ureaMolarMass, nitrogenDioxideMolarMass },
  answer: 'verdict',
  steps: [
    wf.formula('reductantMass', 'reductantDensity * reductantVolume'),
    wf.formula('conversion', '1 - noxMassAfter / noxMassBefore'),
    wf.formula(
      'ratioToInlet',
      '2 * reductantMass * ureaFraction / ureaMolarMass / (noxMassBefore / nitrogenDioxideMolarMass)',
      ureaHydrolysis,
      undefined,
      'One urea gives two ammonia.',
    ),
    wf.formula('ratioToConverted', 'ratioToInlet / conversion'),
    wf.formula('expectedReductant', 'reductantVolume / ratioToConverted'),
    wf.formula('reductantPerDistance', 'reductantVolume / distance'),
    wf.verdict(
      'verdict',
      {
        'too-little': 'ratioToConverted * (1 + relativeUncertainty) < lowestDosingRatio',
        'too-much': 'ratioToConverted * (1 - relativeUncertainty) > highestDosingRatio',
        plausible:
          'ratioToConverted * (1 - relativeUncertainty) >= lowestDosingRatio and ratioToConverted * (1 + relativeUncertainty) <= highestDosingRatio',
        undecided: 'otherwise',
      },
      practice,
    ),
  ],
  assumptions: { one_to_one: 'One ammonia per converted NOx, which holds up to equal parts of NO and NO2.' },
  limits: { long_enough: 'Over less than about one tank, errors of the fill mark and ammonia stored in the catalyst decide the result.' },
  cautions: [cautions.sensorFirst, cautions.noDefeat],
  sources: [iso22241Part1],
  compute(input, context) {
    if (input.noxMassAfter >= input.noxMassBefore)
      return wf.inconsistentInputs('there must be less NOx after the catalyst than before it', ['noxMassAfter'], ['noxMassBefore']);
    const { ureaMolarMass: urea, nitrogenDioxideMolarMass: nitrogenDioxide } = context.constants;
    const reductantMass = input.reductantDensity * input.reductantVolume;
    const ratioToInlet = effectiveAmmoniaRatio(
      { reductantMass, ureaFraction: input.ureaFraction, noxMass: input.noxMassBefore },
      { urea, nitrogenDioxide },
    );
    const conversion = 1 - input.noxMassAfter / input.noxMassBefore;
    const ratioToConverted = ratioToInlet / conversion;
    context.warn('range_by_practice', 'The plausible range is common practice, not a published limit.');
    return {
      reductantMass,
      conversion,
      ratioToInlet,
      ratioToConverted,
      expectedReductant: input.reductantVolume / ratioToConverted,
      reductantPerDistance: input.distance === undefined ? undefined : input.reductantVolume / input.distance,
      verdict: effectiveRatioVerdict(ratioToConverted, input.relativeUncertainty, input.lowestDosingRatio, input.highestDosingRatio),
    };
  },
  advise({ verdict }) {
    if (verdict === 'too-much')
      return [
        {
          tone: 'do',
          text: 'Measure the urea content, look for leaks and crystals at tank, lines and injector, then compare the sensors.',
        },
      ];
    if (verdict === 'too-little')
      return [
        { tone: 'do', text: 'Compare the sensors in the same gas and check the flow signal; then test the dosed quantity.' },
        { tone: 'note', text: 'If the fluid is weak as well, both shortfalls multiply: put both right before you judge the catalyst.' },
      ];
    return [];
  },
});
