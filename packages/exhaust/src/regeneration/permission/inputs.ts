import { choice, choiceWithDefault, count, flag, quantity, quantityWithDefault } from '@wallflow/calculation';
import { differentialPressure, fraction, length, massConcentration, temperature, temperatureDifference, voltage } from '@wallflow/units';
import * as z from 'zod';

function known(label: string, example: boolean, description?: string) {
  return flag({ label, example, ...(description === undefined ? {} : { description }) }).optional();
}

const load = (symbol: string, label: string, example: string, description?: string) =>
  quantity(massConcentration, {
    symbol,
    label,
    min: '0 g/L',
    max: '60 g/L',
    example,
    units: ['g/L', 'kg/m3'],
    ...(description === undefined ? {} : { description }),
  }).optional();

const degrees = (symbol: string, label: string, example: string) =>
  quantity(temperature, { symbol, label, min: '-60 °C', max: '250 °C', example, units: ['degC', 'degF', 'K'] }).optional();

const percent = (symbol: string, label: string, example: string) =>
  quantity(fraction, { symbol, label, min: '0 %', max: '100 %', example, units: ['%', '1'] }).optional();

const volts = (symbol: string, label: string, example: string) =>
  quantity(voltage, { symbol, label, min: '0 V', max: '60 V', example, units: ['V'] }).optional();

const measured = {
  substrate: choiceWithDefault({
    label: 'Filter material',
    options: { 'silicon-carbide': 'silicon carbide', cordierite: 'cordierite', unknown: 'not known' },
    example: 'cordierite',
    default: 'unknown',
    defaultReason: 'not known counts as cordierite, the stricter of the two',
  }),
  sootLoad: load(
    "m'",
    'Soot load, of the control unit or your own estimate',
    '3.0 g/L',
    'For the whole filter; turn a percent into g/L first, knowing what 100 % means.',
  ),
  sootLoadUncertainty: quantityWithDefault(massConcentration, {
    symbol: "u(m')",
    label: 'Uncertainty of that soot load',
    min: '0 g/L',
    max: '20 g/L',
    example: '1 g/L',
    units: ['g/L', 'kg/m3'],
    default: '1 g/L',
    defaultReason: 'what mass-balance estimates were validated to; a pressure-based chain has 28 %',
  }),
  measuredSootLoad: load(
    "m'_r",
    'Soot load from the readings',
    '3.4 g/L',
    'From the pressure drop at known flow and temperature. The larger of the two counts.',
  ),
  measuredSootLoadUncertainty: quantity(massConcentration, {
    symbol: "u(m'_r)",
    label: 'Uncertainty of the soot load from the readings',
    description: 'The way up to the most that the drop allows. Left blank: as that of the other soot load.',
    min: '0 g/L',
    max: '60 g/L',
    example: '1.2 g/L',
    units: ['g/L', 'kg/m3'],
  }).optional(),
  failedAttempts: count({
    label: 'Attempts in a row that did not complete',
    symbol: 'n',
    min: 0,
    max: 100,
    example: 0,
  }).optional(),
  faultCodes: known(
    'Relevant fault codes stored',
    false,
    'Exhaust temperature, filter pressure, air mass, injectors, EGR, boost, glow, throttle, oxidation catalyst.',
  ),
  pressureSensorZero: quantity(differentialPressure, {
    symbol: '\\Delta p_0',
    label: 'Filter pressure reading, engine off',
    description: 'Ignition on, engine stopped for 30 s.',
    min: '-500 mbar',
    max: '500 mbar',
    example: '1 mbar',
    units: ['mbar', 'kPa', 'hPa'],
  }).optional(),
  temperatureSensorSpread: quantity(temperatureDifference, {
    symbol: '\\Delta T_s',
    label: 'Spread of the exhaust temperature sensors, cold',
    description: 'Largest less smallest reading after a night standing.',
    min: '0 K',
    max: '500 K',
    example: '4 K',
  }).optional(),
  catalystWarms: known('Oxidation catalyst warms up at idle', true),
  coolantTemperature: degrees('T_c', 'Coolant temperature', '86 °C'),
  oilTemperature: degrees('T_o', 'Engine oil temperature', '92 °C'),
  oilLevel: choice({
    label: 'Engine oil level',
    options: { 'below-minimum': 'below the minimum mark', 'between-marks': 'between the marks', 'above-maximum': 'above the maximum mark' },
    example: 'between-marks',
  }).optional(),
  oilSmellsOfFuel: known('Engine oil smells of fuel', false),
  fuelInOil: percent('w_f', 'Fuel in the engine oil', '1.5 %'),
  fuelLevel: percent('L_f', 'Fuel level, share of the tank', '50 %'),
  batteryAtRest: volts('U_0', 'Battery voltage at rest', '12.6 V'),
  batteryRunning: volts('U_r', 'Battery voltage, engine running', '14.1 V'),
  batterySupport: known('Battery charger connected', true),
  leaks: known('Leak in intake or exhaust', false),
  wetFilter: known('Filter still wet from cleaning', false),
  freshAdditive: known('Cleaning additive just poured into the fuel', false),
  place: choice({
    label: 'Place',
    options: {
      outdoors: 'outdoors',
      'indoors-extracted': 'indoors with extraction rated for hot exhaust',
      'indoors-not-extracted': 'indoors without such extraction',
    },
    example: 'outdoors',
  }).optional(),
  rainOnHotParts: known('Rain falls on hot parts', false),
  clearance: quantity(length, {
    symbol: 'd',
    label: 'Distance from tail pipe and vehicle sides to anything that burns',
    min: '0 m',
    max: '1000 m',
    example: '3 m',
    units: ['m', 'ft', 'cm'],
  }).optional(),
  hardGround: known('Hard ground that heat does not harm, nothing under the vehicle', true, 'No grass, no soft asphalt.'),
  undertrayClean: known('Undertray and exhaust free of oil and fuel', true),
  attended: known('Somebody stays with the vehicle all the time', true),
  extinguisher: known('Extinguisher ready (powder or CO₂, water for grass)', true),
  stopReachable: known('Engine stop within reach', true),
  parked: known('In park or neutral, brake on, accelerator untouched', true),
  wheelsChocked: known('Wheels chocked', true),
  powerTakeOff: known('Power take-off engaged', false),
};

