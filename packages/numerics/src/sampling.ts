/**
 * Draws from what is known after observations: unknowns that are standard normal before them, any model of what would be
 * observed, errors with heavy tails.
 *
 * @packageDocumentation
 */
export type { SamplingProblem } from './sampling/fit-mode.js';
export { type SamplingOptions, sampleByFit, type WeightedDraws } from './sampling/fitted-importance.js';
export { mutualInformation } from './sampling/information.js';
export { makeRandomSource, type RandomSource } from './sampling/random-source.js';
export { effectiveSampleSize, logSumExp, weightedQuantiles, weightsFromLogs } from './sampling/weights.js';
