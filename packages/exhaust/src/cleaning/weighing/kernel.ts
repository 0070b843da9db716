import { gasDensity } from '../../gas/density/kernel.js';

/** Dry mass in kg from a mass weighed with an uptake of moisture, as a share of the dry mass. */
export function dryMass(weighed: number, moisture: number): number {
  return weighed / (1 + moisture);
}

export interface AirLiftInput {
  /** Gas in the channels and pores, m³. */
  readonly gasVolume: number;
  /** Of the filter, K. */
  readonly temperature: number;
  /** Of the air round it: K, Pa and kg/mol. */
  readonly ambientTemperature: number;
  readonly ambientPressure: number;
  readonly molarMass: number;
}

/**
 * By how much a scale reads a hot filter too light, kg: the hot air inside weighs less than the cold air that it displaces.
 * None at the temperature of the air round it.
 */
export function airLift(input: AirLiftInput, gasConstant?: number): number {
  const { gasVolume, molarMass, ambientPressure: pressure } = input;
  const densityAt = (temperature: number) => gasDensity({ pressure, temperature, molarMass }, gasConstant);
  return gasVolume * (densityAt(input.ambientTemperature) - densityAt(input.temperature));
}

/** Standard uncertainty in kg of a dry mass, from that of the weighing and of the moisture it is corrected for. */
export function dryMassUncertainty(weighed: number, moisture: number, scale: number, ofMoisture: number): number {
  return Math.hypot(scale / (1 + moisture), (weighed * ofMoisture) / (1 + moisture) ** 2);
}

/** A mass with its standard uncertainty, kg. */
export interface WeighedMass {
  readonly mass: number;
  readonly uncertainty: number;
}

export interface RecoveryInput {
  /** Dry, before and after cleaning and when new. */
  readonly before: WeighedMass;
  readonly after: WeighedMass;
  readonly whenNew: WeighedMass;
}

export interface Recovery {
  /** Share of what was in the filter that came out, with its standard uncertainty. */
  readonly share: number;
  readonly uncertainty: number;
  /** Mass after less mass when new; below zero for a filter that is lighter than it can be. */
  readonly residue: WeighedMass;
}

/** Recovery (before − after)/(before − new) with its standard uncertainty, JCGM 100:2008 Eq. 10, weighings independent. */
export function massRecovery({ before, after, whenNew }: RecoveryInput): Recovery {
  const load = before.mass - whenNew.mass;
  const left = after.mass - whenNew.mass;
  const parts = [(left / load ** 2) * before.uncertainty, after.uncertainty / load, ((load - left) / load ** 2) * whenNew.uncertainty];
  const residue = { mass: left, uncertainty: Math.hypot(after.uncertainty, whenNew.uncertainty) };
  return { share: 1 - left / load, uncertainty: Math.hypot(...parts), residue };
}
