import type { AnyCalculation } from '@wallflow/calculation';
import { cleanPressureDropCalculation } from './clean-pressure-drop/definition.js';
import { compressiblePressureDropCalculation } from './compressible-pressure-drop/definition.js';
import { deepBedPressureDropCalculation } from './deep-bed-pressure-drop/definition.js';
import { dropAtReferenceStateCalculation } from './drop-at-reference-state/definition.js';
import { exhaustDropSharesCalculation } from './exhaust-drop-shares/definition.js';
import { filterGeometryCalculation } from './filter-geometry/definition.js';
import { flowBenchDropCalculation } from './flow-bench-drop/definition.js';
import { flowResistanceCalculation } from './flow-resistance/definition.js';
import { hoseSwapTestCalculation } from './hose-swap-test/definition.js';
import { loadedPressureDropCalculation } from './loaded-pressure-drop/definition.js';
import { oneDimensionalPressureDropCalculation } from './one-dimensional-pressure-drop/definition.js';
import { sensorLagTestCalculation } from './sensor-lag-test/definition.js';
import { sensorZeroCheckCalculation } from './sensor-zero-check/definition.js';
import { slipCorrectionCalculation } from './slip-correction/definition.js';
import { sootMassFromPressureDropCalculation } from './soot-mass-from-pressure-drop/definition.js';
import { viscousInertialFitCalculation } from './viscous-inertial-fit/definition.js';
import { wallPermeabilityCalculation } from './wall-permeability-from-clean-drop/definition.js';

/** All of them, in the order of use. */
export const filterCalculations: readonly AnyCalculation[] = [
  filterGeometryCalculation,
  flowResistanceCalculation,
  cleanPressureDropCalculation,
  loadedPressureDropCalculation,
  deepBedPressureDropCalculation,
  oneDimensionalPressureDropCalculation,
  compressiblePressureDropCalculation,
  slipCorrectionCalculation,
  sootMassFromPressureDropCalculation,
  wallPermeabilityCalculation,
  viscousInertialFitCalculation,
  dropAtReferenceStateCalculation,
  flowBenchDropCalculation,
  exhaustDropSharesCalculation,
  sensorZeroCheckCalculation,
  hoseSwapTestCalculation,
  sensorLagTestCalculation,
];

export {
  cleanPressureDropCalculation,
  compressiblePressureDropCalculation,
  deepBedPressureDropCalculation,
  dropAtReferenceStateCalculation,
  exhaustDropSharesCalculation,
  filterGeometryCalculation,
  flowBenchDropCalculation,
  flowResistanceCalculation,
  hoseSwapTestCalculation,
  loadedPressureDropCalculation,
  oneDimensionalPressureDropCalculation,
  sensorLagTestCalculation,
  sensorZeroCheckCalculation,
  slipCorrectionCalculation,
  sootMassFromPressureDropCalculation,
  viscousInertialFitCalculation,
  wallPermeabilityCalculation,
};
