import * as wf from '@wallflow/calculation';
import { absolutePressure, fraction, massRatio, molarMass, moleFraction, temperature } from '@wallflow/units';
import { cfr1065 } from '../../sources.js';
import { airMolarMass } from '../../vocabulary/constants.js';
import { molarMassConstants } from '../molar-mass-constants.js';
import { buck1996 } from '../sources.js';
import { dewPointHardy, dewPointRange, humidityRatio, molarMassOfMoistAir, vapourPressureBuck, vapourPressureGoff } from './kernel.js';

export const intakeAirHumidityCalculation = wf.defineCalculation({
  id: 'intake-air-humidity',
  subject: 'gas',
  title: 'Humidity of the intake air',
  purpose: 'How much water does the intake air bring, from relative humidity or dew point?',
  keywords: 'humidity, dew point, vapour pressure, Goff, Buck, Hardy',
  method: 'vapour pressure by Goff',
  inputs: {
    ...wf.oneOf({
      relativeHumidity: wf.quantity(fraction, {
        symbol: '\\varphi',
        label: 'Relative humidity',
        range: '0.01 <= x <= 100 %',
        usual: ['5 %', '98 %', 'sensors are unreliable at the ends'],
        example: '60 %',
        units: ['%'],
      }),
      dewPoint: wf.quantity(temperature, {
        symbol: 'T_d',
        label: 'Dew point',
        range: '-50 <= x <= 100 °C',
        usual: ['-20 °C', '35 °C', 'outdoor air seldom lies outside'],
        example: '6.5 °C',
      }),
    }),
    airTemperature: wf.optional(
      wf.quantity(temperature, {
        symbol: 'T_a',
        label: 'Air temperature',
        description: 'Where the relative humidity was read; not needed with a dew point.',
        range: '-50 <= x <= 100 °C',
        usual: [
          '0 °C',
          '50 °C',
          {
            below: 'below freezing, instruments differ on whether they mean ice or super-cooled water',
            above: 'intake air is seldom so hot',
          },
        ],
        example: '14 °C',
      }),
    ),
    ambientPressure: wf.quantity(absolutePressure, {
      symbol: 'p',
      label: 'Ambient pressure',
      range: '30 <= x <= 120 kPa',
      usual: ['60 kPa', '108 kPa', 'air pressure at places that a road reaches'],
      example: '986 hPa',
      units: ['kPa', 'mbar'],
    }),
    vapourModel: wf.choice({
      label: 'Vapour pressure after',
      options: { goff: 'Goff 1957, 40 CFR 1065.645', buck: 'Buck 1996' },
      default: ['goff', 'the equation of the test regulation; the two differ by 0.1 % between 0 °C and 50 °C'],
    }),
  },
  example: { airTemperature: '14 °C', relativeHumidity: '60 %' },
  intermediates: {
    saturationTemperature: wf.quantityOutput(temperature, {
      symbol: 'T',
      label: 'Temperature of saturation',
      digits: 5,
      units: ['degC', 'K'],
    }),
    saturationPressure: wf.quantityOutput(absolutePressure, {
      symbol: 'p_s',
      label: 'Saturation vapour pressure',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
    vapourPressure: wf.quantityOutput(absolutePressure, { symbol: 'p_v', label: 'Vapour pressure', digits: 5, units: ['kPa', 'mbar'] }),
  },
  outputs: {
    waterMoleFraction: wf.quantityOutput(moleFraction, {
      symbol: 'x_{H_2O}',
      label: 'Water in the intake air, by volume',
      digits: 4,
      units: ['%', 'ppm'],
    }),
    humidity: wf.quantityOutput(massRatio, { symbol: 'H', label: 'Humidity of the intake air', digits: 4, units: ['g/kg'] }),
    resultingDewPoint: wf.quantityOutput(temperature, {
      symbol: 'T_{d,r}',
      label: 'Dew point after Hardy',
      digits: 5,
      units: ['degC', 'K'],
    }),
    moistAirMolarMass: wf.quantityOutput(molarMass, { symbol: 'M', label: 'Molar mass of the moist air', digits: 6, units: ['g/mol'] }),
  },
  constants: {
    airMolarMass,
    waterMolarMass: molarMassConstants.waterMolarMass,
    triplePoint: wf.constant(temperature, '273.16 K', { symbol: 'T_3', label: 'Triple point of water', source: cfr1065 }),
  },
  answer: 'humidity',
  steps: [
    wf.cases('saturationTemperature', { 'known(dewPoint)': 'dewPoint', otherwise: 'airTemperature' }),
    wf.cases('saturationPressure', {
      "vapourModel == 'goff'": wf.formula(
        'saturationPressure',
        "as(10 ^ (10.79574 * (1 - triplePoint / saturationTemperature) - 5.028 * log(saturationTemperature / triplePoint) + 1.50475e-4 * (1 - 10 ^ (-8.2969 * (saturationTemperature / triplePoint - 1))) + 0.42873e-3 * (10 ^ (4.76955 * (1 - triplePoint / saturationTemperature)) - 1) - 0.2138602), 'kPa')",
        cfr1065,
        '1065.645 Eq. 1',
      ),
      otherwise: wf.formula(
        'saturationPressure',
        "as(0.61121 * exp((18.678 - in(saturationTemperature, 'degC') / 234.5) * in(saturationTemperature, 'degC') / (257.14 + in(saturationTemperature, 'degC'))), 'kPa')",
        buck1996,
      ),
    }),
    wf.cases(
      'vapourPressure',
      { 'known(dewPoint)': 'saturationPressure', otherwise: 'relativeHumidity * saturationPressure' },
      cfr1065,
      '1065.645(b), (c)',
    ),
    wf.formula('waterMoleFraction', 'vapourPressure / ambientPressure', cfr1065, '1065.645(b)'),
    wf.formula(
      'resultingDewPoint',
      "as((207.98233 - 20.156028 * ln(in(vapourPressure, 'Pa')) + 0.46778925 * ln(in(vapourPressure, 'Pa')) ^ 2 - 9.2288067e-6 * ln(in(vapourPressure, 'Pa')) ^ 3) / (1 - 0.13319669 * ln(in(vapourPressure, 'Pa')) + 5.6577518e-3 * ln(in(vapourPressure, 'Pa')) ^ 2 - 7.5172865e-5 * ln(in(vapourPressure, 'Pa')) ^ 3), 'K')",
      cfr1065,
      '1065.645(d)',
    ),
    wf.formula(
      'moistAirMolarMass',
      'airMolarMass * (1 - waterMoleFraction) + waterMolarMass * waterMoleFraction',
      cfr1065,
      '1065.640(c)(5)(iv)',
    ),
    wf.formula(
      'humidity',
      'waterMolarMass / airMolarMass * vapourPressure / (ambientPressure - vapourPressure)',
      cfr1065,
      '1065.1005(f)(2), Table 7',
    ),
  ],
  assumptions: {
    over_water: 'Relative humidity and dew point are over liquid or super-cooled water, as weather services give them, not over ice.',
  },
  limits: {
    range: 'Goff and Hardy as printed in 40 CFR 1065 hold from −50 °C to 100 °C; very dry air has a dew point below that.',
    scales: 'Dew point after Hardy and vapour pressure after Goff differ by up to 0.03 K above −10 °C and 0.12 K at −50 °C.',
  },
  dimensional: 'empirical vapour pressure equations whose constants carry kelvin and kilopascal',
  compute(input, context) {
    const { dewPoint, airTemperature } = input;
    const fromDewPoint = dewPoint !== undefined;
    const at = dewPoint ?? airTemperature;
    if (at === undefined) return wf.missingInputs('airTemperature');
    if (fromDewPoint && airTemperature !== undefined && airTemperature < dewPoint) {
      return wf.inconsistentInputs('the dew point cannot be above the air temperature', ['dewPoint'], ['airTemperature']);
    }
    context.method(input.vapourModel === 'goff' ? 'vapour pressure by Goff' : 'vapour pressure by Buck');
    const saturationPressure = input.vapourModel === 'goff' ? vapourPressureGoff(at) : vapourPressureBuck(at);
    const vapourPressure = fromDewPoint ? saturationPressure : wf.known(input.relativeHumidity) * saturationPressure;
    if (vapourPressure >= input.ambientPressure) return wf.noSolution('water boils at this temperature and pressure', ['ambientPressure']);
    const { airMolarMass, waterMolarMass } = context.constants;
    const waterMoleFraction = vapourPressure / input.ambientPressure;
    const resultingDewPoint = dewPointHardy(vapourPressure);
    const [lowest, highest] = dewPointRange;
    if (!fromDewPoint && (resultingDewPoint < lowest || resultingDewPoint > highest)) {
      context.warn(
        'dew_point_range',
        'The dew point lies outside −50 °C to 100 °C, where its equation holds: it is extrapolated, take it as “below −50 °C” or “above 100 °C”. The water content is not based on it.',
        ['relativeHumidity'],
      );
    }
    return {
      saturationTemperature: at,
      saturationPressure,
      vapourPressure,
      waterMoleFraction,
      humidity: humidityRatio(vapourPressure, input.ambientPressure, airMolarMass, waterMolarMass),
      resultingDewPoint,
      moistAirMolarMass: molarMassOfMoistAir(waterMoleFraction, airMolarMass, waterMolarMass),
    };
  },
});
