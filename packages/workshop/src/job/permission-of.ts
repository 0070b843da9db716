import { type Attempt, evaluate, inputsFor, numberOf, si, succeeded, uncertaintyOf } from './evaluation.js';
import type { JobFile } from './job-file.js';
import type { MeasuredSide } from './measured-side.js';

/** Least uncertainty of a soot load by pressure drop, kg/m³: what goes into the wall first is not in the range of the estimate. */
const leastSootUncertainty = 1;

/** Soot load that the readings give, with the whole way up to the most that the drop allows as its uncertainty. */
function measuredLoad({ soot }: MeasuredSide): Readonly<Record<string, unknown>> {
  if (!succeeded(soot)) return {};
  const { mostSootLoad } = soot.result.outputs as Readonly<Record<string, unknown>>;
  // Without an upper end nothing is known that a permission could rest on.
  if (typeof mostSootLoad !== 'number') return {};
  const load = numberOf(soot, 'sootLoad');
  const most = mostSootLoad + 2 * (uncertaintyOf(soot, 'mostSootLoad') ?? 0);
  return {
    measuredSootLoad: si(load, 'kg/m3'),
    measuredSootLoadUncertainty: si(Math.min(20, Math.max(leastSootUncertainty, most - load)), 'kg/m3'),
  };
}

/** May the filter be regenerated now: what was typed beside what the readings give, each for itself. */
export function permissionOf(side: MeasuredSide, typed: Readonly<Record<string, unknown>>, job: JobFile): Attempt {
  const coolant = side.deciding.steady.mean.coolantTemperature;
  return evaluate('regeneration-permission', {
    ...(coolant === undefined ? {} : { coolantTemperature: si(coolant, 'K') }),
    ...typed,
    ...inputsFor('regeneration-permission', job.filter),
    ...measuredLoad(side),
    ...(side.zero?.mean.pressureDrop === undefined ? {} : { pressureSensorZero: si(side.zero.mean.pressureDrop, 'Pa') }),
  });
}
