import type { FilterEstimate } from '../estimate/index.js';
import { filterVolume } from './estimate-of.js';
import { type Attempt, evaluate, inputsFor, si } from './evaluation.js';
import type { JobFile } from './job-file.js';
import type { MeasuredSide } from './measured-side.js';

/** Soot load that the estimate gives, with the way up to its 95 % end as the uncertainty that counts. */
function estimatedLoad(estimate: FilterEstimate | undefined): Readonly<Record<string, unknown>> {
  if (estimate === undefined) return {};
  const { p50, p95 } = estimate.sootLoad;
  return {
    measuredSootLoad: si(p50, 'kg/m3'),
    measuredSootLoadUncertainty: si(Math.min(20, Math.max(leastSootUncertainty, p95 - p50)), 'kg/m3'),
  };
}

/** Least uncertainty of a soot load that was not weighed, kg/m³ (common practice, no source). */
const leastSootUncertainty = 1;

/** Soot in grams becomes a load by the volume of the filter; without grams the volume is not asked for. */
function volumeFor(typed: Readonly<Record<string, unknown>>, job: JobFile): Readonly<Record<string, unknown>> {
  if (typed.sootMass === undefined) return {};
  const volume = filterVolume(job);
  // Grams in a filter of unknown size are no load; a typical size would make one of them that nobody knows.
  return volume === undefined ? { sootMass: undefined } : { filterVolume: si(volume, 'm3') };
}

/** May the filter be regenerated now: what was typed beside what the readings give, each for itself. */
export function permissionOf(
  side: MeasuredSide,
  typed: Readonly<Record<string, unknown>>,
  job: JobFile,
  estimate: FilterEstimate | undefined,
): Attempt {
  const { filterVolume: _, ...filter } = job.filter;
  const coolant = side.deciding.steady.mean.coolantTemperature;
  return evaluate('regeneration-permission', {
    ...(coolant === undefined ? {} : { coolantTemperature: si(coolant, 'K') }),
    ...typed,
    ...inputsFor('regeneration-permission', filter),
    ...volumeFor(typed, job),
    ...estimatedLoad(estimate),
    ...(side.zero?.mean.pressureDrop === undefined ? {} : { pressureSensorZero: si(side.zero.mean.pressureDrop, 'Pa') }),
  });
}
