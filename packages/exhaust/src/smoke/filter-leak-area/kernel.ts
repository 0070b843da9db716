export interface LeakShareInput {
  /** Particle number behind the filter over that before it, at the same state. */
  readonly penetration: number;
  /** Filtration efficiency of the sound filter. */
  readonly soundEfficiency: number;
}

/**
 * Share of the gas that by-passes the filter: what gets through is φ + (1 − φ)(1 − E), so φ = (P − (1 − E))/E.
 * Negative where the filter is tighter than taken.
 */
export function leakShare({ penetration, soundEfficiency }: LeakShareInput): number {
  return (penetration - (1 - soundEfficiency)) / soundEfficiency;
}

export interface LeakAreaInput {
  /** Volume flow through the leak in m³/s at the state of the gas. */
  readonly leakFlow: number;
  /** Pressure drop across the filter in Pa, which also drives the leak. */
  readonly pressureDrop: number;
  /** Gas density in kg/m³. */
  readonly density: number;
  readonly dischargeCoefficient: number;
}

/** Area in m² of a sharp-edged hole that passes this flow: Q = C A sqrt(2 Δp/ρ). */
export function leakArea({ leakFlow, pressureDrop, density, dischargeCoefficient }: LeakAreaInput): number {
  return leakFlow / (dischargeCoefficient * Math.sqrt((2 * pressureDrop) / density));
}
