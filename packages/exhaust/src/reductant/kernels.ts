export {
  molarMassOfAmmonia,
  molarMassOfNitricOxide,
  molarMassOfNitrogenDioxide,
  molarMassOfUrea,
  standardReductantDensity,
  standardUreaFraction,
} from './constants.js';
export {
  type DosingQuantityInput,
  type DosingQuantityVerdict,
  dosingQuantityVerdict,
  orificeLoss,
  scaleOrificeFlow,
} from './dosing-test/kernel.js';
export {
  type NoxCoefficientEdition,
  type NoxMassFlowInput,
  type NoxMassRatioInput,
  noxMassFlow,
  noxMassRatio,
} from './nox-mass-flow/kernel.js';
export {
  concentrationFromDensity,
  concentrationFromIndex,
  iso22241Limits,
  type QualityVerdict,
  qualityVerdict,
  type ReadingAt20,
} from './reductant-concentration/kernel.js';
export { ammoniaFromReductant, type ReductantMassFlowInput, reductantMassFlow } from './reductant-demand/kernel.js';
export { ammoniaPerNox, reactionShares } from './reductant-demand/stoichiometry.js';
export {
  densitySlope,
  ureaFractionFromDensityAt20,
  ureaSolutionDensity,
  ureaSolutionDensityAt20,
} from './solution/density.js';
export { indexSlope, refractiveIndexAt20, ureaFractionFromIndexAt20 } from './solution/refractive-index.js';
