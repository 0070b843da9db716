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

export interface RecoveryInput {
  /** Dry masses before and after cleaning and of the filter when new, kg. */
  readonly before: number;
  readonly after: number;
  readonly whenNew: number;
  /** Standard uncertainty of each weighing, kg. */
  readonly uncertainty: number;
}

export interface Recovery {
  /** Share of what was in the filter that came out. */
  readonly share: number;
  /** Its standard uncertainty. */
  readonly uncertainty: number;
}

/** Recovery (before − after)/(before − new) with its standard uncertainty, JCGM 100:2008 Eq. 10, weighings independent. */
export function massRecovery({ before, after, whenNew, uncertainty }: RecoveryInput): Recovery {
  const load = before - whenNew;
  const slopes = [(after - whenNew) / load ** 2, -1 / load, (before - after) / load ** 2];
  return { share: (before - after) / load, uncertainty: uncertainty * Math.hypot(...slopes) };
}

export type RecoveryVerdict = 'clean' | 'not-clean' | 'unclear' | 'unknown';

/** Whether a recovery reaches what is asked for, beyond twice its uncertainty either way; unknown never passes. */
export function recoveryVerdict(recovery: Recovery | undefined, needed: number): RecoveryVerdict {
  if (recovery === undefined) return 'unknown';
  if (recovery.share - 2 * recovery.uncertainty >= needed) return 'clean';
  return recovery.share + 2 * recovery.uncertainty < needed ? 'not-clean' : 'unclear';
}
