import type { SteadyWindow } from '../steady/windows.js';

/** The reading of the pressure sensor with the engine off. */
export interface SensorZero {
  /** In Pa. */
  readonly zero: number;
  /** Standard uncertainty in Pa: scatter within the stretches and between them. */
  readonly uncertainty: number;
  readonly stretches: number;
  /** Last stretch less first, in Pa: a zero that wanders cannot be taken off. */
  readonly drift: number;
  /** Two stretches or more that agree within their own ± confirm each other. */
  readonly confidence: 'confirmed' | 'one stretch' | 'stretches disagree';
}

/** Slower than this the engine stands still, in 1/s. */
const stopped = 50 / 60;

/** The zero from the stretches with the engine off; undefined where there is none. */
export function sensorZero(windows: readonly SteadyWindow[]): SensorZero | undefined {
  const readings = windows.flatMap(({ values }) => {
    const { engineSpeed, pressureDrop } = values;
    return engineSpeed !== undefined && pressureDrop !== undefined && engineSpeed.mean < stopped ? [pressureDrop] : [];
  });
  const [first] = readings;
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const count = readings.length;
  const zero = readings.reduce((sum, { mean }) => sum + mean, 0) / count;
  const between = readings.reduce((sum, { mean }) => sum + (mean - zero) ** 2, 0) / Math.max(1, count - 1);
  const within = readings.reduce((sum, { plusMinus }) => sum + plusMinus ** 2, 0) / count;
  const agrees = between <= 4 * within;
  return {
    zero,
    uncertainty: Math.sqrt((within + between) / count),
    stretches: count,
    drift: last.mean - first.mean,
    confidence: count === 1 ? 'one stretch' : agrees ? 'confirmed' : 'stretches disagree',
  };
}
