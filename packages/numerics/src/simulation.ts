/**
 * Monte Carlo propagation of distributions. First-order propagation needs no random numbers and is
 * part of the main entry.
 *
 * @packageDocumentation
 */
export type { DistributionShape } from './uncertainty/distributions.js';
export {
  type SimulatedInput,
  type SimulatedOutput,
  type SimulationOptions,
  type SimulationResult,
  type SimulationStatus,
  simulateUncertainty,
} from './uncertainty/simulate.js';
