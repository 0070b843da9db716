import { defineCalculation, inconsistentInputs, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { absolutePressure, density, dynamicViscosity, fraction, length, ratio, temperature, volumeFlow } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { standardAtmosphere } from '../../gas/sources.js';
import { geopotentialAltitude, standardPressure } from '../../gas/standard-atmosphere/kernel.js';
import { cfr1065, konstandopoulos2008, siBrochure } from '../../sources.js';
import { atmosphereConstants, filterConstants } from '../constants.js';
import { dropOutput } from '../drop-outputs.js';
import { gasInputs, pressureDropInput } from '../inputs.js';
import { resolveDensity, resolveViscosity } from '../resolve.js';
import { dropScaling } from '../sources.js';
import { dropAtState } from './kernel.js';

const pressure = (symbol: string, label: string) =>
  quantity(absolutePressure, {
    symbol,
    label,
    description: 'Give this or the altitude; left out with it, sea level.',
    min: '40 kPa',
    max: '600 kPa',
    usual: ['60 kPa', '250 kPa'],
    usualReason: 'outside this range it is probably a gauge pressure or in another unit',
    example: '101.3 kPa',
    units: ['kPa', 'mbar', 'bar', 'psi'],
  }).optional();
const height = (symbol: string, label: string) =>
  quantity(length, {
    symbol,
    label,
    description: 'Gives the pressure of the standard atmosphere; the drop of parts behind the filter is left out.',
    min: '-1000 m',
    max: '11000 m',
    usual: ['-450 m', '5500 m'],
    usualReason: 'no road lies lower or higher',
    example: '1000 m',
    units: ['m', 'ft', 'km'],
  }).optional();

export const dropAtReferenceStateCalculation = defineCalculation({
  id: 'drop-at-reference-state',
  version: '1.0.0',
  subject: 'filter',
  title: 'A drop at another flow, temperature or altitude',
  purpose: 'What would the same filter read at the conditions of another measurement?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['reference state', 'altitude', 'temperature correction', 'before and after', 'compare'],
  method: 'viscous part with μQ, inertial part with ρQ²',
  inputs: z.strictObject({
    pressureDrop: pressureDropInput,
    exhaustVolumeFlow: gasInputs.exhaustVolumeFlow,
    gasTemperature: gasInputs.gasTemperature,
    gasPressure: pressure('p', 'Absolute pressure behind the filter'),
    altitude: height('Z', 'Altitude of the measurement'),
    referenceVolumeFlow: quantity(volumeFlow, {
      symbol: 'Q_r',
      label: 'Flow to convert to',
      description: 'Actual flow. Left out, the mass flow stays the same.',
      above: '0 m3/h',
      max: '10000 m3/h',
      usual: ['5 m3/h', '4000 m3/h'],
      usualReason: 'flows of vehicle engines',
      example: '200 m3/h',
    }).optional(),
    referenceTemperature: quantityWithDefault(temperature, {
      symbol: 'T_r',
      label: 'Gas temperature to convert to',
      min: '-40 °C',
      max: '1200 °C',
      usual: ['0 °C', '750 °C'],
      usualReason: {
        below: 'the gas of an engine that runs is warmer',
        above: "the viscosity by Sutherland's formula is more than 4 % below the dilute-gas value there",
      },
      example: '200 °C',
      default: '200 °C',
      defaultReason: 'a warm engine at raised speed without load',
    }),
    referencePressure: pressure('p_r', 'Absolute pressure to convert to'),
    referenceAltitude: height('Z_r', 'Altitude to convert to'),
    inertialShare: quantityWithDefault(fraction, {
      symbol: 'x_i',
      label: 'Inertial part of the measured drop',
      description: 'From a fit over several points. A loaded filter has little, a pipe or a silencer nearly 100 %.',
      min: '0 %',
      max: '100 %',
      example: '5 %',
      default: '0 %',
      defaultReason: 'a loaded filter; the drop is then proportional to viscosity times flow',
    }),
  }),
  intermediates: {
    measuredPressure: quantityOutput(absolutePressure, { symbol: 'p', label: 'Pressure as measured', digits: 5, units: ['kPa', 'mbar'] }),
    pressureThere: quantityOutput(absolutePressure, {
      symbol: 'p_r',
      label: 'Pressure at the other state',
      digits: 5,
      units: ['kPa', 'mbar'],
    }),
    viscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu', label: 'Viscosity as measured', units: ['uPa.s'] }),
    density: quantityOutput(density, { symbol: '\\rho', label: 'Density as measured', units: ['kg/m3'] }),
    referenceViscosity: quantityOutput(dynamicViscosity, { symbol: '\\mu_r', label: 'Viscosity at the other state', units: ['uPa.s'] }),
    referenceDensity: quantityOutput(density, { symbol: '\\rho_r', label: 'Density at the other state', units: ['kg/m3'] }),
    flowAtReference: quantityOutput(volumeFlow, { symbol: 'Q_r', label: 'Flow at the other state', units: ['m3/h', 'L/s'] }),
  },
  outputs: {
    dropFactor: quantityOutput(ratio, { symbol: 'f', label: 'Factor on the measured drop' }),
    referenceDrop: dropOutput('\\Delta p_r', 'Drop at the other state'),
  },
  constants: { ...filterConstants, ...atmosphereConstants },
  steps: [
    {
      gives: 'measuredPressure',
      text: 'As given, or that of the standard atmosphere at the altitude: [[measuredPressure]].',
      source: 'standardAtmosphere',
      locator: 'Eq. 33a',
    },
    { gives: 'pressureThere', text: 'The same for the other state: [[pressureThere]].', source: 'standardAtmosphere', locator: 'Eq. 33a' },
    { gives: 'viscosity', text: 'Viscosity of air at [[gasTemperature]]: [[viscosity]].', source: 'cfr1065', locator: '1065.640 Table 4' },
    {
      gives: 'referenceViscosity',
      text: 'At [[referenceTemperature]]: [[referenceViscosity]].',
      source: 'cfr1065',
      locator: '1065.640 Table 4',
    },
    {
      gives: 'density',
      tex: '[[density]] = \\frac{[[measuredPressure]]\\,[[airMolarMass]]}{[[gasConstant]]\\,[[gasTemperature]]}',
      source: 'siBrochure',
    },
    {
      gives: 'referenceDensity',
      tex: '[[referenceDensity]] = \\frac{[[pressureThere]]\\,[[airMolarMass]]}{[[gasConstant]]\\,[[referenceTemperature]]}',
      source: 'siBrochure',
    },
    { gives: 'flowAtReference', text: 'As given, or what the same mass flow takes there: [[flowAtReference]].' },
    {
      gives: 'dropFactor',
      tex: '[[dropFactor]] = \\left(1-[[inertialShare]]\\right)\\frac{[[referenceViscosity]]\\,[[flowAtReference]]}{[[viscosity]]\\,[[exhaustVolumeFlow]]}+[[inertialShare]]\\,\\frac{[[referenceDensity]]\\,[[flowAtReference]]^{2}}{[[density]]\\,[[exhaustVolumeFlow]]^{2}}',
      source: 'dropScaling',
    },
    {
      gives: 'referenceDrop',
      tex: '[[referenceDrop]] = [[dropFactor]]\\,[[pressureDrop]]',
      source: 'konstandopoulos2008',
      locator: 'Eq. 8',
    },
  ],
  assumptions: [
    { code: 'same_filter', text: 'The filter holds the same soot and ash at both states.' },
    { code: 'as_air', text: 'The gas is taken as air at both states.' },
    {
      code: 'flow_in_the_middle',
      text: 'Volume flows belong to the pressure in the middle of the filter, which is that behind it plus half the drop; pressures and densities to the state behind it.',
    },
  ],
  limits: [
    {
      code: 'mass_by_outlet',
      text: 'The same mass flow is found by the pressures behind the filter: a drop of 100 mbar taken from sea level to 2000 m comes out 3 % too high.',
    },
    {
      code: 'slip',
      text: 'Gas slips in the fine soot cake, the more the hotter it is; over 200 K a loaded filter can be up to a third lower than this says.',
    },
    { code: 'square_law', text: 'Dividing by the square of the flow is wrong for a filter; it is only right for the inertial part.' },
  ],
  cautions: [cautions.sensorFirst],
  sources: { standardAtmosphere, dropScaling, konstandopoulos2008, cfr1065, siBrochure },
  compute(input, { constants, assume }) {
    const atmosphere = { ...constants, gasConstant: constants.atmosphereGasConstant, molarMass: constants.atmosphereMolarMass };
    const pressureOf = (given: number | undefined, altitude: number | undefined) => {
      if (given !== undefined) return given;
      if (altitude === undefined) assume('sea_level', 'A pressure that is not given is that at sea level.');
      return standardPressure(geopotentialAltitude(altitude ?? 0, atmosphere), atmosphere);
    };
    if (input.gasPressure !== undefined && input.altitude !== undefined) {
      return inconsistentInputs('Give the pressure or the altitude of the measurement, not both.', ['gasPressure'], ['altitude']);
    }
    if (input.referencePressure !== undefined && input.referenceAltitude !== undefined) {
      return inconsistentInputs('Give the pressure or the altitude to convert to, not both.', ['referencePressure'], ['referenceAltitude']);
    }
    const measuredPressure = pressureOf(input.gasPressure, input.altitude);
    const pressureThere = pressureOf(input.referencePressure, input.referenceAltitude);
    const viscosity = resolveViscosity(input, constants);
    const density = resolveDensity({ gasTemperature: input.gasTemperature, gasPressure: measuredPressure }, constants);
    const reference = { gasTemperature: input.referenceTemperature, gasPressure: pressureThere };
    const referenceViscosity = resolveViscosity(reference, constants);
    const referenceDensity = resolveDensity(reference, constants);
    const flowAtReference = input.referenceVolumeFlow ?? (input.exhaustVolumeFlow * density) / referenceDensity;
    const measured = { volumeFlow: input.exhaustVolumeFlow, viscosity, density };
    const wanted = { volumeFlow: flowAtReference, viscosity: referenceViscosity, density: referenceDensity };
    const referenceDrop = dropAtState(input.pressureDrop, measured, wanted, input.inertialShare);
    return {
      measuredPressure,
      pressureThere,
      viscosity,
      density,
      referenceViscosity,
      referenceDensity,
      flowAtReference,
      dropFactor: referenceDrop / input.pressureDrop,
      referenceDrop,
    };
  },
});
