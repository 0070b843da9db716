export { type Answer, answerOf, chanceText } from './answer.js';
export { type FilterCause, filterCauses } from './causes.js';
export {
  type Bearing,
  type CauseEstimate,
  type EstimateIssue,
  type EstimateOptions,
  estimateFilter,
  type FilterEstimate,
  leastEffectiveSize,
  type Range,
  restrictedFrom,
} from './estimate.js';
export type { BackPressureReading, EstimateInput, SpeedReading, Trials, Vehicle } from './evidence-input.js';
export { nextTests, type TestOutcome, type TestValue } from './next-test.js';
export { type LineProblem, type LineResult, readLine } from './one-line.js';
export { greatestRiskOfHeat, type PlanOption, type PlanOptionId, planOf } from './plan.js';
export { type Prior, type PriorMark, type Priors, priorsOf } from './priors.js';
export { estimateReductant, type ReductantCause, type ReductantEstimate, type ReductantInput, reductantCauses } from './reductant.js';
export { type DiscreteTrial, discreteTrials } from './trials.js';
