import { say } from '@wallflow/calculation';
import { differentialPressure, fraction, type Kind, type KindName, length, massConcentration, temperature, voltage } from '@wallflow/units';
import type { EngineLimits } from './engine-rows.js';
import type { PermissionInput } from './inputs.js';
import { sootBandsOf } from './kernel-load-band.js';
import { makerStanding } from './kernel-maker-limit.js';
import { amountText, type ConditionRow, decidedRow } from './row.js';

type MakerKey = Extract<keyof PermissionInput, `maker${string}`>;

/** Limits of practice and outer bounds in SI, as the definition lists them. */
export interface MakerBounds extends EngineLimits {
  readonly leastShare: number;
  readonly fuelLevelLeast: number;
  readonly clearanceLeast: number;
  readonly outerSensorZero: number;
  readonly outerCoolantLeast: number;
  readonly outerCoolantMost: number;
  readonly outerOilLeast: number;
  readonly outerOilMost: number;
  readonly outerFuelInOil: number;
  readonly outerFuelLevel: number;
  readonly outerRestVoltage: number;
  readonly outerRunningVoltage: number;
  readonly outerClearance: number;
}

interface Entry {
  readonly key: MakerKey;
  readonly name: string;
  readonly side: 'least' | 'most';
  readonly usual: number;
  readonly outer?: number;
  /** Why nothing looser can be right. */
  readonly why: string;
  readonly show: (si: number) => string;
}

export interface BelievedMakers {
  /** The input without the limits that cannot be right: there practice counts. */
  readonly input: PermissionInput;
  /** A refusal for each of those. */
  readonly rows: readonly ConditionRow[];
  /** Limits that are looser than practice, with what to tell. */
  readonly looser: readonly { readonly key: MakerKey; readonly text: string }[];
}

/** Sort the maker's limits into those that count, those to be warned of, and those that cannot be right. */
export function believedMakers(given: PermissionInput, bounds: MakerBounds, attempts: Attempts, outerLoad: number): BelievedMakers {
  const input = { ...given };
  const rows: ConditionRow[] = [];
  const looser: { key: MakerKey; text: string }[] = [];
  for (const entry of entriesOf(given, bounds, attempts, outerLoad)) {
    const maker = given[entry.key];
    if (maker === undefined) continue;
    const standing = makerStanding({ ...entry, maker });
    if (standing === 'looser') looser.push({ key: entry.key, text: looserText(entry, maker) });
    if (standing !== 'beyond') continue;
    delete input[entry.key];
    rows.push(beyondRow(entry, maker));
  }
  return { input, rows, looser };
}

export interface Attempts {
  readonly usual: number;
  readonly outer: number;
}

function looserText({ name, usual, show }: Entry, maker: number): string {
  return say`${name}, ${show(maker)}, is looser than common practice, ${show(usual)}: make sure that it is the limit for a forced regeneration of this vehicle, and in this unit.`;
}

function beyondRow({ name, side, outer, usual, why, show }: Entry, maker: number): ConditionRow {
  return decidedRow({
    condition: say`${name} is believable`,
    result: 'refuse',
    measured: show(maker),
    limit: side === 'most' ? say`at most ${show(outer ?? usual)}` : say`at least ${show(outer ?? usual)}`,
    reason: why,
    repair: "Look it up again in the maker's documents, with its unit; leave it blank if you are not sure.",
    find: '',
    basis: 'outer bound: no maker goes beyond it',
  });
}

const shown =
  <K extends KindName>(kind: Kind<K>, unit: Parameters<Kind<K>['in']>[1]) =>
  (si: number) =>
    amountText(kind, si, unit, 3);

