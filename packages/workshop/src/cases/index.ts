export { burningDamages, type HeatedFilter } from './burning-damages.js';
export {
  causeOrder,
  type EvaluationRow,
  evaluateCase,
  evaluationVersion,
  heatLimit,
  type Mark,
  withTrials,
} from './evaluate-case.js';
export { type GeneratedCase, generateCase } from './generate-case.js';
export { type EvaluationSummary, type ReliabilityBin, ranking, summarise } from './summarise.js';
