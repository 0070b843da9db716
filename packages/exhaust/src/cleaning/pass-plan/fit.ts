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
  /** What passes can take away in all, Pa: the curve before the first pass less the plateau. */
  readonly amplitude: number;
  /** Passes over which the distance from the plateau falls by the factor e. */
  readonly decayPasses: number;
  /** Drop after a number of passes and its standard uncertainty, Pa. */
  readonly at: (pass: number) => UncertainDrop;
  /** Share by which the pass after a number of passes lowers the drop, with its standard uncertainty. */
  readonly gainAfter: (pass: number) => PassGain;
}

/** Pa. */
export interface UncertainDrop {
  readonly drop: number;
  readonly uncertainty: number;
}

export interface PassGain {
  readonly share: number;
  readonly uncertainty: number;
}

/** Gain per pass between two readings, as if each pass in between took the same share, JCGM 100:2008 Eq. 10. */
export function gainBetween(before: PassReading, after: PassReading, uncertainty: number): PassGain {
  const power = 1 / (after.pass - before.pass);
  const left = (after.drop / before.drop) ** power;
  return { share: 1 - left, uncertainty: left * power * Math.hypot(uncertainty / before.drop, uncertainty / after.drop) };
}

/** A curve that misses a reading by more than this many standard uncertainties does not describe the readings. */
const farthest = 3;

/** More than a double keeps of a reading in one unit or another, so that a unit never decides how a fit ends. */
const digits = 12;

/**
 * Fit p(n) = p∞ + a exp(−n/τ) to drops that fall from pass to pass, each with the same known standard uncertainty.
 * Undefined when the readings do not bend, bend the wrong way, or lie off the curve by more than three times their
 * uncertainty, so that there is no plateau to be read from them.
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
  const varianceOf = (slopes: readonly number[]) =>
    slopes.reduce((sum, a, i) => sum + slopes.reduce((part, b, j) => part + a * b * (covariance[i]?.[j] ?? 0), 0), 0);
  const standard = (slopes: readonly number[]) => Math.sqrt(Math.max(0, varianceOf(slopes)));
  const curve = (pass: number) => {
    const left = Math.exp(-pass / decayLength);
    return { value: level + amplitude * left, slopes: [1, left, (amplitude * left * pass) / decayLength ** 2] };
  };
  if (readings.some(({ pass, drop }) => Math.abs(drop - first * curve(pass).value) > farthest * uncertainty)) return undefined;
  return {
    plateau: first * level,
    plateauUncertainty: first * standard([1, 0, 0]),
    amplitude: first * amplitude,
    decayPasses: decayLength,
    at: (pass) => ({ drop: first * curve(pass).value, uncertainty: first * standard(curve(pass).slopes) }),
    gainAfter: (pass) => {
      const [before, after] = [curve(pass), curve(pass + 1)];
      const left = after.value / before.value;
      const slopes = after.slopes.map((slope, index) => (slope - left * (before.slopes[index] ?? 0)) / before.value);
      return { share: 1 - left, uncertainty: standard(slopes) };
    },
  };
}
