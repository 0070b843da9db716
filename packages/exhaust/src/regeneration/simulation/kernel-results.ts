import { findRoot } from '@wallflow/numerics';
import type { AxialBed } from './kernel-axial.js';
import type { AxialSolution } from './kernel-run.js';

/** Wall temperature of a cell in K from a state of the axial model. */
export function wallTemperature(model: AxialBed, state: ArrayLike<number>, cell: number): number {
  return state[model.cells + cell]! - model.risePerLoad * model.soot0[cell]! * Math.exp(-state[cell]!);
}

/** Soot that is left, as a share of the start, from a state of the axial model; zero without soot. */
export function sootLeft(model: AxialBed, state: ArrayLike<number>): number {
  let start = 0;
  let left = 0;
  for (let i = 0; i < model.cells; i += 1) {
    start += model.soot0[i]!;
    left += model.soot0[i]! * Math.exp(-state[i]!);
  }
  return start > 0 ? left / start : 0;
}

/** State at a time of the run in s. */
export function regenerationStateAt(solution: AxialSolution, time: number, out?: Float64Array): Float64Array {
  const index = solution.segments.findIndex((segment) => time <= segment.to);
  const part = solution.parts[index < 0 ? solution.parts.length - 1 : index]!;
  return part.at(time, out);
}

/** Time in s at which a share of the soot is burnt; undefined when the run ends before. */
export function timeToBurn(solution: AxialSolution, share: number): number | undefined {
  const { model, parts } = solution;
  const state = new Float64Array(model.size);
  const excess = (part: (typeof parts)[number]) => (time: number) => 1 - sootLeft(model, part.at(time, state)) - share;
  for (const part of parts) {
    const over = excess(part);
    const index = part.times.findIndex((time) => over(time) >= 0);
    if (index === 0) return part.times[0];
    if (index > 0) return findRoot(over, part.times[index - 1]!, part.times[index]!, { relativeTolerance: 1e-12 }).root;
  }
  return undefined;
}
