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