const makers = {
  makerMaximumSootLoad: load("m'_{max}", "Maker's highest soot load", '5.5 g/L'),
  makerMinimumSootLoad: load("m'_{min}", "Maker's lowest soot load", '2 g/L'),
  makerMaximumAttempts: count({ label: "Maker's number of attempts in a row", symbol: 'n_{max}', min: 1, max: 20, example: 2 }).optional(),
  makerMaximumSensorZero: quantity(differentialPressure, {
    symbol: '\\Delta p_{0,max}',
    label: "Maker's largest zero error of the filter pressure sensor",
    min: '0 mbar',
    max: '50 mbar',
    example: '5 mbar',
    units: ['mbar', 'kPa', 'hPa'],
  }).optional(),
  makerMinimumCoolantTemperature: degrees('T_{c,min}', "Maker's lowest coolant temperature", '70 °C'),
  makerMaximumCoolantTemperature: degrees('T_{c,max}', "Maker's highest coolant temperature", '105 °C'),
  makerMinimumOilTemperature: degrees('T_{o,min}', "Maker's lowest oil temperature", '50 °C'),
  makerMaximumOilTemperature: degrees('T_{o,max}', "Maker's highest oil temperature", '120 °C'),
  makerMaximumFuelInOil: percent('w_{f,max}', "Maker's highest fuel content of the oil", '5 %'),
  makerMinimumFuelLevel: percent('L_{f,min}', "Maker's lowest fuel level", '20 %'),
  makerMinimumRestVoltage: volts('U_{0,min}', "Maker's lowest battery voltage at rest", '12.2 V'),
  makerMinimumRunningVoltage: volts('U_{r,min}', "Maker's lowest battery voltage running", '13.0 V'),
  makerMinimumClearance: quantity(length, {
    symbol: 'd_{min}',
    label: "Maker's least distance to anything that burns",
    min: '0 m',
    max: '100 m',
    example: '1.5 m',
    units: ['m', 'ft', 'cm'],
  }).optional(),
};

export const permissionInputs = z.strictObject({ ...measured, ...makers });

/** Checked values in SI. */
export type PermissionInput = z.output<typeof permissionInputs>;
