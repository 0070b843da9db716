import { sootBalance } from '../balance/kernel.js';

/** A stretch of driving at steady conditions. */
export interface DrivingStretch {
  /** Duration in s. */
  readonly duration: number;
  /** Speed in m/s. */
  readonly speed: number;
  /** Engine-out soot, in kg/s. */
  readonly sootFlow: number;
  /** First-order rate constant of burning in 1/s. */
  readonly rate: number;
}

/** State at the end of a stretch. */
export interface DrivenState {
  /** Time in s and distance in m since the start. */
  readonly time: number;
  readonly distance: number;
  /** Soot in kg. */
  readonly mass: number;
}

/** Soot after each stretch, the start included, when the pattern is driven once. Exact: every stretch has a closed form. */
export function drivePattern(pattern: readonly DrivingStretch[], start: DrivenState): DrivenState[] {
  const states = [start];
  let { time, distance, mass } = start;
  for (const stretch of pattern) {
    mass = sootBalance({ initialMass: mass, ...stretch }).finalMass;
    time += stretch.duration;
    distance += stretch.duration * stretch.speed;
    states.push({ time, distance, mass });
  }
  return states;
}

/** One pass of a pattern as a straight line: mass after = keep · mass before + add; keep − 1 is given apart, for small rates. */
export function patternMap(pattern: readonly DrivingStretch[]) {
  const exponent = pattern.reduce((sum, { rate, duration }) => sum + rate * duration, 0);
  const empty = drivePattern(pattern, { time: 0, distance: 0, mass: 0 }).at(-1);
  return {
    keep: Math.exp(-exponent),
    loss: -Math.expm1(-exponent),
    add: empty?.mass ?? 0,
    duration: empty?.time ?? 0,
    distance: empty?.distance ?? 0,
  };
}

/** Soot before each pass once the pattern has been driven for ever, in kg; undefined when nothing burns. */
export function settledSootMass(pattern: readonly DrivingStretch[]): number | undefined {
  const { loss, add } = patternMap(pattern);
  const settled = add / loss;
  return loss > 0 && Number.isFinite(settled) ? settled : undefined;
}

/** Largest soot during a pass that starts with a mass in kg. */
export function peakMass(pattern: readonly DrivingStretch[], mass: number): number {
  return Math.max(...drivePattern(pattern, { time: 0, distance: 0, mass }).map((state) => state.mass));
}
