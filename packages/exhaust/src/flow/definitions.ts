import type { AnyCalculation } from '@wallflow/calculation';
import { exhaustMassFlowCalculation } from './exhaust-mass-flow/definition.js';
import { exhaustVolumeFlowCalculation } from './exhaust-volume-flow/definition.js';
import { airMassFlowSpeedDensityCalculation } from './speed-density/definition.js';

export const flowCalculations: readonly AnyCalculation[] = [
  airMassFlowSpeedDensityCalculation,
  exhaustMassFlowCalculation,
  exhaustVolumeFlowCalculation,
];
