import { type IntegrationResult, integrate } from '@wallflow/numerics';
import { AxialBed } from './kernel-axial.js';
import type { FilterBed, SootCombustion } from './kernel-bed.js';
import { type FeedPoint, type FeedSegment, feedSegments } from './kernel-feed.js';
import { conductionIsStiff, integrateConduction } from './kernel-stiff.js';

/** What to simulate. */
export interface AxialRegeneration {
  readonly bed: FilterBed;
  readonly combustion: SootCombustion;
  /** Soot load of every cell in kg/m³, from inlet to outlet. */
  readonly soot: ArrayLike<number>;
  /** Wall temperature of every cell at the start in K. */
  readonly initialTemperature: ArrayLike<number>;
  /** Gas at the inlet over time. */
  readonly feed: readonly FeedPoint[];
  /** Duration in s. */
  readonly duration: number;
  /** Relative accuracy of a step; default 1e-6. */
  readonly relativeTolerance?: number;
}

/** The parts of a run that the results are read from: the model, and a solution for each segment of the feed. */
export interface AxialSolution {
  readonly model: AxialBed;
  readonly segments: readonly FeedSegment[];
  readonly parts: readonly IntegrationResult[];
  /** False when the step limit came first. */
  readonly finished: boolean;
}

/**
 * Integrate the axial model, segment by segment of the feed, so that a jump in it costs no accuracy.
 *
 * The gas follows at once, so the fastest rates left are that of the wall with the channel gas, some 0.5 1/s whatever the
 * number of cells n, and conduction from cell to cell, 4 λ n² / (ρ c L²). While the first is larger (cordierite to about 80
 * cells, silicon carbide to about 40 in a stretch of ten minutes) an explicit method takes it; beyond that conduction is taken
 * implicitly. Either way the work grows as n times the duration.
 */
export function solveAxialRegeneration(run: AxialRegeneration): AxialSolution {
  const model = new AxialBed(run.bed, run.combustion, Float64Array.from(run.soot));
  const parts: IntegrationResult[] = [];
  let state = model.start(run.initialTemperature);
  const relativeTolerance = run.relativeTolerance ?? 1e-6;
  const n = model.cells;
  const absoluteTolerance = new Float64Array(model.size).fill(relativeTolerance);
  // Of a temperature 1 K, and of the heat what warms the filter by 1 K, counts as much as a burn-off exponent of 1.
  absoluteTolerance[2 * n] = relativeTolerance * run.bed.volume * run.bed.bulkDensity * run.bed.specificHeat;
  const segments = feedSegments(run.feed, run.duration);
  for (const segment of segments) {
    model.feed = segment;
    const { from, to } = segment;
    const part = conductionIsStiff(model, to - from)
      ? integrateConduction(model, { from, to, initial: state }, { relativeTolerance, absoluteTolerance, maxSteps: 20_000 })
      : integrate({ derivative: model.derivative, from, to, initial: state }, { relativeTolerance, absoluteTolerance, maxSteps: 20_000 });
    parts.push(part);
    if (part.status !== 'finished') return { model, segments, parts, finished: false };
    state = part.y;
  }
  return { model, segments, parts, finished: true };
}
