import { climbAlong, type Evaluator, type Mode } from './fit-mode.js';
import { drawGaussian, gaussianOfPrecision, logDensity } from './gaussian.js';
import type { PivotOrder } from './pivots.js';
import type { RandomSource } from './random-source.js';
import { logSumExp } from './weights.js';

/** One draw with its pivots fitted to the rest. */
export interface Conditional {
  readonly point: Float64Array;
  /** ln of prior times likelihood. */
  readonly logPosterior: number;
  /** ln of the density that the pivots were drawn with. */
  readonly logDensity: number;
}

/** Around the fit: most draws as wide as the readings leave it, some wider. */
const widths = [
  { heat: 1.3, share: 0.85 },
  { heat: 10, share: 0.15 },
] as const;

/**
 * A sampler of the pivots, given the rest of an ordered point: fitted from each of the starts, drawn from the mixture of
 * all fits, so that no mode is lost.
 */
export function conditionalSampler(evaluator: Evaluator, { indices, pivots }: PivotOrder) {
  const along = indices.slice(0, pivots);
  const drawn = new Float64Array(pivots);
  return (ordered: Float64Array, starts: readonly Float64Array[], source: RandomSource): Conditional | undefined => {
    const point = new Float64Array(indices.length);
    indices.forEach((original, i) => {
      point[original] = ordered[i]!;
    });
    if (pivots === 0) return { point, logPosterior: posterior(evaluator, point), logDensity: 0 };
    const fits: Mode[] = [];
    for (const start of starts) {
      along.forEach((original, i) => {
        point[original] = start[i]!;
      });
      const fit = climbAlong(evaluator, point, along, 2);
      if (fit !== undefined && !fits.some((other) => along.every((j) => Math.abs(other.point[j]! - fit.point[j]!) < sameFit)))
        fits.push(fit);
    }
    const best = Math.max(...fits.map(({ logPosterior }) => logPosterior));
    const weights = fits.map(({ logPosterior }) => Math.max(0.05, Math.exp(logPosterior - best)));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const parts = fits.flatMap((fit, index) =>
      widths.flatMap(({ heat, share }) => {
        const precision = fit.information.map((value) => value / heat);
        for (let i = 0; i < pivots; i += 1) precision[i * (pivots + 1)]! += 1;
        const gaussian = gaussianOfPrecision(
          Float64Array.from(along, (original) => fit.point[original]!),
          precision,
        );
        return gaussian === undefined ? [] : [{ gaussian, share: (share * weights[index]!) / total }];
      }),
    );
    const chosen = pick(parts, source.uniform());
    if (chosen === undefined) return undefined;
    drawGaussian(chosen.gaussian, source, drawn);
    along.forEach((original, i) => {
      point[original] = drawn[i]!;
    });
    const all = parts.reduce((sum, { share }) => sum + share, 0);
    return {
      point,
      logPosterior: posterior(evaluator, point),
      logDensity: logSumExp(parts.map(({ gaussian, share }) => Math.log(share / all) + logDensity(gaussian, drawn))),
    };
  };
}

const sameFit = 0.2;

function pick<Part extends { readonly share: number }>(parts: readonly Part[], uniform: number): Part | undefined {
  let left = uniform * parts.reduce((sum, { share }) => sum + share, 0);
  for (const part of parts) {
    left -= part.share;
    if (left <= 0) return part;
  }
  return parts.at(-1);
}

function posterior(evaluator: Evaluator, point: Float64Array): number {
  let squares = 0;
  for (const value of point) squares += value * value;
  const logLikelihood = evaluator.logLikelihood(point);
  // What is impossible is not asked further.
  return logLikelihood === -Infinity ? logLikelihood : logLikelihood + (evaluator.problem.weigh?.(point) ?? 0) - squares / 2;
}
