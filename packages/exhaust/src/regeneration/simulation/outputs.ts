import { cases, formula, fromTable, optional, quantityOutput, solved, statement, tableOutput, textOutput } from '@wallflow/calculation';
import {
  area,
  energy,
  fraction,
  heatTransferCoefficient,
  length,
  massConcentration,
  temperature,
  temperatureDifference,
  temperatureRate,
  thermalConductivity,
  time,
} from '@wallflow/units';
import { honeycombIntermediates, honeycombSteps } from '../honeycomb.js';
import { adiabaticRiseOutput, adiabaticRiseStep, heatOfCombustionOutput, heatOfCombustionStep } from '../soot-heat.js';
import { adiabaticBalance, carbonHeats, gasHeatBalance, honeycombData, squareDuctHeat } from '../sources.js';

/** What both simulations give. */
export const simulationOutputs = {
  peakTemperature: quantityOutput(temperature, {
    symbol: 'T_{max}',
    label: 'Highest wall temperature',
    digits: 4,
    units: ['degC', 'K', 'degF'],
  }),
  peakTime: quantityOutput(time, { symbol: 't_{max}', label: 'Time of the highest temperature', digits: 4, units: ['s', 'min'] }),
  adiabaticPeak: quantityOutput(temperature, {
    symbol: 'T_{ad}',
    label: 'Adiabatic estimate: hottest gas or start, plus all heat of the soot',
    digits: 4,
    units: ['degC', 'K', 'degF'],
  }),
  aboveAdiabatic: quantityOutput(temperatureDifference, {
    symbol: '\\Delta T_a',
    label: 'Highest temperature above the adiabatic estimate (negative if below)',
    digits: 3,
    units: ['K'],
  }),
  comparison: textOutput({ label: 'Simulation against estimate' }),
  fastestRise: quantityOutput(temperatureRate, {
    symbol: '\\dot T_{max}',
    label: 'Fastest rise of a wall temperature',
    digits: 3,
    units: ['K/s', 'K/min'],
  }),
  burnOff: quantityOutput(fraction, { symbol: 'X', label: 'Soot burnt at the end', digits: 4, units: ['%'] }),
  timeToTarget: optional(
    quantityOutput(time, { symbol: 't_X', label: 'Time until the wanted share is burnt', digits: 4, units: ['min', 's'] }),
  ),
  finalLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
  series: tableOutput({
    label: 'Course of the regeneration',
    columns: {
      time: quantityOutput(time, { symbol: 't', label: 'Time', digits: 4, units: ['s', 'min'] }),
      inlet: quantityOutput(temperature, { symbol: 'T_{in}', label: 'Gas before the filter', digits: 4, units: ['degC'] }),
      outlet: quantityOutput(temperature, { symbol: 'T_{out}', label: 'Gas after the filter', digits: 4, units: ['degC'] }),
      hottest: quantityOutput(temperature, { symbol: 'T_{max}', label: 'Hottest wall', digits: 4, units: ['degC'] }),
      sootLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load', digits: 4, units: ['g/L'] }),
      burnt: quantityOutput(fraction, { symbol: 'X', label: 'Soot burnt', digits: 4, units: ['%'] }),
    },
    plot: { x: 'time', y: ['inlet', 'outlet', 'hottest'] },
  }),
};

export const simulationIntermediates = {
  ...honeycombIntermediates,
  heatOfCombustion: heatOfCombustionOutput,
  adiabaticRise: adiabaticRiseOutput,
  hottestFeed: quantityOutput(temperature, { symbol: 'T_h', label: 'Highest temperature of gas or start', digits: 4, units: ['degC'] }),
  gasHeat: quantityOutput(energy, { symbol: 'Q_g', label: 'Heat that the gas leaves in the filter', digits: 4, units: ['kJ'] }),
  endTemperature: quantityOutput(temperature, { symbol: 'T_e', label: 'Mean wall temperature at the end', digits: 4, units: ['degC'] }),
  sootHeat: quantityOutput(energy, { symbol: 'Q_s', label: 'Heat of the soot', digits: 4, units: ['kJ'] }),
};

