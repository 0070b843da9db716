import { wallTemperature } from './kernel-results.js';
import type { AxialSolution } from './kernel-run.js';

/** Where and when something is largest. */
export interface Extreme {
  readonly value: number;
  /** Time in s. */
  readonly time: number;
  /** Cell, counted from 0 at the inlet. */
  readonly cell: number;
}

/** A temperature counts as a new peak when it is higher by this share: on a plateau the first place and time stand. */
const plateau = 1e-5;

/** Highest wall temperature over time and length, sharpened between the steps; and the highest of every cell. */
export function peakTemperature(solution: AxialSolution): Extreme & { readonly ofCell: Float64Array } {
  const { model, parts } = solution;
  const ofCell = new Float64Array(model.cells).fill(-Infinity);
  const state = new Float64Array(model.size);
  let best = { value: -Infinity, time: 0, cell: 0 };
  let around = { part: parts[0]!, from: 0, to: 0 };
  for (const part of parts) {
    for (const [index, time] of part.times.entries()) {
      part.at(time, state);
      for (let cell = 0; cell < model.cells; cell += 1) {
        const value = wallTemperature(model, state, cell);
        if (value > ofCell[cell]!) ofCell[cell] = value;
        if (value <= best.value * (1 + plateau)) continue;
        best = { value, time, cell };
        around = { part, from: part.times[index - 1] ?? time, to: part.times[index + 1] ?? time };
      }
    }
  }
  const at = (time: number) => wallTemperature(model, around.part.at(time, state), best.cell);
  const time = largest(at, around.from, around.to);
  const sharpened = at(time);
  if (sharpened > best.value) best = { value: sharpened, time, cell: best.cell };
  ofCell[best.cell] = Math.max(ofCell[best.cell]!, best.value);
  return { ...best, value: ofCell.reduce((a, b) => Math.max(a, b)), ofCell };
}

/** Place of the largest value of a function with one hump, by golden section. */
function largest(f: (x: number) => number, from: number, to: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  for (let i = 0; i < 40 && b > a; i += 1) {
    const [left, right] = [b - ratio * (b - a), a + ratio * (b - a)];
    if (f(left) < f(right)) a = left;
    else b = right;
  }
  return (a + b) / 2;
}

/** A rise in K/s below which the step control's own wiggle would be read. */
const noRise = 0.05;

/** Fastest rise of a wall temperature in K/s, at the ends of the steps; 0 where nothing rises by more than 0.05 K/s. */
export function fastestRise(solution: AxialSolution): Extreme {
  const { model, parts, segments } = solution;
  const state = new Float64Array(model.size);
  const slope = new Float64Array(model.size);
  let best = { value: 0, time: 0, cell: 0 };
  for (const [index, part] of parts.entries()) {
    model.feed = segments[index];
    for (const time of part.times) {
      model.derivative(time, part.at(time, state), slope);
      for (let cell = 0; cell < model.cells; cell += 1) {
        const burnt = model.risePerLoad * model.soot0[cell]! * Math.exp(-state[cell]!) * slope[cell]!;
        const value = slope[model.cells + cell]! + burnt;
        if (value > Math.max(best.value, noRise)) best = { value, time, cell };
      }
    }
  }
  return best;
}