function entriesOf(input: PermissionInput, bounds: MakerBounds, attempts: Attempts, outerLoad: number): Entry[] {
  const { service } = sootBandsOf(input.substrate);
  const [load, degrees, volts] = [shown(massConcentration, 'g/L'), shown(temperature, 'degC'), shown(voltage, 'V')];
  const share = shown(fraction, '%');
  const systems = (reading: number | undefined, maker: number | undefined) => ((reading ?? maker ?? 0) > 18 ? 2 : 1);
  const rest = systems(input.batteryAtRest, input.makerMinimumRestVoltage);
  const running = systems(input.batteryRunning, input.makerMinimumRunningVoltage);
  return [
    {
      key: 'makerMaximumSootLoad',
      name: "The maker's highest soot load",
      side: 'most',
      usual: service,
      outer: outerLoad,
      why: 'Burning that much from 600 °C damages the filter, even with a quarter of the heat carried away. Check the unit: grams are not grams per litre.',
      show: load,
    },
    {
      key: 'makerMinimumSootLoad',
      name: "The maker's lowest soot load",
      side: 'least',
      usual: bounds.leastShare * service,
      why: '',
      show: load,
    },
    {
      key: 'makerMaximumAttempts',
      name: "The maker's number of attempts",
      side: 'most',
      usual: attempts.usual,
      outer: attempts.outer,
      why: 'Soot and fuel build up with each attempt that does not complete; after three the diagnosis is wrong.',
      show: String,
    },
    {
      key: 'makerMaximumSensorZero',
      name: "The maker's largest zero error",
      side: 'most',
      usual: bounds.sensorZero,
      outer: bounds.outerSensorZero,
      why: 'A clean filter has 2 to 4 mbar at idle: an error this large is bigger than what is to be measured.',
      show: shown(differentialPressure, 'mbar'),
    },
    {
      key: 'makerMinimumCoolantTemperature',
      name: "The maker's lowest coolant temperature",
      side: 'least',
      usual: bounds.coolantLeast,
      outer: bounds.outerCoolantLeast,
      why: 'Below it the thermostat is shut and the engine still warming up: fuel slips through unburnt.',
      show: degrees,
    },
    {
      key: 'makerMaximumCoolantTemperature',
      name: "The maker's highest coolant temperature",
      side: 'most',
      usual: bounds.coolantMost,
      outer: bounds.outerCoolantMost,
      why: 'Water boils at 120 °C under the usual 1 bar of the cap: stationary, with only the fan to cool, keep at least 10 K below.',
      show: degrees,
    },
    {
      key: 'makerMinimumOilTemperature',
      name: "The maker's lowest oil temperature",
      side: 'least',
      usual: bounds.oilLeast,
      outer: bounds.outerOilLeast,
      why: 'Colder oil takes up the fuel that is injected late.',
      show: degrees,
    },
    {
      key: 'makerMaximumOilTemperature',
      name: "The maker's highest oil temperature",
      side: 'most',
      usual: bounds.oilMost,
      outer: bounds.outerOilMost,
      why: 'Hotter engine oil ages fast and lubricates badly.',
      show: degrees,
    },
    {
      key: 'makerMaximumFuelInOil',
      name: "The maker's highest fuel content of the oil",
      side: 'most',
      usual: bounds.fuelInOilMost,
      outer: bounds.outerFuelInOil,
      why: 'The oil is changed at 7 % at the latest; more can feed an engine that runs away.',
      show: share,
    },
    {
      key: 'makerMinimumFuelLevel',
      name: "The maker's lowest fuel level",
      side: 'least',
      usual: bounds.fuelLevelLeast,
      outer: bounds.outerFuelLevel,
      why: 'Below it the reserve lamp is on, and the pump may run dry in the middle of the burn.',
      show: share,
    },
    {
      key: 'makerMinimumRestVoltage',
      name: "The maker's lowest battery voltage at rest",
      side: 'least',
      usual: rest * bounds.restVoltage,
      outer: rest * bounds.outerRestVoltage,
      why: 'Below it a lead battery is nearly empty.',
      show: volts,
    },
    {
      key: 'makerMinimumRunningVoltage',
      name: "The maker's lowest battery voltage with the engine running",
      side: 'least',
      usual: running * bounds.runningVoltage,
      outer: running * bounds.outerRunningVoltage,
      why: 'A full battery has more by itself: below it nothing charges.',
      show: volts,
    },
    {
      key: 'makerMinimumClearance',
      name: "The maker's least distance to anything that burns",
      side: 'least',
      usual: bounds.clearanceLeast,
      outer: bounds.outerClearance,
      why: 'At 1 m the jet from a 100 mm tail pipe at 600 °C is still nearly 200 °C; closer, it lights dry grass and paper.',
      show: shown(length, 'm'),
    },
  ];
}
