import * as wf from '@wallflow/calculation';
import { fraction, moleFraction, ratio, temperature } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { ammoniaPerNox } from '../reductant-demand/stoichiometry.js';
import { scrReactions, sensorCrossSensitivity } from '../sources.js';
import { ammoniaBalance, apparentConversion, conversionWithAmmonia } from './kernel.js';
import { conversionVerdict, conversionVerdicts } from './verdict.js';

const percent = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });
const ppm = { range: '0 <= x <= 10000 ppm', units: ['ppm'] } as const;
const practice = wf.commonPractice('A warm, sound SCR system converts 80 % to 90 % of the NOx above 250 °C');

export const noxConversionCalculation = wf.defineCalculation({
  id: 'nox-conversion',
  subject: 'reductant',
  title: 'NOx conversion from two sensors',
  purpose: 'How much NOx does the SCR catalyst convert, and could a poor figure be ammonia slip instead?',
  keywords: 'SCR, conversion, efficiency, NOx sensor, ammonia slip, cross-sensitivity',
  method: 'readings before and after the catalyst, corrected for ammonia where it is known',
  inputs: {
    noxBefore: wf.quantity(moleFraction, {
      symbol: 'x_1',
      label: 'NOx before the catalyst',
      range: '0 < x <= 10000 ppm',
      usual: [
        '50 ppm',
        '3000 ppm',
        { below: 'the error of the sensors is larger than the reading', above: 'diesel engines rarely make so much; check the scaling' },
      ],
      example: '520 ppm',
      units: ['ppm'],
    }),
    noxAfter: wf.quantity(moleFraction, { symbol: 'x_2', label: 'Reading after the catalyst', ...ppm, example: '170 ppm' }),
    ...wf.oneOf(
      {
        ammoniaAfter: wf.quantity(moleFraction, {
          symbol: 'x_{NH_3}',
          label: 'Ammonia after the catalyst, if measured',
          description: 'From an ammonia analyser; a NOx sensor does not tell ammonia from NOx.',
          ...ppm,
          example: '20 ppm',
        }),
        dosedRatio: wf.quantity(ratio, {
          symbol: '\\alpha',
          label: 'Ammonia-to-NOx ratio that is dosed',
          description: 'Moles of ammonia dosed per mole of NOx before the catalyst.',
          range: '0 <= x <= 3',
          example: '0.72',
        }),
      },
      { required: false, prefer: 'ammoniaAfter' },
    ),
    ...wf.whenGiven(['ammoniaAfter', 'dosedRatio'], {
      crossSensitivity: wf.quantity(ratio, {
        symbol: 'K',
        label: 'Cross-sensitivity of the NOx sensor to ammonia',
        description: 'What the sensor shows per ppm of ammonia. It changes with temperature.',
        range: '0 <= K <= 1.5',
        usual: ['0.5', '1', 'usual for zirconia sensors, from memory'],
        default: ['0.8', 'between 0.5 and 1.0, from memory'],
      }),
    }),
    ...wf.whenGiven('dosedRatio', {
      nitrogenDioxideShare: wf.quantity(fraction, {
        symbol: 'y',
        label: 'Share of NO2 in the NOx, by moles',
        range: '0 <= y <= 100 %',
        units: ['%'],
        default: ['40 %', 'any share up to 50 % gives the same ammonia demand'],
      }),
    }),
    catalystTemperature: wf.optional(
      wf.quantity(temperature, {
        symbol: 'T',
        label: 'Catalyst temperature',
        range: '-40 <= T <= 900 degC',
        example: '260 °C',
        units: ['degC'],
      }),
    ),
    wantedConversion: wf.quantity(fraction, {
      symbol: '\\eta_w',
      label: 'Conversion that a sound system reaches',
      range: '0 < x <= 100 %',
      units: ['%'],
      default: ['80 %', 'warm catalyst above 250 °C; common practice, no source'],
    }),
    judgeFrom: wf.quantity(temperature, {
      symbol: 'T_j',
      label: 'Temperature from which to judge',
      range: '150 <= T <= 400 degC',
      units: ['degC'],
      default: ['250 °C', 'common practice, no source'],
    }),
  },
  example: { dosedRatio: '0.72', catalystTemperature: '260 °C' },
  intermediates: {
    ammoniaDemand: wf.optional(wf.quantityOutput(ratio, { symbol: 's', label: 'Moles of ammonia that one mole of NOx takes', digits: 4 })),
    lowestConversion: percent('\\eta_{min}', 'Lowest conversion that these readings allow'),
    highestConversion: percent('\\eta_{max}', 'Highest: all of the reading after the catalyst is ammonia'),
  },
  outputs: {
    apparentConversion: {
      ...percent('\\eta_a', 'Conversion as the readings show it'),
      description: 'Negative when the sensor after the catalyst reads more than the one before.',
    },
    correctedConversion: wf.optional(percent('\\eta', 'Conversion with the ammonia taken out')),
    ammoniaSlip: wf.optional(wf.quantityOutput(moleFraction, { symbol: 'x_s', label: 'Ammonia slip', digits: 3, units: ['ppm'] })),
    verdict: wf.choiceOutput({ label: 'Verdict', options: conversionVerdicts }),
  },
  answer: 'verdict',
  constants: {
    leastNox: wf.constant(moleFraction, '50 ppm', { symbol: 'x_{min}', label: 'NOx before the catalyst to judge from', source: practice }),
  },
  steps: [
    wf.formula('apparentConversion', '1 - noxAfter / noxBefore'),
    wf.cases('ammoniaDemand', { 'nitrogenDioxideShare <= 0.5': '1', otherwise: '(2 + 2 * nitrogenDioxideShare) / 3' }, scrReactions),
    wf.cases(
      'correctedConversion',
      {
        'known(ammoniaAfter)': 'min(1, 1 - (noxAfter - crossSensitivity * ammoniaAfter) / noxBefore)',
        otherwise: '(1 + crossSensitivity * dosedRatio - noxAfter / noxBefore) / (1 + crossSensitivity * ammoniaDemand)',
      },
      sensorCrossSensitivity,
    ),
    wf.cases(
      'ammoniaSlip',
      { 'known(ammoniaAfter)': 'ammoniaAfter', otherwise: '(dosedRatio - ammoniaDemand * correctedConversion) * noxBefore' },
      scrReactions,
      undefined,
      'As measured, or what is dosed less what the converted NOx takes.',
    ),
    wf.formula('lowestConversion', 'max(0, apparentConversion)', undefined, undefined, 'Without any ammonia after the catalyst.'),
    wf.formula('highestConversion', '1', undefined, undefined, 'If the sensor reads ammonia alone.'),
    wf.verdict(
      'verdict',
      {
        'too-little-nox': 'noxBefore < leastNox',
        'no-signal': 'noxAfter == 0',
        contradiction: 'apparentConversion < 0 and (not known(correctedConversion) or correctedConversion < 0)',
        converting: 'apparentConversion >= wantedConversion',
        slip: 'known(correctedConversion) and correctedConversion >= wantedConversion',
        'temperature-unknown': 'not known(catalystTemperature)',
        'too-cold': 'catalystTemperature < judgeFrom',
        'cannot-tell': 'not known(correctedConversion)',
        poor: 'otherwise',
      },
      practice,
    ),
  ],
  assumptions: {
    same_basis: 'Both readings are wet, or both dry, and belong to the same gas: the delay between the sensors is taken out.',
    no_storage: 'With a dosed ratio: the ammonia in the catalyst neither grows nor shrinks, and none burns.',
  },
  limits: {
    not_while_storing:
      'Not in the first minutes after a load change, during or right after a regeneration, or while the catalyst fills with ammonia.',
  },
  cautions: [cautions.sensorFirst, cautions.noDefeat, cautions.fumes],
  compute(input, context) {
    const apparent = apparentConversion(input);
    const { ammoniaAfter, crossSensitivity = 0 } = input;
    if (ammoniaAfter !== undefined && crossSensitivity * ammoniaAfter > input.noxAfter * 1.1 + 1e-5) {
      return wf.inconsistentInputs(
        'this much ammonia alone would read more than the sensor shows',
        ['ammoniaAfter'],
        ['noxAfter'],
        ['crossSensitivity'],
      );
    }
    const found = corrected(input, context.warn);
    const { correctedConversion } = found;
    if (apparent < 0)
      context.warn(
        'not_between_0_and_1',
        'The readings give a negative conversion; they cannot both be right, or ammonia is read as NOx.',
        ['noxAfter'],
      );
    const tooCold = input.catalystTemperature === undefined ? undefined : input.catalystTemperature < input.judgeFrom;
    if (input.catalystTemperature === undefined)
      context.warn('temperature_unknown', 'Without the temperature of the catalyst a poor figure proves nothing.', ['catalystTemperature']);
    return {
      apparentConversion: apparent,
      lowestConversion: Math.max(0, apparent),
      highestConversion: 1,
      ...found,
      verdict: conversionVerdict({
        apparent,
        corrected: correctedConversion,
        wanted: input.wantedConversion,
        tooCold,
        tooLittle: input.noxBefore < context.constants.leastNox,
        silent: input.noxAfter === 0,
      }),
    };
  },
  advise({ verdict }) {
    if (verdict === 'cannot-tell' || verdict === 'slip') {
      return [
        {
          tone: 'do',
          text: 'With the maker’s test, stop the dosing for a few minutes on a warm engine: if the reading after the catalyst falls first, it was ammonia; if it rises at once, it was NOx.',
        },
        { tone: 'do-not', text: 'Do not raise the dosing to cure a poor figure until you have ruled out slip.' },
      ];
    }
    if (verdict === 'poor')
      return [
        {
          tone: 'do',
          text: 'Check in this order: sensors in the same gas, fluid quality, dosed quantity, leaks, temperature, and only then the catalyst.',
        },
        {
          tone: 'note',
          text: wf.say`Weak fluid and a low dosed quantity multiply: 30.1 % of urea and 43 mL of 50 mL make 20 % less ammonia together.`,
        },
      ];
    if (verdict === 'too-little-nox')
      return [{ tone: 'do', text: 'Measure at a load with more NOx, 200 ppm or more before the catalyst.' }];
    if (verdict === 'no-signal')
      return [
        { tone: 'do', text: 'See that the sensor after the catalyst is ready and heated, then stop the dosing: its reading must rise.' },
      ];
    if (verdict === 'temperature-unknown')
      return [{ tone: 'do', text: 'Read the gas temperature at the catalyst with the NOx, on a warm engine under load.' }];
    if (verdict === 'contradiction') return [{ tone: 'do', text: 'Compare both sensors in the same gas with the dosing off.' }];
    return [];
  },
});

