import { molarGasConstant, molarMassOfDryAir } from '../constants.js';

export interface MeanFreePathInput {
  /** Dynamic viscosity in Pa·s. */
  readonly viscosity: number;
  /** Absolute pressure in Pa. */
  readonly pressure: number;
  /** Temperature in K. */
  readonly temperature: number;
}

/** Mean free path of gas molecules in m: (μ/p) √(π R T / (2 M)), Konstandopoulos 2000 App. II. */
export function meanFreePath(
  { viscosity, pressure, temperature }: MeanFreePathInput,
  molarMass = molarMassOfDryAir,
  gasConstant = molarGasConstant,
): number {
  return (viscosity / pressure) * Math.sqrt((Math.PI * gasConstant * temperature) / (2 * molarMass));
}
