/** How an engine's soot is stated. */
export type SootRateGiven = 'per-time' | 'per-distance' | 'per-energy' | 'concentration';

/** Soot flow in kg/s from a specific emission in SI and what multiplies it: speed in m/s, power in W, or gas flow in m³/s. */
export function sootFlowFrom(specificEmission: number, multiplier: number): number {
  return specificEmission * multiplier;
}

/** Soot that stays in the filter, in kg/s, and what passes. */
export function capturedSoot(sootFlow: number, capture: number) {
  return { captured: sootFlow * capture, passed: sootFlow * (1 - capture) };
}
