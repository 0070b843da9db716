import { DenseMatrix, solveLinear } from '@wallflow/numerics';
import type { ChannelName } from '../channels/channels.js';
import { aboutMeans } from './exact-sum.js';
import type { FitSums, HistogramSums, PartialSums } from './partial-sums.js';

/** What the sums say of a channel, in SI. */
export interface ChannelStatistics {
  readonly count: number;
  readonly mean: number;
  /** Sum of squares about the mean. */
  readonly squaresAboutMean: number;
  /** Undefined for a single value. */
  readonly standardDeviation: number | undefined;
  readonly least: number;
  readonly greatest: number;
}

/** What the sums say of a fit. */
export interface FitStatistics {
  readonly name: string;
  readonly count: number;
  /** Intercept first. */
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly residualStandardDeviation: number;
}

/** Results of sums. A channel without a value and a fit that cannot be solved are absent. */
export interface SumsResult {
  readonly parts: number;
  readonly channels: { readonly [K in ChannelName]?: ChannelStatistics };
  readonly fits: readonly FitStatistics[];
}

/** Read the results off the sums. */
export function finishSums(sums: PartialSums): SumsResult {
  const channels: { [K in ChannelName]?: ChannelStatistics } = {};
  for (const [channel, { count, sum, squares, least, greatest }] of Object.entries(sums.channels)) {
    if (count === 0 || least === null || greatest === null) continue;
    const squaresAboutMean = Math.max(0, aboutMeans(count, squares, sum, sum));
    channels[channel as ChannelName] = {
      count,
      mean: (sum.high + sum.low) / count,
      squaresAboutMean,
      standardDeviation: count < 2 ? undefined : Math.sqrt(squaresAboutMean / (count - 1)),
      least,
      greatest,
    };
  }
  return { parts: sums.parts.length, channels, fits: sums.fits.flatMap((fit) => solveFit(fit) ?? []) };
}

function solveFit({ definition, count, sums, products }: FitSums): FitStatistics | undefined {
  const size = sums.length;
  const predictors = size - 1;
  if (count <= size) return undefined;
  const centred: number[][] = Array.from({ length: size }, () => new Array(size).fill(0));
  let at = 0;
  for (let i = 0; i < size; i += 1) {
    for (let j = i; j < size; j += 1) {
      const [product, a, b] = [products[at], sums[i], sums[j]];
      if (product === undefined || a === undefined || b === undefined) return undefined;
      const value = aboutMeans(count, product, a, b);
      (centred[i] as number[])[j] = value;
      (centred[j] as number[])[i] = value;
      at += 1;
    }
  }
  // Scaled to ones on the diagonal, so that predictors of any size are alike.
  const scale = Array.from({ length: predictors }, (_, i) => Math.sqrt(Math.max(0, centred[i]?.[i] ?? 0)));
  if (scale.some((value) => !(value > 0))) return undefined;
  const inverse: number[][] = [];
  for (let column = 0; column < predictors; column += 1) {
    // The solver works in place, so each column has a matrix of its own.
    const matrix = new DenseMatrix(predictors);
    for (let i = 0; i < predictors; i += 1) {
      for (let j = 0; j < predictors; j += 1) matrix.set(i, j, (centred[i]?.[j] ?? 0) / ((scale[i] ?? 1) * (scale[j] ?? 1)));
    }
    const unit = new Float64Array(predictors);
    unit[column] = 1;
    const solved = solveLinear(matrix, unit);
    if (solved.status !== 'solved') return undefined;
    inverse.push(Array.from(solved.solution));
  }
  const right = Array.from({ length: predictors }, (_, i) => (centred[i]?.[predictors] ?? 0) / (scale[i] ?? 1));
  const slopes = inverse.map((row, i) => row.reduce((sum, value, j) => sum + value * (right[j] ?? 0), 0) / (scale[i] ?? 1));
  const means = sums.map(({ high, low }) => (high + low) / count);
  const intercept = slopes.reduce((rest, slope, i) => rest - slope * (means[i] ?? 0), means[predictors] ?? 0);
  const explained = slopes.reduce((sum, slope, i) => sum + slope * (centred[i]?.[predictors] ?? 0), 0);
  const variance = Math.max(0, (centred[predictors]?.[predictors] ?? 0) - explained) / (count - size);
  const slopeErrors = inverse.map((row, i) => Math.sqrt(Math.max(0, variance * (row[i] ?? 0))) / (scale[i] ?? 1));
  let atMeans = 1 / count;
  for (let i = 0; i < predictors; i += 1) {
    for (let j = 0; j < predictors; j += 1)
      atMeans += ((inverse[i]?.[j] ?? 0) * (means[i] ?? 0) * (means[j] ?? 0)) / ((scale[i] ?? 1) * (scale[j] ?? 1));
  }
  const coefficients = [intercept, ...slopes];
  const standardErrors = [Math.sqrt(Math.max(0, variance * atMeans)), ...slopeErrors];
  if (![...coefficients, ...standardErrors].every(Number.isFinite)) return undefined;
  return { name: definition.name, count, coefficients, standardErrors, residualStandardDeviation: Math.sqrt(variance) };
}

/**
 * A quantile from the counts between fixed edges, evenly spread within each; undefined where it lies beyond the edges or
 * nothing was counted.
 */
export function quantileOf({ edges, counts }: HistogramSums, share: number): number | undefined {
  const total = counts.reduce((sum, count) => sum + count, 0);
  const wanted = share * total;
  let passed = counts[0] ?? 0;
  if (total === 0 || wanted < passed) return undefined;
  for (let place = 1; place < edges.length; place += 1) {
    const count = counts[place] ?? 0;
    if (count > 0 && wanted <= passed + count) {
      const low = edges[place - 1] as number;
      return low + (((edges[place] as number) - low) * (wanted - passed)) / count;
    }
    passed += count;
  }
  return undefined;
}
