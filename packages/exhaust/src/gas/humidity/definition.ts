import {
  choice,
  choiceWithDefault,
  defineCalculation,
  inconsistentInputs,
  missingInputs,
  noSolution,
  optional,
  quantity,
  quantityOutput,
} from '@wallflow/calculation';
import { absolutePressure, fraction, massRatio, molarMass, moleFraction, temperature } from '@wallflow/units';
import * as z from 'zod';
import { cfr1065 } from '../../sources.js';
import { buck1996 } from '../sources.js';
import { dewPointHardy, dewPointRange, humidityRatio, molarMassOfMoistAir, vapourPressureBuck, vapourPressureGoff } from './kernel.js';

const saturation = (symbol: string, label: string) =>
  quantityOutput(absolutePressure, { symbol, label, digits: 5, units: ['kPa', 'mbar'] });

export const intakeAirHumidityCalculation = defineCalculation({
  id: 'intake-air-humidity',
  version: '1.1.0',
  subject: 'gas',
  title: 'Humidity of the intake air',
  purpose: 'How much water does the intake air bring, from relative humidity or dew point?',
  usedBy: ['developer', 'trainer'],
  keywords: ['humidity', 'dew point', 'vapour pressure', 'Goff', 'Buck', 'Hardy'],
  method: 'vapour pressure by Goff',
  inputs: z.strictObject({
    given: choice({
      label: 'Given',
      options: { 'relative-humidity': 'relative humidity', 'dew-point': 'dew point' },
      example: 'relative-humidity',
    }),
    airTemperature: quantity(temperature, {
      symbol: 'T_a',
      label: 'Air temperature',
      description: 'Where the relative humidity was read.',
      min: '-50 °C',
      max: '100 °C',
      usual: ['0 °C', '50 °C'],
      usualReason: {
        below: 'below freezing, instruments differ on whether they mean ice or super-cooled water',
        above: 'intake air is seldom so hot',
      },
      example: '20 °C',
    }).optional(),
    relativeHumidity: quantity(fraction, {
      symbol: '\\varphi',
      label: 'Relative humidity',
      min: '0.01 %',
      max: '100 %',
      usual: ['5 %', '98 %'],
      usualReason: 'sensors are unreliable at the ends',
      example: '50 %',
      units: ['%'],
    }).optional(),
    dewPoint: quantity(temperature, {
      symbol: 'T_d',
      label: 'Dew point',
      min: '-50 °C',
      max: '100 °C',
      usual: ['-20 °C', '35 °C'],
      usualReason: 'outdoor air seldom lies outside',
      example: '9.5 °C',
    }).optional(),
    ambientPressure: quantity(absolutePressure, {
      symbol: 'p',
      label: 'Ambient pressure',
      min: '30 kPa',
      max: '120 kPa',
      usual: ['60 kPa', '108 kPa'],
      usualReason: 'air pressure at places that a road reaches',
      example: '101.3 kPa',
      units: ['kPa', 'mbar'],
    }),
    model: choiceWithDefault({
      label: 'Vapour pressure after',
      options: { goff: 'Goff 1957, 40 CFR 1065.645', buck: 'Buck 1996' },
      example: 'goff',
      default: 'goff',
      defaultReason: 'the equation of the test regulation; the two differ by 0.1 % between 0 °C and 50 °C',
    }),
  }),
  example: { airTemperature: '20 °C', relativeHumidity: '50 %' },
  intermediates: {
    saturationTemperature: quantityOutput(temperature, {
      symbol: 'T',
      label: 'Temperature of saturation',
      digits: 5,
      units: ['degC', 'K'],
    }),
    saturationByGoff: optional(saturation('p_{s,G}', 'Saturation vapour pressure by Goff')),
    saturationByBuck: optional(saturation('p_{s,B}', 'Saturation vapour pressure by Buck')),
    saturationPressure: saturation('p_s', 'Saturation vapour pressure'),
    vapourPressure: quantityOutput(absolutePressure, { symbol: 'p_v', label: 'Vapour pressure', digits: 5, units: ['kPa', 'mbar'] }),
  },
  outputs: {
    waterMoleFraction: quantityOutput(moleFraction, {
      symbol: 'x_{H_2O}',
      label: 'Water in the air, by volume',
      digits: 4,
      units: ['%', 'ppm'],
    }),
    humidity: quantityOutput(massRatio, { symbol: 'H', label: 'Humidity of the air', digits: 4, units: ['g/kg'] }),
    resultingDewPoint: quantityOutput(temperature, { symbol: 'T_{d,r}', label: 'Dew point after Hardy', digits: 5, units: ['degC', 'K'] }),
    moistAirMolarMass: quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass of the moist air', digits: 6, units: ['g/mol'] }),
  },
  constants: {},
  steps: [
    { gives: 'saturationTemperature', text: 'The dew point where it is given, else the air temperature. Given: [[given]].' },
    {
      gives: 'saturationByGoff',
      tex: '\\log_{10}\\frac{[[saturationByGoff]]}{\\mathrm{kPa}} = 10.79574\\left(1-\\tfrac{273.16\\,\\mathrm{K}}{[[saturationTemperature]]}\\right)-5.028\\log_{10}\\tfrac{[[saturationTemperature]]}{273.16\\,\\mathrm{K}}+1.50475\\cdot 10^{-4}\\left(1-10^{-8.2969\\left(T/273.16-1\\right)}\\right)+0.42873\\cdot 10^{-3}\\left(10^{4.76955\\left(1-273.16/T\\right)}-1\\right)-0.2138602',
      source: 'cfr1065',
      locator: '1065.645 Eq. 1',
    },
    {
      gives: 'saturationByBuck',
      tex: '[[saturationByBuck]] = 0.61121\\,\\mathrm{kPa}\\cdot\\exp\\left(\\left(18.678-\\tfrac{t}{234.5}\\right)\\tfrac{t}{257.14+t}\\right),\\quad t=[[saturationTemperature]]-273.15\\,\\mathrm{K}',
      source: 'buck1996',
    },
    { gives: 'saturationPressure', text: 'Model chosen: [[model]].' },
    {
      gives: 'vapourPressure',
      text: 'At a given dew point the air holds that pressure; at a relative humidity, its share.',
      source: 'cfr1065',
      locator: '1065.645(b), (c)',
    },
    {
      gives: 'waterMoleFraction',
      tex: '[[waterMoleFraction]] = \\frac{[[vapourPressure]]}{[[ambientPressure]]}',
      source: 'cfr1065',
      locator: '1065.645(b)',
    },
    {
      gives: 'resultingDewPoint',
      tex: '[[resultingDewPoint]] = \\frac{207.98233-20.156028\\,l+0.46778925\\,l^2-9.2288067\\cdot 10^{-6}\\,l^3}{1-0.13319669\\,l+5.6577518\\cdot 10^{-3}\\,l^2-7.5172865\\cdot 10^{-5}\\,l^3},\\quad l=\\ln\\frac{[[vapourPressure]]}{\\mathrm{Pa}}',
      source: 'cfr1065',
      locator: '1065.645(d)',
    },
    {
      gives: 'moistAirMolarMass',
      tex: '[[moistAirMolarMass]] = 28.96559\\left(1-[[waterMoleFraction]]\\right)+18.01528\\,[[waterMoleFraction]]\\;\\mathrm{g/mol}',
      source: 'cfr1065',
      locator: '1065.640(c)(5)(iv)',
    },
    {
      gives: 'humidity',
      tex: '[[humidity]] = 0.621955\\,\\frac{[[vapourPressure]]}{[[ambientPressure]]-[[vapourPressure]]}',
      source: 'cfr1065',
      locator: '1065.1005(f)(2), Table 7',
    },
  ],
  assumptions: [
    {
      code: 'over_water',
      text: 'Relative humidity and dew point are over liquid or super-cooled water, as weather services give them, not over ice.',
    },
  ],
  limits: [
    {
      code: 'range',
      text: 'Goff and Hardy as printed in 40 CFR 1065 hold from −50 °C to 100 °C; very dry air has a dew point below that.',
    },
    {
      code: 'scales',
      text: 'Dew point after Hardy and vapour pressure after Goff differ by up to 0.03 K above −10 °C and 0.12 K at −50 °C.',
    },
  ],
  cautions: [],
  sources: { cfr1065, buck1996 },
  dimensional: 'empirical vapour pressure equations whose constants carry kelvin and kilopascal',
  compute(input, context) {
    const fromDewPoint = input.given === 'dew-point';
    const at = fromDewPoint ? input.dewPoint : input.airTemperature;
    const share = fromDewPoint ? 1 : input.relativeHumidity;
    if (at === undefined || share === undefined) {
      const needed = fromDewPoint ? (['dewPoint'] as const) : (['airTemperature', 'relativeHumidity'] as const);
      return missingInputs(...needed.filter((key) => input[key] === undefined));
    }
    if (fromDewPoint && input.airTemperature !== undefined && input.airTemperature < at) {
      return inconsistentInputs('the dew point cannot be above the air temperature', ['dewPoint'], ['airTemperature']);
    }
    context.method(input.model === 'goff' ? 'vapour pressure by Goff' : 'vapour pressure by Buck');
    const saturationPressure = input.model === 'goff' ? vapourPressureGoff(at) : vapourPressureBuck(at);
    const vapourPressure = share * saturationPressure;
    if (vapourPressure >= input.ambientPressure) return noSolution('water boils at this temperature and pressure', ['ambientPressure']);
    const waterMoleFraction = vapourPressure / input.ambientPressure;
    const resultingDewPoint = dewPointHardy(vapourPressure);
    const [lowest, highest] = dewPointRange;
    if (!fromDewPoint && (resultingDewPoint < lowest || resultingDewPoint > highest)) {
      context.warn(
        'dew_point_range',
        'The dew point lies outside −50 °C to 100 °C, where its equation holds: it is extrapolated, take it as “below −50 °C” or “above 100 °C”. The water content does not rest on it.',
        ['relativeHumidity'],
      );
    }
    return {
      saturationTemperature: at,
      saturationByGoff: input.model === 'goff' ? saturationPressure : undefined,
      saturationByBuck: input.model === 'buck' ? saturationPressure : undefined,
      saturationPressure,
      vapourPressure,
      waterMoleFraction,
      humidity: humidityRatio(vapourPressure, input.ambientPressure),
      resultingDewPoint,
      moistAirMolarMass: molarMassOfMoistAir(waterMoleFraction),
    };
  },
});
