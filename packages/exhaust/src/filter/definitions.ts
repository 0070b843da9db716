import type { AnyCalculation } from '@wallflow/calculation';
import { cleanPressureDropCalculation } from './clean-pressure-drop/definition.js';
import { compressiblePressureDropCalculation } from './compressible-pressure-drop/definition.js';
import { deepBedPressureDropCalculation } from './deep-bed-pressure-drop/definition.js';
import { filterGeometryCalculation } from './filter-geometry/definition.js';
import { flowResistanceCalculation } from './flow-resistance/definition.js';
import { loadedPressureDropCalculation } from './loaded-pressure-drop/definition.js';
import { oneDimensionalPressureDropCalculation } from './one-dimensional-pressure-drop/definition.js';
import { slipCorrectionCalculation } from './slip-correction/definition.js';
import { sootMassFromPressureDropCalculation } from './soot-mass-from-pressure-drop/definition.js';
import { wallPermeabilityCalculation } from './wall-permeability-from-clean-drop/definition.js';

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
];
