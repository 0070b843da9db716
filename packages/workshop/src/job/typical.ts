import { kinds } from '@wallflow/units';
import { priorsOf } from '../estimate/index.js';
import { si } from './evaluation.js';
import { givenValue } from './given.js';
import type { JobFile } from './job-file.js';

/** Pressure of the standard atmosphere at sea level, Pa. */
const seaLevel = 101_325;

/** A typical value that stands in for one that was not entered. */
export interface TypicalValue {
  readonly of: 'ambient' | 'engine' | 'filter';
  readonly text: string;
}

interface Filled {
  readonly job: JobFile;
  readonly assumed: readonly TypicalValue[];
}

const squareInch = 0.0254 ** 2;

/**
 * The job with typical values where nobody knows better: the air at sea level, and a filter as engines of this size have it.
 * The calculations that compare with a clean filter need them; the estimate keeps its own spread instead.
 */
export function withTypical(job: JobFile): Filled {
  const assumed: TypicalValue[] = [];
  const assume = (of: TypicalValue['of'], text: string) => assumed.push({ of, text });
  const { ambient, filter } = job;
  const pressure = ambient.pressure ?? si(seaLevel, 'Pa');
  if (ambient.pressure === undefined) assume('ambient', 'Ambient pressure of sea level, 1013 hPa: it was not entered.');
  const displacement = givenValue(kinds.volume, job.engine.displacement);
  if (displacement === undefined) return { job: { ...job, ambient: { ...ambient, pressure } }, assumed };
  const typical = priorsOf({ displacement });
  const diameter = givenValue(kinds.length, filter.filterDiameter);
  // What was entered wrongly is for its own check to say, never for a typical value to hide.
  const sized = filter.filterVolume !== undefined || filter.filterDiameter !== undefined;
  const volume = givenValue(kinds.volume, filter.filterVolume) ?? typical.volume.median;
  const added: Record<string, unknown> = {};
  if (!sized) {
    added.filterVolume = si(volume, 'm3');
    assume('filter', `A filter of ${(volume * 1000).toPrecision(2)} L, typical for this engine: its size was not entered.`);
  }
  if (filter.filterLength === undefined) {
    // As long as it is wide, if nothing else is known.
    const across = diameter ?? Math.cbrt((4 * volume) / Math.PI);
    added.filterLength = si(across, 'm');
    assume('filter', `A filter that is ${Math.round(across * 1000)} mm long: its length was not entered.`);
  }
  if (filter.cellDensity === undefined) {
    added.cellDensity = si(typical.cellDensity.median, '1/m2');
    assume('filter', `${Math.round(typical.cellDensity.median * squareInch)} cells per square inch, typical: they were not entered.`);
  }
  if (filter.wallThickness === undefined) {
    added.wallThickness = si(typical.wallThickness.median, 'm');
    assume('filter', `Walls of ${(typical.wallThickness.median * 1000).toPrecision(2)} mm, typical: they were not entered.`);
  }
  return { job: { ...job, ambient: { ...ambient, pressure }, filter: { ...filter, ...added } }, assumed };
}

/** Air in the manifold of a warm engine without load, °C (common practice, no source). */
const warmIntake = 40;

/** Without load no engine makes boost: the manifold has the pressure of the day, and is warm. What was entered replaces it. */
export function typicalCharge({ ambient }: JobFile) {
  return { manifoldPressure: ambient.pressure, manifoldTemperature: si(warmIntake, '°C') };
}

/** What `typicalCharge` stood in for, where a reading came without its air mass. */
export function assumedCharge({ engine }: JobFile, withoutAir: boolean): readonly TypicalValue[] {
  if (!withoutAir || (engine.manifoldPressure !== undefined && engine.manifoldTemperature !== undefined)) return [];
  return [
    {
      of: 'engine',
      text: `Air in the manifold without boost and at ${warmIntake} °C, where a reading has no air mass: it was not entered.`,
    },
  ];
}