interface Corrected {
  readonly ammoniaDemand: number | undefined;
  readonly correctedConversion: number | undefined;
  readonly ammoniaSlip: number | undefined;
}

interface Readings {
  readonly noxBefore: number;
  readonly noxAfter: number;
  readonly crossSensitivity?: number | undefined;
  readonly nitrogenDioxideShare?: number | undefined;
  readonly ammoniaAfter?: number | undefined;
  readonly dosedRatio?: number | undefined;
}

/** By a measured ammonia first, by the dosed ratio next; nothing where neither is known or the balance does not close. */
function corrected(input: Readings, warn: (code: string, text: string, path?: readonly string[]) => void): Corrected {
  const { ammoniaAfter, dosedRatio, crossSensitivity, nitrogenDioxideShare } = input;
  const nothing = { ammoniaDemand: undefined, correctedConversion: undefined, ammoniaSlip: undefined };
  if (crossSensitivity === undefined) return nothing;
  const readings = { ...input, crossSensitivity };
  if (ammoniaAfter !== undefined) {
    return { ...nothing, correctedConversion: Math.min(1, conversionWithAmmonia(readings, ammoniaAfter)), ammoniaSlip: ammoniaAfter };
  }
  if (dosedRatio === undefined || nitrogenDioxideShare === undefined) return nothing;
  const ammoniaDemand = ammoniaPerNox(nitrogenDioxideShare);
  const balance = ammoniaBalance(readings, dosedRatio, ammoniaDemand);
  if (balance.ammoniaSlip < 0 || balance.conversion < 0 || balance.conversion > 1) {
    warn(
      'balance_open',
      'The dosed ammonia does not explain the readings: ammonia is stored, released or burnt, the ratio is not what is dosed, or a sensor reads wrong.',
      ['dosedRatio'],
    );
    return { ...nothing, ammoniaDemand };
  }
  return { ammoniaDemand, correctedConversion: balance.conversion, ammoniaSlip: balance.ammoniaSlip };
}
