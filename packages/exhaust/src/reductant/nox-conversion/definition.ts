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
import { fraction, moleFraction, ratio, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { ammoniaPerNox } from '../reductant-demand/stoichiometry.js';
import { scrReactions, sensorCrossSensitivity } from '../sources.js';
import { ammoniaBalance, apparentConversion, conversionWithAmmonia } from './kernel.js';
import { conversionVerdict, conversionVerdicts } from './verdict.js';

const ppm = { min: '0 ppm', max: '10000 ppm', units: ['ppm'] } as const;

export const noxConversionCalculation = defineCalculation({
  id: 'nox-conversion',
  version: '1.2.0',
  subject: 'reductant',
  title: 'NOx conversion from two sensors',
  purpose: 'How much NOx does the SCR catalyst convert, and could a poor figure be ammonia slip instead?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['SCR', 'conversion', 'efficiency', 'NOx sensor', 'ammonia slip', 'cross-sensitivity'],
  method: 'readings before and behind the catalyst, corrected for ammonia where it is known',
  inputs: z.strictObject({
    upstream: quantity(moleFraction, {
      symbol: 'x_1',
      label: 'NOx before the catalyst',
      above: '0 ppm',
      max: '10000 ppm',
      usual: ['50 ppm', '3000 ppm'],
      usualReason: {
        below: 'the error of the sensors rules the result',
        above: 'diesel engines rarely make so much; check the scaling of the signal',
      },
      example: '500 ppm',
      units: ['ppm'],
    }),
    downstream: quantity(moleFraction, { symbol: 'x_2', label: 'Reading behind the catalyst', ...ppm, example: '140 ppm' }),
    ammonia: quantity(moleFraction, {
      symbol: 'x_{NH_3}',
      label: 'Ammonia behind the catalyst, if measured',
      description: 'From an ammonia analyser; a NOx sensor cannot tell.',
      ...ppm,
      example: '20 ppm',
    }).optional(),
    dosedRatio: quantity(ratio, {
      symbol: '\\alpha',
      label: 'Ammonia-to-NOx ratio that is dosed, if known',
      description: 'Moles of ammonia dosed per mole of NOx before the catalyst.',
      min: '0',
      max: '3',
      example: '1.1',
    }).optional(),
    crossSensitivity: quantityWithDefault(ratio, {
      symbol: 'K',
      label: 'Cross-sensitivity of the sensor to ammonia',
      description: 'What the sensor shows per ppm of ammonia. It changes with temperature.',
      min: '0',
      max: '1.5',
      usual: ['0.5', '1'],
      usualReason: 'usual for zirconia sensors, from memory',
      example: '0.8',
      default: '0.8',
      defaultReason: 'between 0.5 and 1.0, from memory',
    }),
    nitrogenDioxideShare: quantityWithDefault(fraction, {
      symbol: 'y',
      label: 'Share of NO2 in the NOx, by moles',
      min: '0 %',
      max: '100 %',
      example: '40 %',
      units: ['%'],
      default: '40 %',
      defaultReason: 'any share up to 50 % gives the same ammonia demand',
    }),
    catalystTemperature: quantity(temperature, {
      symbol: 'T',
      label: 'Gas temperature at the SCR catalyst',
      min: '-40 °C',
      max: '900 °C',
      example: '300 °C',
      units: ['degC'],
    }).optional(),
    wantedConversion: quantityWithDefault(fraction, {
      symbol: '\\eta_w',
      label: 'Conversion that a sound system reaches',
      above: '0 %',
      max: '100 %',
      example: '80 %',
      units: ['%'],
      default: '80 %',
      defaultReason: 'warm catalyst above 250 °C; common practice, no source',
    }),
    judgeFrom: quantityWithDefault(temperature, {
      symbol: 'T_j',
      label: 'Temperature from which to judge',
      min: '150 °C',
      max: '400 °C',
      example: '250 °C',
      units: ['degC'],
      default: '250 °C',
      defaultReason: 'common practice, no source',
    }),
  }),
  example: { dosedRatio: '1.1', catalystTemperature: '300 °C' },
  intermediates: {
    lowestConversion: quantityOutput(fraction, {
      symbol: '\\eta_{min}',
      label: 'Lowest conversion that these readings allow',
      digits: 3,
      units: ['%'],
    }),
    highestConversion: quantityOutput(fraction, {
      symbol: '\\eta_{max}',
      label: 'Highest: all of the reading behind is ammonia',
      digits: 3,
      units: ['%'],
    }),
  },
  outputs: {
    apparentConversion: quantityOutput(fraction, {
      symbol: '\\eta_a',
      label: 'Conversion as the readings show it',
      description: 'Negative when the sensor behind reads more than the one before.',
      digits: 3,
      units: ['%'],
    }),
    correctedConversion: optional(
      quantityOutput(fraction, { symbol: '\\eta', label: 'Conversion with the ammonia taken out', digits: 3, units: ['%'] }),
    ),
    ammoniaSlip: optional(quantityOutput(moleFraction, { symbol: 'x_s', label: 'Ammonia slip', digits: 3, units: ['ppm'] })),
    verdict: choiceOutput({ label: 'Verdict', options: conversionVerdicts }),
  },
  constants: {
    leastNox: constant(moleFraction, 50e-6, { symbol: 'x_{min}', label: 'NOx before the catalyst to judge from', source: 'practice' }),
  },
  steps: [
    { gives: 'apparentConversion', tex: '[[apparentConversion]] = 1-\\frac{[[downstream]]}{[[upstream]]}' },
    {
      gives: 'correctedConversion',
      tex: '[[correctedConversion]] = 1-\\frac{[[downstream]]-[[crossSensitivity]]\\,[[ammoniaSlip]]}{[[upstream]]}',
      source: 'sensorCrossSensitivity',
    },
    {
      gives: 'ammoniaSlip',
      text: 'As measured, or from the dosed ratio: what is dosed less what the converted NOx takes.',
      source: 'scrReactions',
    },
    { gives: 'lowestConversion', text: 'Without any ammonia behind the catalyst.' },
    { gives: 'highestConversion', text: 'If the sensor reads ammonia alone.' },
    {
      gives: 'verdict',
      text: 'Compared with: [[wantedConversion]]. Not below [[leastNox]] before the catalyst, and not where the sensor behind reads zero.',
      source: 'practice',
    },
  ],
  assumptions: [
    {
      code: 'same_basis',
      text: 'Both readings are wet, or both dry, and belong to the same gas: the delay between the sensors is taken out.',
    },
    { code: 'no_storage', text: 'With a dosed ratio: the ammonia in the catalyst neither grows nor shrinks, and none burns.' },
  ],
  limits: [
    {
      code: 'not_while_storing',
      text: 'Not in the first minutes after a load change, during or right after a regeneration, or while the catalyst fills with ammonia.',
    },
  ],
  cautions: [cautions.sensorFirst, cautions.noDefeat, cautions.fumes],
  sources: {
    scrReactions,
    sensorCrossSensitivity,
    practice: commonPractice('A warm, sound SCR system converts 80 % to 90 % of the NOx above 250 °C'),
  },
  compute(input, context) {
    const apparent = apparentConversion(input);
    if (input.ammonia !== undefined && input.crossSensitivity * input.ammonia > input.downstream * 1.1 + 1e-5) {
      return inconsistentInputs(
        'this much ammonia alone would read more than the sensor shows',
        ['ammonia'],
        ['downstream'],
        ['crossSensitivity'],
      );
    }
    const { correctedConversion, ammoniaSlip } = corrected(input, context.warn);
    if (apparent < 0)
      context.warn(
        'not_between_0_and_1',
        'The readings give a negative conversion; they cannot both be right, or ammonia is read as NOx.',
        ['downstream'],
      );
    const tooCold = input.catalystTemperature === undefined ? undefined : input.catalystTemperature < input.judgeFrom;
    if (input.catalystTemperature === undefined)
      context.warn('temperature_unknown', 'Without the temperature of the catalyst a poor figure proves nothing.', ['catalystTemperature']);
    return {
      apparentConversion: apparent,
      lowestConversion: Math.max(0, apparent),
      highestConversion: 1,
      correctedConversion,
      ammoniaSlip,
      verdict: conversionVerdict({
        apparent,
        corrected: correctedConversion,
        wanted: input.wantedConversion,
        tooCold,
        tooLittle: input.upstream < context.constants.leastNox,
        silent: input.downstream === 0,
      }),
    };
  },
  advise({ verdict }) {
    if (verdict === 'cannot-tell' || verdict === 'slip') {
      return [
        {
          tone: 'do',
          text: 'With the maker’s test, stop the dosing for a few minutes on a warm engine: if the reading behind falls first, it was ammonia; if it rises at once, it was NOx.',
        },
        { tone: 'do-not', text: 'Do not raise the dosing to cure a poor figure before slip is ruled out.' },
      ];
    }
    if (verdict === 'poor')
      return [
        {
          tone: 'do',
          text: 'Check in this order: sensors in the same gas, fluid quality, dosed quantity, leaks, temperature, and only then the catalyst.',
        },
      ];
    if (verdict === 'too-little-nox')
      return [{ tone: 'do', text: 'Measure at a load with more NOx, 200 ppm or more before the catalyst.' }];
    if (verdict === 'no-signal')
      return [{ tone: 'do', text: 'See that the sensor behind is ready and heated, then stop the dosing: its reading must rise.' }];
    if (verdict === 'temperature-unknown')
      return [{ tone: 'do', text: 'Read the gas temperature at the catalyst with the NOx, on a warm engine under load.' }];
    if (verdict === 'contradiction') return [{ tone: 'do', text: 'Compare both sensors in the same gas with the dosing off.' }];
    return [];
  },
});

type Corrected = { readonly correctedConversion: number | undefined; readonly ammoniaSlip: number | undefined };

/** By a measured ammonia first, by the dosed ratio next; nothing where neither is known or the balance does not close. */
function corrected(
  input: {
    upstream: number;
    downstream: number;
    crossSensitivity: number;
    nitrogenDioxideShare: number;
    ammonia?: number | undefined;
    dosedRatio?: number | undefined;
  },
  warn: (code: string, text: string, path?: readonly string[]) => void,
): Corrected {
  if (input.ammonia !== undefined) {
    return { correctedConversion: Math.min(1, conversionWithAmmonia(input, input.ammonia)), ammoniaSlip: input.ammonia };
  }
  if (input.dosedRatio === undefined) return { correctedConversion: undefined, ammoniaSlip: undefined };
  const balance = ammoniaBalance(input, input.dosedRatio, ammoniaPerNox(input.nitrogenDioxideShare));
  if (balance.ammoniaSlip < 0 || balance.conversion < 0 || balance.conversion > 1) {
    warn(
      'balance_open',
      'The dosed ammonia does not explain the readings: ammonia is stored, released or burnt, the ratio is not what is dosed, or a sensor is off.',
      ['dosedRatio'],
    );
    return { correctedConversion: undefined, ammoniaSlip: undefined };
  }
  return { correctedConversion: balance.conversion, ammoniaSlip: balance.ammoniaSlip };
}
