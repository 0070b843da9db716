import * as wf from '@wallflow/calculation';
import { absolutePressure, density, dynamicViscosity, fraction, length, ratio, temperature, volumeFlow } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { standardAtmosphereCalculation } from '../../gas/standard-atmosphere/definition.js';
import { geopotentialAltitude, standardPressure } from '../../gas/standard-atmosphere/kernel.js';
import { konstandopoulos2008 } from '../../sources.js';
import { atmosphereConstants, filterConstants } from '../constants.js';
import { dropOutput } from '../drop-outputs.js';
import { airDensity, airViscosity } from '../gas-steps.js';
import { gasInputs, pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { dropScaling } from '../sources.js';
import { dropAtState } from './kernel.js';

const pressure = (symbol: string, label: string, example: string) =>
  wf.quantity(absolutePressure, {
    symbol,
    label,
    description: 'Leave pressure and altitude blank for sea level.',
    range: '40 <= p <= 600 kPa',
    usual: ['60 kPa', '250 kPa', 'outside this range it is probably a gauge pressure or in another unit'],
    example,
    units: ['kPa', 'mbar', 'bar', 'psi'],
  });
const height = (symbol: string, label: string, example: string) =>
  wf.quantity(length, {
    symbol,
    label,
    description: 'Gives the pressure of the standard atmosphere; the drop of parts after the filter is left out.',
    range: '-1000 <= Z <= 11000 m',
    usual: ['-450 m', '5500 m', 'no road lies lower or higher'],
    example,
    units: ['m', 'ft', 'km'],
  });
/** Either the pressure or the altitude, in the working and in words. */
const pressureStep = <const Key extends string>(gives: Key, pressureKey: string, altitudeKey: string) =>
  wf.cases(gives, {
    [`known(${pressureKey})`]: pressureKey,
    [`known(${altitudeKey})`]: wf.nested(gives, standardAtmosphereCalculation, { altitude: altitudeKey }, 'ambientPressure'),
    otherwise: 'seaLevelPressure',
  });
const { referenceTemperature: viscosityTemperature, ...gasConstants } = filterConstants;

export const dropAtReferenceStateCalculation = wf.defineCalculation({
  id: 'drop-at-reference-state',
  subject: 'filter',
  title: 'A drop at another flow, temperature or altitude',
  purpose: 'What would the same filter read at the conditions of another measurement?',
  keywords: 'reference state, altitude, temperature correction, before and after, compare',
  method: 'viscous part with μQ, inertial part with ρQ²',
  inputs: {
    pressureDrop: pressureDropInput,
    exhaustVolumeFlow: gasInputs.exhaustVolumeFlow,
    gasTemperature: gasInputs.gasTemperature,
    ...wf.oneOf(
      {
        gasPressure: pressure('p', 'Absolute pressure of the gas after the filter', '98.6 kPa'),
        altitude: height('Z', 'Altitude above sea level', '230 m'),
      },
      { required: false },
    ),
    referenceVolumeFlow: wf.optional(
      wf.quantity(volumeFlow, {
        symbol: 'Q_r',
        label: 'Flow to convert to',
        description: 'Actual flow. Leave blank to keep the same mass flow.',
        range: '0 < x <= 10000 m3/h',
        usual: ['5 m3/h', '4000 m3/h', { below: 'an engine that idles gives more', above: 'a vehicle engine at full load gives less' }],
        example: '376 m3/h',
      }),
    ),
    referenceTemperature: wf.quantity(temperature, {
      symbol: 'T_r',
      label: 'Gas temperature to convert to',
      range: '-40 <= x <= 1200 °C',
      usual: [
        '0 °C',
        '750 °C',
        {
          below: 'the gas of an engine that runs is warmer',
          above: "the viscosity by Sutherland's formula is more than 4 % below the dilute-gas value there",
        },
      ],
      default: ['200 °C', 'a warm engine at raised speed without load'],
    }),
    ...wf.oneOf(
      {
        referencePressure: pressure('p_r', 'Absolute pressure to convert to', '101.3 kPa'),
        referenceAltitude: height('Z_r', 'Altitude to convert to', '1000 m'),
      },
      { required: false },
    ),
    inertialShare: wf.quantity(fraction, {
      symbol: 'x_i',
      label: 'Inertial part of the drop',
      description: 'From a fit over several points. A loaded filter has little, a pipe or a silencer nearly 100 %.',
      range: '0 <= x <= 100 %',
      example: '5 %',
      default: ['0 %', 'a loaded filter; the drop is then proportional to viscosity times flow'],
    }),
  },
  intermediates: {
    measuredPressure: wf.quantityOutput(absolutePressure, {
      symbol: 'p',
      label: 'Pressure as measured',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
    pressureThere: wf.quantityOutput(absolutePressure, {
      symbol: 'p_r',
      label: 'Pressure at the other state',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
    viscosity: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity of the gas', units: ['uPa.s'] }),
    density: wf.quantityOutput(density, { symbol: '\\rho', label: 'Density of the gas', units: ['kg/m3'] }),
    viscosityThere: wf.quantityOutput(dynamicViscosity, { symbol: '\\mu_r', label: 'Viscosity at the other state', units: ['uPa.s'] }),
    densityThere: wf.quantityOutput(density, { symbol: '\\rho_r', label: 'Density at the other state', units: ['kg/m3'] }),
    flowAtReference: wf.quantityOutput(volumeFlow, { symbol: 'Q_r', label: 'Flow at the other state', units: ['m3/h', 'L/s'] }),
  },
  outputs: {
    dropFactor: wf.quantityOutput(ratio, { symbol: 'f', label: 'Factor on the measured drop' }),
    referenceDrop: dropOutput('\\Delta p_r', 'Drop at the other state'),
  },
  constants: { ...gasConstants, viscosityTemperature, ...atmosphereConstants },
  answer: 'referenceDrop',
  steps: [
    pressureStep('measuredPressure', 'gasPressure', 'altitude'),
    pressureStep('pressureThere', 'referencePressure', 'referenceAltitude'),
    airViscosity('viscosity', 'gasTemperature', 'viscosityTemperature'),
    airViscosity('viscosityThere', 'referenceTemperature', 'viscosityTemperature'),
    airDensity('density', 'gasTemperature', 'measuredPressure'),
    airDensity('densityThere', 'referenceTemperature', 'pressureThere'),
    wf.cases('flowAtReference', {
      'known(referenceVolumeFlow)': 'referenceVolumeFlow',
      otherwise: 'exhaustVolumeFlow * density / densityThere',
    }),
    wf.formula(
      'dropFactor',
      '(1 - inertialShare) * viscosityThere * flowAtReference / (viscosity * exhaustVolumeFlow) + inertialShare * densityThere * flowAtReference ^ 2 / (density * exhaustVolumeFlow ^ 2)',
      dropScaling,
    ),
    wf.formula('referenceDrop', 'dropFactor * pressureDrop', konstandopoulos2008, 'Eq. 8'),
  ],
  assumptions: {
    same_filter: 'The filter holds the same soot and ash at both states.',
    as_air: 'The gas is taken as air at both states.',
    flow_in_the_middle:
      'Volume flows belong to the pressure in the middle of the filter, that is, the pressure after it plus half the drop; pressures and densities to the state after it.',
  },
  limits: {
    mass_by_outlet:
      'The same mass flow is found by the pressures after the filter: a drop of 100 mbar taken from sea level to 2000 m comes out 3 % too high.',
    slip: 'Gas slips in the fine soot cake, the more the hotter it is; over 200 K a loaded filter can be up to a third lower than this says.',
    square_law: 'Dividing by the square of the flow is wrong for a filter; it is only right for the inertial part.',
  },
  cautions: [cautions.sensorFirst],
  compute(input, { constants: given, assume }) {
    const constants = { ...given, referenceTemperature: given.viscosityTemperature };
    const atmosphere = { ...constants, gasConstant: constants.atmosphereGasConstant, molarMass: constants.atmosphereMolarMass };
    const pressureOf = (given: number | undefined, altitude: number | undefined) => {
      if (given !== undefined) return given;
      if (altitude === undefined) assume('sea_level', 'Pressure at sea level, because neither pressure nor altitude was entered.');
      return standardPressure(geopotentialAltitude(altitude ?? 0, atmosphere), atmosphere);
    };
    const measuredPressure = pressureOf(input.gasPressure, input.altitude);
    const pressureThere = pressureOf(input.referencePressure, input.referenceAltitude);
    const viscosity = resolveViscosity(input, constants);
    const density = resolveDensity({ gasTemperature: input.gasTemperature, gasPressure: measuredPressure }, constants);
    const reference = { gasTemperature: input.referenceTemperature, gasPressure: pressureThere };
    const viscosityThere = resolveViscosity(reference, constants);
    const densityThere = resolveDensity(reference, constants);
    const flowAtReference = input.referenceVolumeFlow ?? (input.exhaustVolumeFlow * density) / densityThere;
    const measured = { volumeFlow: input.exhaustVolumeFlow, viscosity, density };
    const wanted = { volumeFlow: flowAtReference, viscosity: viscosityThere, density: densityThere };
    const referenceDrop = dropAtState(input.pressureDrop, measured, wanted, input.inertialShare);
    return {
      measuredPressure,
      pressureThere,
      viscosity,
      density,
      viscosityThere,
      densityThere,
      flowAtReference,
      dropFactor: referenceDrop / input.pressureDrop,
      referenceDrop,
    };
  },
});
