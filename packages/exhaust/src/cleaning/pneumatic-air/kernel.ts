export interface NozzleInput {
  /** Throat area, m². */
  readonly area: number;
  readonly dischargeCoefficient: number;
  /** Absolute, before and behind the nozzle, Pa. */
  readonly pressure: number;
  readonly backPressure: number;
  /** Of the air before the nozzle, K. */
  readonly temperature: number;
}

export interface NozzleGas {
  /** J/(mol·K), kg/mol. */
  readonly gasConstant: number;
  readonly molarMass: number;
  readonly heatCapacityRatio: number;
}

/** Pressure ratio above which a nozzle is choked: ((γ+1)/2)^(γ/(γ−1)), 1.893 for air. */
export function criticalPressureRatio(heatCapacityRatio: number): number {
  return ((heatCapacityRatio + 1) / 2) ** (heatCapacityRatio / (heatCapacityRatio - 1));
}

/** Mass flow in kg/s of an ideal gas through a nozzle, isentropic with a discharge coefficient, choked or not. */
export function nozzleMassFlow(input: NozzleInput, gas: NozzleGas): number {
  const { heatCapacityRatio: gamma } = gas;
  const ratio = Math.min(criticalPressureRatio(gamma), input.pressure / input.backPressure);
  const expansion = ratio ** (-2 / gamma) - ratio ** (-(gamma + 1) / gamma);
  const specificGasConstant = gas.gasConstant / gas.molarMass;
  const head = ((2 * gamma) / (gamma - 1)) * (Math.max(0, expansion) / (specificGasConstant * input.temperature));
  return input.dischargeCoefficient * input.area * input.pressure * Math.sqrt(head);
}
