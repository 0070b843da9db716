/** Absolute pressure from a gauge reading and the ambient pressure, all in Pa. */
export function absoluteFromGauge(gaugePressure: number, ambientPressure: number): number {
  return ambientPressure + gaugePressure;
}

/** Gauge reading from an absolute and the ambient pressure, all in Pa. */
export function gaugeFromAbsolute(absolutePressure: number, ambientPressure: number): number {
  return absolutePressure - ambientPressure;
}
