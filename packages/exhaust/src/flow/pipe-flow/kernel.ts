import { molarGasConstant, molarMassOfDryAir } from '../../gas/constants.js';

/** Ratio of specific heats of raw exhaust, 40 CFR 1065.640(c)(5)(ii). */
export const rawExhaustHeatCapacityRatio = 1.385;

/** Area of a round pipe in m² from its inside diameter in m. */
export function pipeArea(diameter: number): number {
  return (Math.PI * diameter ** 2) / 4;
}

export interface PipeVelocityInput {
  /** kg/s. */
  readonly massFlow: number;
  /** kg/m³. */
  readonly density: number;
  /** Inside diameter in m. */
  readonly diameter: number;
}

/** Mean velocity in a round pipe in m/s. */
export function pipeVelocity({ massFlow, density, diameter }: PipeVelocityInput): number {
  return massFlow / (density * pipeArea(diameter));
}

/** Reynolds number of a round pipe from mass flow in kg/s, inside diameter in m and viscosity in Pa·s, 40 CFR 1065.640(d)(1). */
export function pipeReynoldsNumber(massFlow: number, diameter: number, viscosity: number): number {
  return (4 * massFlow) / (Math.PI * diameter * viscosity);
}

/** Speed of sound of an ideal gas in m/s; temperature in K, molar mass in kg/mol. */
export function soundSpeed(
  temperature: number,
  heatCapacityRatio: number,
  molarMass = molarMassOfDryAir,
  gasConstant = molarGasConstant,
): number {
  return Math.sqrt((heatCapacityRatio * gasConstant * temperature) / molarMass);
}