/** Gas and soot at the start, before anything is stepped in time. */
export const startSteps = [
  ...honeycombSteps,
  heatOfCombustionStep,
  adiabaticRiseStep,
  cases('hottestFeed', {
    "scenario == 'steady'": 'max(startTemperature, gasTemperature)',
    "scenario == 'ramp'": 'max(startTemperature, startTemperature + (gasTemperature - startTemperature) * min(1, duration / rampDuration))',
    "scenario == 'drop-to-idle' and duration > dropTime":
      'max(startTemperature, startTemperature + (gasTemperature - startTemperature) * min(1, dropTime / rampDuration), idleTemperature)',
    "scenario == 'drop-to-idle'":
      'max(startTemperature, startTemperature + (gasTemperature - startTemperature) * min(1, duration / rampDuration))',
    otherwise: fromTable(
      'hottestFeed',
      ['duration'],
      undefined,
      undefined,
      'The hottest gas of the own course within this time, or the filter at the start.',
    ),
  }),
  formula('adiabaticPeak', 'hottestFeed + adiabaticRise', adiabaticBalance),
] as const;

/** What follows from the course that was stepped in time. */
export const courseSteps = [
  formula('finalLoad', 'last(series.sootLoad)'),
  cases('burnOff', { 'sootLoad > 0': '1 - finalLoad / sootLoad', otherwise: '0' }),
  formula('sootHeat', 'heatOfCombustion * sootLoad * burnOff * filterVolume', carbonHeats),
] as const;

export const heatBalanceStep = solved(
  'gasHeat',
  'filterVolume * honeycombDensity * honeycombHeatCapacity * startTemperature + gasHeat + sootHeat = filterVolume * honeycombDensity * honeycombHeatCapacity * endTemperature',
  { within: 1e-4 },
  gasHeatBalance,
  undefined,
  'Summed along the run; with the heat of the soot it must be what the filter holds more at the end than at the start.',
);

export const extremeSteps = [
  formula('aboveAdiabatic', 'peakTemperature - adiabaticPeak'),
  statement('comparison', 'By the sign of the difference.'),
  fromTable('peakTime', ['peakTemperature'], undefined, undefined, 'Read off the course, between its steps, at this temperature.'),
  fromTable(
    'fastestRise',
    ['duration'],
    undefined,
    undefined,
    'The steepest rise of a wall temperature over this time, at the ends of the steps.',
  ),
  fromTable('timeToTarget', ['targetShare'], undefined, undefined, 'Read off the course, between its steps, where this share has burnt.'),
] as const;

/** Only of the axial model. */
export const channelIntermediates = {
  channelWidth: quantityOutput(length, { symbol: '\\alpha', label: 'Clear width of a channel', digits: 4, units: ['mm'] }),
  filtrationArea: quantityOutput(area, { symbol: 'A_f', label: 'Filtration area', digits: 4, units: ['m2'] }),
  heatTransfer: quantityOutput(heatTransferCoefficient, { symbol: 'h', label: 'Heat transfer from gas to wall', digits: 4 }),
  bedConductivity: quantityOutput(thermalConductivity, {
    symbol: '\\lambda',
    label: 'Conductivity along the length, as used',
    digits: 3,
    units: ['W/(m.K)'],
  }),
};

export const channelSteps = [
  formula('channelWidth', '1 / sqrt(cellDensity) - wallThickness'),
  formula('filtrationArea', '2 * channelWidth * cellDensity * filterVolume'),
  formula('heatTransfer', 'squareDuctNusselt * gasConductivity / channelWidth', squareDuctHeat),
  cases(
    'bedConductivity',
    {
      'known(axialConductivity)': 'axialConductivity',
      "substrate == 'silicon-carbide'": 'siliconCarbideConductivity',
      otherwise: 'cordieriteConductivity',
    },
    honeycombData,
  ),
] as const;

export const axialOutputs = {
  peakPosition: quantityOutput(length, {
    symbol: 'z_{max}',
    label: 'Place of the highest temperature, from the inlet',
    digits: 3,
    units: ['mm'],
  }),
  profile: tableOutput({
    label: 'Along the filter',
    columns: {
      position: quantityOutput(length, { symbol: 'z', label: 'Distance from the inlet', digits: 4, units: ['mm'] }),
      highest: quantityOutput(temperature, { symbol: 'T_{max}', label: 'Highest temperature reached there', digits: 4, units: ['degC'] }),
      atPeak: quantityOutput(temperature, { symbol: 'T', label: 'Temperature at the time of the peak', digits: 4, units: ['degC'] }),
      atEnd: quantityOutput(temperature, { symbol: 'T_e', label: 'Temperature at the end', digits: 4, units: ['degC'] }),
      sootLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
    },
    plot: { x: 'position', y: ['highest', 'atPeak'] },
  }),
};
