/**
 * Draws from what is known after observations: unknowns that are standard normal before them, any model of what would be
 * observed, errors with heavy tails.
 *
 * @packageDocumentation
 */
export type { SamplingProblem } from './sampling/fit-mode.js';
export { type SamplingOptions, sampleByFit, type WeightedDraws } from './sampling/fitted-importance.js';
export { effectiveSampleSize, logSumExp, weightedQuantiles, weightsFromLogs } from './sampling/weights.js';
export { makeRandomSource, type RandomSource } from './uncertainty/distributions.js';
