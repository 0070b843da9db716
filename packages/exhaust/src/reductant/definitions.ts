import type { AnyCalculation } from '@wallflow/calculation';
import { dosingTestCalculation } from './dosing-test/definition.js';
import { noxMassFlowCalculation } from './nox-mass-flow/definition.js';
import { reductantConcentrationCalculation } from './reductant-concentration/definition.js';
import { reductantDemandCalculation } from './reductant-demand/definition.js';

export const reductantCalculations: readonly AnyCalculation[] = [
  noxMassFlowCalculation,
  reductantDemandCalculation,
  reductantConcentrationCalculation,
  dosingTestCalculation,
];
