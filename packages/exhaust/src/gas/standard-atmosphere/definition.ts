import * as wf from '@wallflow/calculation';
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
import { standardAtmosphere } from '../sources.js';
import {
  standardAtmosphere1976 as air,
  geopotentialAltitude,
  standardAirHeatCapacityRatio,
  standardDensity,
  standardPressure,
  standardTemperature,
} from './kernel.js';

const given = (symbol: string, label: string) => ({ symbol, label, source: standardAtmosphere });

export const standardAtmosphereCalculation = wf.defineCalculation({
  id: 'standard-atmosphere',
  subject: 'gas',
  title: 'Air pressure by altitude',
  purpose: 'What are air pressure, temperature and density at this altitude, when no barometer is at hand?',
  keywords: 'altitude, ambient pressure, standard atmosphere, barometer',
  method: 'US Standard Atmosphere 1976',
  inputs: {
    altitude: wf.quantity(length, {
      symbol: 'Z',
      label: 'Altitude above sea level',
      range: '-1000 <= x <= 11000 m',
      usual: ['-450 m', '5500 m', 'no road lies lower or higher'],
      example: '230 m',
      units: ['m', 'ft', 'km'],
    }),
    altitudeKind: wf.choice({
      label: 'Kind of altitude',
      options: { geometric: 'geometric: from a map or satellite', geopotential: 'geopotential: as in tables of the atmosphere' },
      default: ['geometric', 'maps and satellites give it; the two differ by 0.2 m at 1000 m'],
    }),
  },
  intermediates: {
    geopotentialAltitude: wf.quantityOutput(length, { symbol: 'h', label: 'Geopotential altitude', digits: 7, units: ['m', 'ft'] }),
  },
  outputs: {
    ambientPressure: wf.quantityOutput(absolutePressure, { symbol: 'p', label: 'Ambient pressure', digits: 6, units: ['kPa', 'mbar'] }),
    airTemperature: wf.quantityOutput(temperature, { symbol: 'T', label: 'Air temperature', digits: 6, units: ['degC', 'K'] }),
    airDensity: wf.quantityOutput(density, { symbol: '\\rho', label: 'Air density', digits: 6, units: ['kg/m3'] }),
    densityRatio: wf.quantityOutput(fraction, { symbol: '\\sigma', label: 'Density against sea level', digits: 4, units: ['%', '1'] }),
    soundSpeed: wf.quantityOutput(velocity, { symbol: 'a', label: 'Speed of sound', digits: 5, units: ['m/s'] }),
  },
  constants: {
    seaLevelTemperature: wf.constant(temperature, air.seaLevelTemperature, given('T_0', 'Temperature at sea level')),
    seaLevelPressure: wf.constant(absolutePressure, air.seaLevelPressure, given('p_0', 'Pressure at sea level')),
    layerTemperatureDrop: wf.constant(
      temperatureDifference,
      air.layerTemperatureDrop,
      given('\\Delta T', 'Fall of temperature up to 11 km'),
    ),
    layerHeight: wf.constant(length, air.layerHeight, given('h_1', 'Height of the lowest layer')),
    gravity: wf.constant(acceleration, air.gravity, given('g_0', 'Standard gravity')),
    molarMass: wf.constant(molarMass, air.molarMass, given('M', 'Molar mass of air')),
    gasConstant: wf.constant(molarHeatCapacity, air.gasConstant, given('R^*', 'Gas constant of 1976')),
    earthRadius: wf.constant(length, air.earthRadius, given('r_0', 'Radius of the earth')),
  },
  answer: 'ambientPressure',
  steps: [
    wf.cases(
      'geopotentialAltitude',
      { "altitudeKind == 'geometric'": 'earthRadius * altitude / (earthRadius + altitude)', otherwise: 'altitude' },
      standardAtmosphere,
      'Eq. 18',
    ),
    wf.formula(
      'airTemperature',
      'seaLevelTemperature - layerTemperatureDrop / layerHeight * geopotentialAltitude',
      standardAtmosphere,
      'Eq. 23',
    ),
    wf.formula(
      'densityRatio',
      '(airTemperature / seaLevelTemperature) ^ (gravity * molarMass * layerHeight / (gasConstant * layerTemperatureDrop) - 1)',
      standardAtmosphere,
      'Eq. 33a with Eq. 42',
    ),
    wf.formula(
      'airDensity',
      'densityRatio * seaLevelPressure * molarMass / (gasConstant * seaLevelTemperature)',
      standardAtmosphere,
      'Eq. 42',
    ),
    wf.formula('soundSpeed', 'sqrt(1.4 * gasConstant * airTemperature / molarMass)', standardAtmosphere, 'Eq. 50'),
    wf.formula(
      'ambientPressure',
      'seaLevelPressure * (airTemperature / seaLevelTemperature) ^ (gravity * molarMass * layerHeight / (gasConstant * layerTemperatureDrop))',
      standardAtmosphere,
      'Eq. 33a',
    ),
  ],
  assumptions: { standard_day: 'A standard day; the weather moves the pressure by 3 % and more either way.' },
  limits: { barometer_first: 'A barometer reading of the place is better. Weather reports give pressure reduced to sea level: not that.' },
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
