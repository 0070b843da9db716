import { optional, quantityOutput, tableOutput, textOutput } from '@wallflow/calculation';
import { energy, fraction, length, massConcentration, temperature, temperatureDifference, temperatureRate, time } from '@wallflow/units';

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
    label: 'Adiabatic estimate: hottest of gas and start, plus all heat of the soot',
    digits: 4,
    units: ['degC', 'K', 'degF'],
  }),
  aboveAdiabatic: quantityOutput(temperatureDifference, {
    symbol: '\\Delta T_{ad}',
    label: 'Highest temperature above the adiabatic estimate (negative: below)',
    digits: 3,
    units: ['K'],
  }),
  comparison: textOutput({ label: 'Simulation and estimate' }),
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
  adiabaticRise: quantityOutput(temperatureDifference, { symbol: 'a', label: 'Adiabatic rise', digits: 4, units: ['K'] }),
  hottestFeed: quantityOutput(temperature, { symbol: 'T_h', label: 'Hottest of gas and start', digits: 4, units: ['degC'] }),
  gasHeat: quantityOutput(energy, { symbol: 'Q_g', label: 'Heat left by the gas', digits: 4, units: ['kJ'] }),
  sootHeat: quantityOutput(energy, { symbol: 'Q_s', label: 'Heat of the burnt soot', digits: 4, units: ['kJ'] }),
};

/** Only of the axial model. */
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
      sootLoad: quantityOutput(massConcentration, { symbol: "m'", label: 'Soot load at the end', digits: 4, units: ['g/L'] }),
    },
    plot: { x: 'position', y: ['highest', 'atPeak'] },
  }),
};
