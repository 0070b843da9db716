import { choiceWithDefault, constant, defineCalculation, quantity, quantityOutput } from '@wallflow/calculation';
import {
  absolutePressure,
  acceleration,
  density,
  fraction,
  length,
  molarHeatCapacity,
  molarMass,
  temperature,
  temperatureDifference,
  velocity,
} from '@wallflow/units';
import * as z from 'zod';
import { standardAtmosphere as source } from '../sources.js';
import {
  standardAtmosphere1976 as air,
  geopotentialAltitude,
  standardAirHeatCapacityRatio,
  standardDensity,
  standardPressure,
  standardTemperature,
} from './kernel.js';

const given = (symbol: string, label: string) => ({ symbol, label, source: 'standardAtmosphere' });

export const standardAtmosphereCalculation = defineCalculation({
  id: 'standard-atmosphere',
  version: '1.0.1',
  subject: 'gas',
  title: 'Air pressure by altitude',
  purpose: 'What air pressure, temperature and density go with this altitude, when no barometer is at hand?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['altitude', 'ambient pressure', 'standard atmosphere', 'barometer'],
  method: 'US Standard Atmosphere 1976',
  inputs: z.strictObject({
    altitude: quantity(length, {
      symbol: 'Z',
      label: 'Altitude above sea level',
      min: '-1000 m',
      max: '11000 m',
      usual: ['-450 m', '5500 m'],
      usualReason: 'no road lies lower or higher',
      example: '1000 m',
      units: ['m', 'ft', 'km'],
    }),
    altitudeKind: choiceWithDefault({
      label: 'Kind of altitude',
      options: { geometric: 'geometric: from a map or satellite', geopotential: 'geopotential: as in tables of the atmosphere' },
      example: 'geometric',
      default: 'geometric',
      defaultReason: 'maps and satellites give it; the two differ by 0.2 m at 1000 m',
    }),
  }),
  intermediates: {
    geopotentialAltitude: quantityOutput(length, { symbol: 'h', label: 'Geopotential altitude', digits: 7, units: ['m', 'ft'] }),
  },
  outputs: {
    ambientPressure: quantityOutput(absolutePressure, { symbol: 'p', label: 'Ambient pressure', digits: 6, units: ['kPa', 'mbar'] }),
    airTemperature: quantityOutput(temperature, { symbol: 'T', label: 'Air temperature', digits: 6, units: ['degC', 'K'] }),
    airDensity: quantityOutput(density, { symbol: '\\rho', label: 'Air density', digits: 6, units: ['kg/m3'] }),
    densityRatio: quantityOutput(fraction, { symbol: '\\sigma', label: 'Density against sea level', digits: 4, units: ['%', '1'] }),
    soundSpeed: quantityOutput(velocity, { symbol: 'a', label: 'Speed of sound', digits: 5, units: ['m/s'] }),
  },
  constants: {
    seaLevelTemperature: constant(temperature, air.seaLevelTemperature, given('T_0', 'Temperature at sea level')),
    seaLevelPressure: constant(absolutePressure, air.seaLevelPressure, given('p_0', 'Pressure at sea level')),
    layerTemperatureDrop: constant(temperatureDifference, air.layerTemperatureDrop, given('\\Delta T', 'Fall of temperature up to 11 km')),
    layerHeight: constant(length, air.layerHeight, given('h_1', 'Height of the lowest layer')),
    gravity: constant(acceleration, air.gravity, given('g_0', 'Standard gravity')),
    molarMass: constant(molarMass, air.molarMass, given('M', 'Molar mass of air')),
    gasConstant: constant(molarHeatCapacity, air.gasConstant, given('R^*', 'Gas constant of 1976')),
    earthRadius: constant(length, air.earthRadius, given('r_0', 'Radius of the earth')),
  },
  steps: [
    {
      gives: 'geopotentialAltitude',
      tex: '[[geopotentialAltitude]] = \\frac{[[earthRadius]]\\,[[altitude]]}{[[earthRadius]]+[[altitude]]}',
      text: 'For a geometric altitude; a geopotential one is taken as it is. Given: [[altitudeKind]].',
      source: 'standardAtmosphere',
      locator: 'Eq. 18',
    },
    {
      gives: 'airTemperature',
      tex: '[[airTemperature]] = [[seaLevelTemperature]]-\\frac{[[layerTemperatureDrop]]}{[[layerHeight]]}\\,[[geopotentialAltitude]]',
      source: 'standardAtmosphere',
      locator: 'Eq. 23',
    },
    {
      gives: 'densityRatio',
      tex: '[[densityRatio]] = \\left(\\frac{[[airTemperature]]}{[[seaLevelTemperature]]}\\right)^{\\textstyle\\frac{[[gravity]]\\,[[molarMass]]\\,[[layerHeight]]}{[[gasConstant]]\\,[[layerTemperatureDrop]]}-1}',
      source: 'standardAtmosphere',
      locator: 'Eq. 33a with Eq. 42',
    },
    {
      gives: 'airDensity',
      tex: '[[airDensity]] = [[densityRatio]]\\,\\frac{[[seaLevelPressure]]\\,[[molarMass]]}{[[gasConstant]]\\,[[seaLevelTemperature]]}',
      source: 'standardAtmosphere',
      locator: 'Eq. 42',
    },
    {
      gives: 'soundSpeed',
      tex: '[[soundSpeed]] = \\sqrt{\\frac{1.4\\,[[gasConstant]]\\,[[airTemperature]]}{[[molarMass]]}}',
      source: 'standardAtmosphere',
      locator: 'Eq. 50',
    },
    {
      gives: 'ambientPressure',
      tex: '[[ambientPressure]] = [[seaLevelPressure]]\\left(\\frac{[[airTemperature]]}{[[seaLevelTemperature]]}\\right)^{\\textstyle\\frac{[[gravity]]\\,[[molarMass]]\\,[[layerHeight]]}{[[gasConstant]]\\,[[layerTemperatureDrop]]}}',
      source: 'standardAtmosphere',
      locator: 'Eq. 33a',
    },
  ],
  assumptions: [{ code: 'standard_day', text: 'A standard day; the weather moves the pressure by 3 % and more either way.' }],
  limits: [
    {
      code: 'barometer_first',
      text: 'A barometer reading of the place is better. Weather reports give pressure reduced to sea level: not that.',
    },
  ],
  cautions: [],
  sources: { standardAtmosphere: source },
  compute(input, { constants }) {
    const height = input.altitudeKind === 'geometric' ? geopotentialAltitude(input.altitude, constants) : input.altitude;
    const airTemperature = standardTemperature(height, constants);
    return {
      geopotentialAltitude: height,
      ambientPressure: standardPressure(height, constants),
      airTemperature,
      airDensity: standardDensity(height, constants),
      densityRatio: standardDensity(height, constants) / standardDensity(0, constants),
      soundSpeed: Math.sqrt((standardAirHeatCapacityRatio * constants.gasConstant * airTemperature) / constants.molarMass),
    };
  },
});
