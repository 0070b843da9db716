import { fitExponentialApproach } from '@wallflow/numerics/fit';

/** One reading, all at the same flow and temperature. */
export interface PassReading {
  /** Passes done before the reading; 0 before the first. */
  readonly pass: number;
  /** Pa. */
  readonly drop: number;
}

export interface PassFit {
  /** Drop that further passes approach, Pa, with its standard uncertainty. */
  readonly plateau: number;
  readonly plateauUncertainty: number;
  /** Passes over which the distance from the plateau falls by the factor e. */
  readonly decayPasses: number;
  /** Drop after a number of passes and its standard uncertainty, Pa. */
  readonly at: (pass: number) => { readonly drop: number; readonly uncertainty: number };
}

/** More than a double keeps of a reading in one unit or another, so that a unit never decides how a fit ends. */
const digits = 12;

/**
 * Fit p(n) = p∞ + a exp(−n/τ) to drops that fall from pass to pass, each with the same known standard uncertainty.
 * Undefined when the readings do not bend, or bend the wrong way, so that there is no plateau to be read from them.
 */
export function fitPasses(readings: readonly PassReading[], uncertainty: number): PassFit | undefined {
  const first = readings[0]?.drop;
  if (first === undefined || readings.length < 3) return undefined;
  const rounded = (value: number) => Number((value / first).toPrecision(digits));
  const fit = fitExponentialApproach(
    readings.map(({ pass }) => pass),
    readings.map(({ drop }) => rounded(drop)),
    { standardUncertainties: readings.map(() => rounded(uncertainty)) },
  );
  const { level, amplitude, decayLength, covariance } = fit;
  if (fit.status !== 'converged' || level === undefined || amplitude === undefined || decayLength === undefined) return undefined;
  if (!(level >= 0 && amplitude > 0 && decayLength > 0) || covariance === undefined) return undefined;
  const at = (pass: number) => {
    const left = Math.exp(-pass / decayLength);
    const slopes = [1, left, (amplitude * left * pass) / decayLength ** 2];
    const variance = slopes.reduce((sum, a, i) => sum + slopes.reduce((part, b, j) => part + a * b * (covariance[i]?.[j] ?? 0), 0), 0);
    return { drop: first * (level + amplitude * left), uncertainty: first * Math.sqrt(Math.max(0, variance)) };
  };
  return {
    plateau: first * level,
    plateauUncertainty: first * Math.sqrt(Math.max(0, covariance[0]?.[0] ?? 0)),
    decayPasses: decayLength,
    at,
  };
}
