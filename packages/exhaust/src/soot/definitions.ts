import type { AnyCalculation } from '@wallflow/calculation';
import { ashConsistencyCalculation } from './ash-consistency/definition.js';
import { ashDistributionCalculation } from './ash-distribution/definition.js';
import { ashRateCalculation } from './ash-rate/definition.js';
import { ashRodDepthCalculation } from './ash-rod-depth/definition.js';
import { sootBalanceCalculation } from './balance/definition.js';
import { balanceTemperatureCalculation } from './balance-temperature/definition.js';
import { sootDrivingPatternCalculation } from './driving-pattern/definition.js';
import { sootEngineOutCalculation } from './engine-out/definition.js';
import { sootLoadCalculation } from './load/definition.js';
import { nextRegenerationCalculation } from './next-regeneration/definition.js';
import { sootOxidationRateCalculation } from './oxidation/definition.js';

/** All of them, in the order of use. */
export const sootCalculations: readonly AnyCalculation[] = [
  sootLoadCalculation,
  sootEngineOutCalculation,
  sootOxidationRateCalculation,
  sootBalanceCalculation,
  balanceTemperatureCalculation,
  sootDrivingPatternCalculation,
  nextRegenerationCalculation,
  ashRateCalculation,
  ashDistributionCalculation,
  ashRodDepthCalculation,
  ashConsistencyCalculation,
];

export {
  ashConsistencyCalculation,
  ashDistributionCalculation,
  ashRateCalculation,
  ashRodDepthCalculation,
  balanceTemperatureCalculation,
  nextRegenerationCalculation,
  sootBalanceCalculation,
  sootDrivingPatternCalculation,
  sootEngineOutCalculation,
  sootLoadCalculation,
  sootOxidationRateCalculation,
};
