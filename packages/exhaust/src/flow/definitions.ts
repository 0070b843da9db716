import type { AnyCalculation } from '@wallflow/calculation';
import { exhaustFlowCarbonBalanceCalculation } from './carbon-balance/definition.js';
import { exhaustMassFlowCalculation } from './exhaust-mass-flow/definition.js';
import { exhaustVolumeFlowCalculation } from './exhaust-volume-flow/definition.js';
import { pipeFlowCalculation } from './pipe-flow/definition.js';
import { residenceTimeCalculation } from './residence-time/definition.js';
import { spaceVelocityCalculation } from './space-velocity/definition.js';
import { airMassFlowSpeedDensityCalculation } from './speed-density/definition.js';
import { standardVolumeFlowCalculation } from './standard-volume-flow/definition.js';

/** All of them, in the order of use. */
export const flowCalculations: readonly AnyCalculation[] = [
  airMassFlowSpeedDensityCalculation,
  exhaustMassFlowCalculation,
  exhaustVolumeFlowCalculation,
  exhaustFlowCarbonBalanceCalculation,
  standardVolumeFlowCalculation,
  pipeFlowCalculation,
  spaceVelocityCalculation,
  residenceTimeCalculation,
];

export {
  airMassFlowSpeedDensityCalculation,
  exhaustFlowCarbonBalanceCalculation,
  exhaustMassFlowCalculation,
  exhaustVolumeFlowCalculation,
  pipeFlowCalculation,
  residenceTimeCalculation,
  spaceVelocityCalculation,
  standardVolumeFlowCalculation,
};
