import { molarGasConstant } from '../../gas/constants.js';
import { type GasDensityInput, gasDensity } from '../../gas/density/kernel.js';

export interface ActualVolumeFlowInput extends GasDensityInput {
  /** Mass flow in kg/s. */
  readonly massFlow: number;
}

/** Volume flow in m³/s that a mass flow has at its own temperature and absolute pressure. */
export function actualVolumeFlow(input: ActualVolumeFlowInput, gasConstant = molarGasConstant): number {
  return input.massFlow / gasDensity(input, gasConstant);
}
