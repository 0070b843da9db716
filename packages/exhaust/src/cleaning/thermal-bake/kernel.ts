export type BakeStage = 'start' | 'ramp' | 'hold' | 'cool';

export interface BakePoint {
  /** End of the stage: s from the start, and K. */
  readonly time: number;
  readonly temperature: number;
  readonly stage: BakeStage;
}

export interface BakeInput {
  /** K. */
  readonly startTemperature: number;
  readonly holdTemperature: number;
  readonly unloadTemperature: number;
  /** K/s, both above zero. */
  readonly rampRate: number;
  readonly coolRate: number;
  /** s. */
  readonly holdTime: number;
}

/** Corners of the schedule ramp, hold, cool. */
export function bakeSchedule(input: BakeInput): readonly BakePoint[] {
  const { startTemperature, holdTemperature, unloadTemperature } = input;
  const ramp = (holdTemperature - startTemperature) / input.rampRate;
  const hold = ramp + input.holdTime;
  const cool = hold + (holdTemperature - unloadTemperature) / input.coolRate;
  return [
    { time: 0, temperature: startTemperature, stage: 'start' },
    { time: ramp, temperature: holdTemperature, stage: 'ramp' },
    { time: hold, temperature: holdTemperature, stage: 'hold' },
    { time: cool, temperature: unloadTemperature, stage: 'cool' },
  ];
}

/** Oxygen in kg that burns soot, taken as carbon, to carbon dioxide: one mole of O₂ for each mole of C. */
export function oxygenForSoot(sootMass: number, oxygenMolarMass: number, carbonMolarMass: number): number {
  return (sootMass * oxygenMolarMass) / carbonMolarMass;
}

/** Temperature in K if all the soot burnt at once and its heat stayed in the part. */
export function burnOffPeak(holdTemperature: number, sootHeat: number, partMass: number, specificHeat: number): number {
  return holdTemperature + sootHeat / (partMass * specificHeat);
}

export type BakeVerdict = 'within' | 'too-little-air' | 'air-unknown' | 'remove-first';

export interface BakeVerdictInput {
  /** K: of the body if all soot burnt at once, and the most it may see. */
  readonly peakTemperature: number;
  readonly highestTemperature: number;
  /** s: least time in which the fresh air burns the soot, undefined when the air is not known; and the hold. */
  readonly shortestBurn: number | undefined;
  readonly holdTime: number;
}

/** Heat first, because it breaks the body; then whether the hold is long enough for the air; unknown air never passes. */
export function bakeVerdict({ peakTemperature, highestTemperature, shortestBurn, holdTime }: BakeVerdictInput): BakeVerdict {
  if (peakTemperature > highestTemperature) return 'remove-first';
  if (shortestBurn === undefined) return 'air-unknown';
  return shortestBurn > holdTime ? 'too-little-air' : 'within';
}
