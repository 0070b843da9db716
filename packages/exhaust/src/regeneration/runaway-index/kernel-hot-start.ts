import type { SootCombustion } from '../simulation/kernel-bed.js';
import { peakTemperature } from '../simulation/kernel-extremes.js';
import { solveAxialRegeneration } from '../simulation/kernel-run.js';
import { steadyFeed } from '../simulation/kernel-scenario.js';

/** A filter of one temperature that starts as hot as the gas before it, in SI. */
export interface HotStart {
  readonly volume: number;
  readonly bulkDensity: number;
  readonly specificHeat: number;
  readonly combustion: SootCombustion;
  readonly sootLoad: number;
  readonly temperature: number;
  readonly oxygen: number;
  readonly massFlow: number;
}

/** Longer than it takes to burn what burns fast enough to heat a filter, s. */
const duration = 3600;

/** Highest mean temperature in K that a filter reaches when its soot burns down from a hot start; undefined when not found. */
export function hotStartPeak(start: HotStart): number | undefined {
  const { volume, bulkDensity, specificHeat, combustion, sootLoad, temperature, oxygen, massFlow } = start;
  const solution = solveAxialRegeneration({
    // One cell: the gas leaves as warm as the wall, and length, conduction and transfer have no say.
    bed: { volume, length: 1, bulkDensity, specificHeat, axialConductivity: 0, filtrationAreaPerVolume: 1, heatTransferCoefficient: 1 },
    combustion,
    soot: [sootLoad],
    initialTemperature: [temperature],
    feed: steadyFeed({ massFlow, temperature, oxygen, nitrogenDioxide: 0 }),
    duration,
    relativeTolerance: 1e-5,
  });
  return solution.finished ? peakTemperature(solution).value : undefined;
}
