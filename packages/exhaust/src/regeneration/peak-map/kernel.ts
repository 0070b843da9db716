import { peakTemperature } from '../simulation/kernel-extremes.js';
import { type AxialRegeneration, solveAxialRegeneration } from '../simulation/kernel-run.js';

/** Evenly spaced values from the first to the last. */
export function evenlySpacedValues(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => (index === count - 1 ? to : from + ((to - from) * index) / (count - 1)));
}

/** Peak temperature in K of every pair of load and flow, loads outermost; undefined when a run did not finish. */
export function peakTemperatureMap(
  loads: readonly number[],
  flows: readonly number[],
  runOf: (load: number, flow: number) => AxialRegeneration,
): { readonly load: number; readonly flow: number; readonly peak: number | undefined }[] {
  return loads.flatMap((load) =>
    flows.map((flow) => {
      const solution = solveAxialRegeneration(runOf(load, flow));
      return { load, flow, peak: solution.finished ? peakTemperature(solution).value : undefined };
    }),
  );
}
