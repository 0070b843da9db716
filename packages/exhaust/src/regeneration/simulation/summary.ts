import { fastestRise, peakTemperature } from './kernel-extremes.js';
import { regenerationStateAt, sootLeft, timeToBurn, wallTemperature } from './kernel-results.js';
import type { AxialRegeneration, AxialSolution } from './kernel-run.js';
import type { RunInput } from './prepare.js';

const rows = 61;

/** Everything that both simulations report, in SI. */
export function summarise(run: AxialRegeneration, solution: AxialSolution, input: RunInput & { readonly targetShare: number }) {
  const { model, parts, segments } = solution;
  const peak = peakTemperature(solution);
  const end = parts.at(-1)?.y ?? new Float64Array(model.size);
  const left = sootLeft(model, end);
  const walls = Array.from({ length: model.cells }, (_, cell) => wallTemperature(model, end, cell));
  const adiabaticRise = model.risePerLoad * input.sootLoad;
  const hottestFeed = Math.max(
    input.startTemperature,
    ...segments.flatMap(({ from, to }) => [feedTemperature(solution, from), feedTemperature(solution, to)]),
  );
  const adiabaticPeak = hottestFeed + adiabaticRise;
  const aboveAdiabatic = peak.value - adiabaticPeak;
  return {
    peak,
    values: {
      honeycombDensity: run.bed.bulkDensity,
      honeycombHeatCapacity: run.bed.specificHeat,
      heatOfCombustion: run.combustion.heatOfCombustion,
      adiabaticRise,
      hottestFeed,
      gasHeat: end[2 * model.cells] ?? 0,
      endTemperature: walls.reduce((sum, temperature) => sum + temperature, 0) / model.cells,
      sootHeat: run.combustion.heatOfCombustion * input.sootLoad * (1 - left) * run.bed.volume,
      peakTemperature: peak.value,
      peakTime: peak.time,
      adiabaticPeak,
      aboveAdiabatic,
      fastestRise: fastestRise(solution).value,
      burnOff: input.sootLoad > 0 ? 1 - left : 0,
      timeToTarget: input.sootLoad > 0 ? timeToBurn(solution, input.targetShare) : undefined,
      finalLoad: input.sootLoad * left,
      series: series(solution, input),
    },
  };
}

/** Inlet temperature at a time; at a jump, of the segment that ends there. */
function feedTemperature({ segments }: AxialSolution, time: number): number {
  const segment = segments.find((part) => time <= part.to) ?? segments.at(-1);
  segment?.at(Math.max(time, segment.from));
  return segment?.temperature ?? Number.NaN;
}

function series(solution: AxialSolution, input: RunInput) {
  const { model, segments } = solution;
  const state = new Float64Array(model.size);
  const slope = new Float64Array(model.size);
  return Array.from({ length: rows }, (_, index) => {
    const time = Math.min(input.duration, (input.duration * index) / (rows - 1));
    regenerationStateAt(solution, time, state);
    model.feed = segments.find((segment) => time <= segment.to) ?? segments.at(-1);
    model.derivative(time, state, slope);
    const left = sootLeft(model, state);
    return {
      time,
      inlet: feedTemperature(solution, time),
      outlet: model.gas.outletTemperature,
      hottest: Math.max(...model.temperature),
      sootLoad: input.sootLoad * left,
      burnt: input.sootLoad > 0 ? 1 - left : 0,
    };
  });
}

/** Wall temperatures at the peak, the highest of every place, and the soot left there. */
export function profile(run: AxialRegeneration, solution: AxialSolution, peak: ReturnType<typeof peakTemperature>) {
  const { model, parts } = solution;
  const atPeak = regenerationStateAt(solution, peak.time);
  const end = parts.at(-1)?.y ?? atPeak;
  return Array.from({ length: model.cells }, (_, cell) => ({
    position: ((cell + 0.5) / model.cells) * run.bed.length,
    highest: peak.ofCell[cell] ?? Number.NaN,
    atPeak: wallTemperature(model, atPeak, cell),
    atEnd: wallTemperature(model, end, cell),
    sootLoad: (model.soot0[cell] ?? 0) * Math.exp(-(end[cell] ?? 0)),
  }));
}
