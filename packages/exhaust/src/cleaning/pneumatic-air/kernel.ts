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

export type CompressorVerdict = 'enough' | 'from-receiver' | 'pauses' | 'too-small' | 'unknown';

/** Free air at the place: flows in m³/s, times in s, volumes in m³. */
export interface AirBudget {
  readonly freeAirFlow: number;
  readonly blowTime: number;
  readonly cleanTime: number;
  /** Of the compressor and in the full receiver; each undefined when not known. */
  readonly delivery: number | undefined;
  readonly stored: number | undefined;
}

/**
 * Whether compressor and receiver last, by balance of the air: without a pause if what the nozzle takes beyond the delivery is
 * in the full receiver; with pauses if delivery over the whole clean and receiver together give all of it. A receiver that is
 * not known is only taken to be there, so that pauses can fill it; it may still make up for what is missing.
 */
export function compressorVerdict({ freeAirFlow, blowTime, cleanTime, delivery, stored }: AirBudget): CompressorVerdict {
  const total = freeAirFlow * blowTime;
  if (delivery !== undefined && delivery >= freeAirFlow) return 'enough';
  if (stored !== undefined && stored >= total - (delivery ?? 0) * blowTime) return 'from-receiver';
  if (delivery === undefined) return 'unknown';
  if (stored === undefined) return delivery * cleanTime >= total ? 'pauses' : 'unknown';
  return stored > 0 && stored + delivery * cleanTime >= total ? 'pauses' : 'too-small';
}
