import { type CheckedOf, choice, count, flag, optional, quantity, whenGiven } from '@wallflow/calculation';
import {
  differentialPressure,
  fraction,
  length,
  mass,
  massConcentration,
  temperature,
  temperatureDifference,
  voltage,
  volume,
} from '@wallflow/units';

function known(label: string, example: boolean, description?: string) {
  return optional(flag({ label, example, ...(description === undefined ? {} : { description }) }));
}

const load = (symbol: string, label: string, example: string, description?: string) =>
  optional(
    quantity(massConcentration, {
      symbol,
      label,
      range: '0 <= x <= 60 g/L',
      example,
      units: ['g/L', 'kg/m3'],
      ...(description === undefined ? {} : { description }),
    }),
  );

const degrees = (symbol: string, label: string, example: string) =>
  optional(quantity(temperature, { symbol, label, range: '-60 <= x <= 250 °C', example, units: ['degC', 'degF', 'K'] }));

const percent = (symbol: string, label: string, example: string) =>
  optional(quantity(fraction, { symbol, label, range: '0 <= x <= 100 %', example, units: ['%', '1'] }));

const volts = (symbol: string, label: string, example: string) =>
  optional(quantity(voltage, { symbol, label, range: '0 <= x <= 60 V', example, units: ['V'] }));

