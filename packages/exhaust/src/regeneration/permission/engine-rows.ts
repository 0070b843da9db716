import { say } from '@wallflow/calculation';
import { differentialPressure, fraction, temperature, temperatureDifference, voltage } from '@wallflow/units';
import type { PermissionInput } from './inputs.js';
import { answerRow, type ConditionRow, decidedRow, makersLimit, practice, spanRow } from './row.js';

/** Limits in SI that the definition lists as constants. */
export interface EngineLimits {
  readonly sensorZero: number;
  readonly sensorSpread: number;
  readonly coolantLeast: number;
  readonly coolantMost: number;
  readonly oilLeast: number;
  readonly oilMost: number;
  readonly fuelInOilMost: number;
  readonly restVoltage: number;
  readonly runningVoltage: number;
}

/** Whether the readings can be trusted at all. */
export function readingRows(input: PermissionInput, limits: EngineLimits): ConditionRow[] {
  return [
    answerRow({
      condition: 'Relevant fault codes stored',
      answer: input.faultCodes,
      wanted: false,
      reason: 'Soot estimate and control of the burn depend on the parts these codes belong to.',
      repair: 'Save the codes, repair their cause, then measure again. Do not just clear them.',
      find: 'Read all fault codes and save them before clearing anything.',
    }),
    spanRow({
      condition: 'Filter pressure sensor reads zero with the engine off',
      kind: differentialPressure,
      unit: 'mbar',
      value: input.pressureSensorZero,
      least: { usual: -limits.sensorZero, maker: input.makerMaximumSensorZero === undefined ? undefined : -input.makerMaximumSensorZero },
      most: { usual: limits.sensorZero, maker: input.makerMaximumSensorZero },
      reason: 'You can correct readings on paper; the control unit that runs the burn cannot.',
      repair: 'Check hoses and wiring, relearn the zero or replace the sensor, then measure again.',
      find: 'Read the filter pressure with ignition on and the engine stopped for 30 s.',
    }),
    spanRow({
      condition: 'Exhaust temperature sensors agree when cold',
      kind: temperatureDifference,
      unit: 'K',
      value: input.temperatureSensorSpread,
      most: { usual: limits.sensorSpread, maker: undefined },
      reason: 'The burn is controlled by these sensors.',
      repair: 'Replace the sensor that reads differently.',
      find: 'Compare all exhaust temperatures after a night parked.',
    }),
    answerRow({
      condition: 'Oxidation catalyst warms up',
      answer: input.catalystWarms,
      wanted: true,
      reason: 'A cold catalyst lets raw fuel through to the filter.',
      repair: 'Find out why the catalyst stays cold before injecting fuel into it.',
      find: 'Watch the temperatures before and after the catalyst from start to warm idle.',
    }),
  ];
}

/** Coolant and oil. */
export function engineRows(input: PermissionInput, limits: EngineLimits): ConditionRow[] {
  return [
    spanRow({
      condition: 'Coolant warm, and well below boiling',
      kind: temperature,
      unit: 'degC',
      value: input.coolantTemperature,
      least: { usual: limits.coolantLeast, maker: input.makerMinimumCoolantTemperature },
      most: { usual: limits.coolantMost, maker: input.makerMaximumCoolantTemperature },
      mostExcluded: true,
      reason: 'Cold: fuel slips through unburnt. Hot: a stationary vehicle has no cooling to spare.',
      repair: 'Let the engine cool down and find out why it is hot.',
      repairLow: 'Warm the engine up; if it stays cold, check the thermostat.',
      find: 'Read the coolant temperature.',
    }),
    spanRow({
      condition: 'Engine oil warm, not too hot',
      kind: temperature,
      unit: 'degC',
      value: input.oilTemperature,
      least: { usual: limits.oilLeast, maker: input.makerMinimumOilTemperature },
      most: { usual: limits.oilMost, maker: input.makerMaximumOilTemperature },
      reason: 'Cold oil takes up fuel; hot oil lubricates badly and leaves no reserve.',
      repair: 'Let the oil cool down.',
      repairLow: 'Warm the engine up.',
      find: 'Read the oil temperature.',
    }),
    oilLevelRow(input),
    fuelInOilRow(input, limits),
  ];
}