const measured = {
  substrate: choice({
    label: 'Filter material',
    options: { 'silicon-carbide': 'silicon carbide', cordierite: 'cordierite', unknown: 'not known' },
    example: 'cordierite',
    default: ['unknown', 'not known counts as cordierite, the stricter of the two'],
  }),
  sootLoad: load(
    "m'",
    'Soot load from the control unit or your own estimate',
    '3.0 g/L',
    'For the whole filter. Turn a percentage into g/L first; you need to know what 100 % stands for.',
  ),
  sootMass: optional(
    quantity(mass, {
      symbol: 'm_s',
      label: 'Soot mass shown by the control unit',
      description: 'Where it shows grams instead of a load per litre. Beside a load per litre, the larger of the two counts.',
      range: '0 g <= x <= 5 kg',
      example: '17 g',
      units: ['g', 'kg', 'oz'],
    }),
  ),
  ...whenGiven('sootMass', {
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      description: 'Outer volume of the honeycomb.',
      range: '0.1 <= V <= 200 L',
      usual: ['0.5 L', '60 L', 'vehicle filters are made in this range'],
      example: '5.79 L',
      units: ['L', 'in3', 'cm3'],
    }),
  }),
  sootLoadUncertainty: quantity(massConcentration, {
    symbol: "u(m')",
    label: 'Uncertainty of that soot load',
    range: '0 <= x <= 20 g/L',
    units: ['g/L', 'kg/m3'],
    default: ['1 g/L', 'how well mass-balance estimates were validated; an estimate from the pressure drop on board is off by 28 %'],
  }),
  measuredSootLoad: load(
    "m'_r",
    'Soot load from the readings',
    '3.4 g/L',
    'From the pressure drop at known flow and temperature. Of the two loads the larger counts.',
  ),
  ...whenGiven('measuredSootLoad', {
    measuredSootLoadUncertainty: load(
      "u(m'_r)",
      'Uncertainty of the soot load from the readings',
      '1.2 g/L',
      'Up to the most soot that the pressure drop allows. Leave blank to use the uncertainty of the other soot load.',
    ),
  }),
  failedAttempts: optional(count({ label: 'Attempts in a row that did not complete', symbol: 'n', min: 0, max: 100, example: 0 })),
  faultCodes: known(
    'Relevant fault codes stored',
    false,
    'Exhaust temperature, filter pressure, air mass, injectors, EGR, boost, glow, throttle, oxidation catalyst.',
  ),
  pressureSensorZero: optional(
    quantity(differentialPressure, {
      symbol: '\\Delta p_0',
      label: 'Filter pressure reading, engine off',
      description: 'Ignition on, engine stopped for 30 s.',
      range: '-500 <= x <= 500 mbar',
      example: '1 mbar',
      units: ['mbar', 'kPa', 'hPa'],
    }),
  ),
  temperatureSensorSpread: optional(
    quantity(temperatureDifference, {
      symbol: '\\Delta T_s',
      label: 'Spread of the exhaust temperature sensors, cold',
      description: 'Largest minus smallest reading after a night parked.',
      range: '0 <= x <= 500 K',
      example: '4 K',
    }),
  ),
  catalystWarms: known('Oxidation catalyst warms up at idle', true),
  coolantTemperature: degrees('T_c', 'Coolant temperature', '86 °C'),
  oilTemperature: degrees('T_o', 'Engine oil temperature', '92 °C'),
  oilLevel: optional(
    choice({
      label: 'Engine oil level',
      options: {
        'below-minimum': 'below the minimum mark',
        'between-marks': 'between the marks',
        'above-maximum': 'above the maximum mark',
      },
      example: 'between-marks',
    }),
  ),
  oilSmellsOfFuel: known('Engine oil smells of fuel', false),
  fuelInOil: percent('w_f', 'Fuel in the engine oil', '1.5 %'),
  fuelLevel: percent('L_f', 'Fuel level as a share of the tank', '50 %'),
  batteryAtRest: volts('U_0', 'Battery voltage at rest', '12.6 V'),
  batteryRunning: volts('U_r', 'Battery voltage, engine running', '14.1 V'),
  batterySupport: known('Battery charger connected', true),
  leaks: known('Leak in intake or exhaust', false),
  wetFilter: known('Filter still wet from cleaning', false),
  freshAdditive: known('Cleaning additive just poured into the fuel', false),
  place: optional(
    choice({
      label: 'Place',
      options: {
        outdoors: 'outdoors',
        'indoors-extracted': 'indoors with extraction rated for hot exhaust',
        'indoors-not-extracted': 'indoors without such extraction',
      },
      example: 'outdoors',
    }),
  ),
  rainOnHotParts: known('Rain falls on hot parts', false),
  clearance: optional(
    quantity(length, {
      symbol: 'd',
      label: 'Distance from tail pipe and vehicle sides to anything that burns',
      range: '0 <= x <= 1000 m',
      example: '3 m',
      units: ['m', 'ft', 'cm'],
    }),
  ),
  hardGround: known('Hard ground that heat cannot damage, nothing under the vehicle', true, 'No grass, no soft asphalt.'),
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
  makerMaximumAttempts: optional(
    count({ label: "Maker's highest number of attempts in a row", symbol: 'n_{max}', min: 1, max: 20, example: 2 }),
  ),
  makerMaximumSensorZero: optional(
    quantity(differentialPressure, {
      symbol: '\\Delta p_{0,max}',
      label: "Maker's largest zero error of the filter pressure sensor",
      range: '0 <= x <= 50 mbar',
      example: '5 mbar',
      units: ['mbar', 'kPa', 'hPa'],
    }),
  ),
  makerMinimumCoolantTemperature: degrees('T_{c,min}', "Maker's lowest coolant temperature", '70 °C'),
  makerMaximumCoolantTemperature: degrees('T_{c,max}', "Maker's highest coolant temperature", '105 °C'),
  makerMinimumOilTemperature: degrees('T_{o,min}', "Maker's lowest oil temperature", '50 °C'),
  makerMaximumOilTemperature: degrees('T_{o,max}', "Maker's highest oil temperature", '120 °C'),
  makerMaximumFuelInOil: percent('w_{f,max}', "Maker's highest fuel content of the oil", '5 %'),
  makerMinimumFuelLevel: percent('L_{f,min}', "Maker's lowest fuel level", '20 %'),
  makerMinimumRestVoltage: volts('U_{0,min}', "Maker's lowest battery voltage at rest", '12.2 V'),
  makerMinimumRunningVoltage: volts('U_{r,min}', "Maker's lowest battery voltage with the engine running", '13.0 V'),
  makerMinimumClearance: optional(
    quantity(length, {
      symbol: 'd_{min}',
      label: "Maker's least distance to anything that burns",
      range: '0 <= x <= 100 m',
      example: '1.5 m',
      units: ['m', 'ft', 'cm'],
    }),
  ),
};

export const permissionInputs = { ...measured, ...makers };

/** Checked values in SI. */
export type PermissionInput = CheckedOf<typeof permissionInputs>;

/** Grams in the whole filter as the load that they are; undefined where they are not known. */
export function loadOfGrams({ sootMass, filterVolume }: PermissionInput): number | undefined {
  return sootMass === undefined || filterVolume === undefined ? undefined : sootMass / filterVolume;
}

/** The input with the larger of what was entered per litre and in grams; every condition asks for the load. */
export function withLoad(input: PermissionInput): PermissionInput {
  const fromGrams = loadOfGrams(input);
  return fromGrams === undefined ? input : { ...input, sootLoad: massConcentration.si(Math.max(input.sootLoad ?? 0, fromGrams)) };
}