function oilLevelRow({ oilLevel }: PermissionInput): ConditionRow {
  const measured = { 'below-minimum': 'below the minimum', 'between-marks': 'between the marks', 'above-maximum': 'above the maximum' };
  return decidedRow({
    condition: 'Engine oil between the marks',
    result: oilLevel === undefined ? 'unknown' : oilLevel === 'between-marks' ? 'pass' : 'refuse',
    measured: oilLevel === undefined ? undefined : measured[oilLevel],
    limit: 'between the marks',
    reason: 'Above the maximum the engine can run away on its own oil; below the minimum it has no reserve.',
    repair: oilLevel === 'below-minimum' ? 'Top up the oil.' : 'Change the oil before any heat work.',
    find: 'Check the oil level on the dipstick.',
  });
}

/** A smell refuses alone; without one, a measured content or a level between the marks is taken as good. */
function fuelInOilRow({ oilSmellsOfFuel, fuelInOil, makerMaximumFuelInOil }: PermissionInput, limits: EngineLimits): ConditionRow {
  const most = makerMaximumFuelInOil ?? limits.fuelInOilMost;
  const tooMuch = fuelInOil !== undefined && fuelInOil >= most;
  const nothingKnown = fuelInOil === undefined && oilSmellsOfFuel === undefined;
  const content = fuelInOil === undefined ? undefined : fraction.format(fraction.si(fuelInOil), '%', { digits: 3 });
  const smell = oilSmellsOfFuel === undefined ? undefined : oilSmellsOfFuel ? say`smells of fuel` : say`no smell`;
  return decidedRow({
    condition: 'No fuel in the engine oil',
    result: oilSmellsOfFuel === true || tooMuch ? 'refuse' : nothingKnown ? 'unknown' : 'pass',
    measured: nothingKnown ? undefined : [content, smell].filter((part) => part !== undefined).join(', '),
    limit: say`no smell, below ${fraction.format(fraction.si(most), '%', { digits: 3 })}`,
    reason: 'Each regeneration adds fuel to the oil; thinned oil wears the engine and can feed a runaway.',
    repair: 'Change the oil before any heat work.',
    find: 'Smell the dipstick; if in doubt, have the fuel content of the oil measured.',
    basis: makerMaximumFuelInOil === undefined ? practice : makersLimit,
  });
}

/** Supply of the control units. A reading above 18 V is taken as a 24 V system. */
export function batteryRows(input: PermissionInput, limits: EngineLimits): ConditionRow[] {
  const systems = (value: number | undefined) => (value !== undefined && value > 18 ? 2 : 1);
  return [
    spanRow({
      condition: 'Battery charged',
      kind: voltage,
      unit: 'V',
      value: input.batteryAtRest,
      least: { usual: systems(input.batteryAtRest) * limits.restVoltage, maker: input.makerMinimumRestVoltage },
      reason: 'A weak battery ends the burn halfway, at the most dangerous moment.',
      repair: 'Charge or replace the battery.',
      find: 'Measure the battery at rest.',
    }),
    spanRow({
      condition: 'Charging voltage',
      kind: voltage,
      unit: 'V',
      value: input.batteryRunning,
      least: { usual: systems(input.batteryRunning) * limits.runningVoltage, maker: input.makerMinimumRunningVoltage },
      reason: 'Low voltage ends the burn halfway.',
      repair: 'Repair the charging system.',
      find: 'Measure the voltage with the engine running.',
    }),
    answerRow({
      condition: 'Battery charger connected',
      answer: input.batterySupport,
      wanted: true,
      reason: 'Fans and heaters draw more than an idling engine charges.',
      repair: 'Connect a charger.',
      find: 'Check whether a charger is connected.',
    }),
  ];
}
