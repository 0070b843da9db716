import type { PassGain, UncertainDrop } from './fit.js';

export type PassVerdict = 'clean' | 'another-pass' | 'stop' | 'between' | 'take-off' | 'rising' | 'worse' | 'too-open' | 'unclear';

/** Drops at the same flow, Pa. */
export interface CleanLimits {
  /** What a clean filter reads, the most that is accepted, what calls for taking it off, and the least that is believed. */
  readonly clean: number;
  readonly accepted: number;
  readonly takeOff: number;
  readonly lowest: number;
}

export interface PassVerdictInput {
  readonly firstDrop: number;
  /** Lowest reading before the last one. */
  readonly lowestBefore: number;
  readonly lastDrop: number;
  /** Standard uncertainty of each reading, Pa. */
  readonly uncertainty: number;
  /** Drop after the last pass: by the fit, or the last reading itself. */
  readonly now: UncertainDrop;
  /** Undefined when nobody knows what a clean filter reads. */
  readonly limits: CleanLimits | undefined;
  /** Undefined without a fit. */
  readonly plateau: UncertainDrop | undefined;
  /** Share by which the next pass should lower the drop; by the fit, or as the last pass did. */
  readonly nextGain: PassGain;
  /** Gain below which a pass is not worth it. */
  readonly leastGain: number;
}

const above = ({ drop, uncertainty }: UncertainDrop, limit: number) => drop - 2 * uncertainty > limit;

/**
 * Whether to go on. A reading counts as above or below another when it differs by twice the standard uncertainty of the
 * difference, and every other answer holds by twice the standard uncertainty of what it rests on; what does not is unclear.
 */
export function passVerdict(input: PassVerdictInput): PassVerdict {
  const { firstDrop, lowestBefore, lastDrop, uncertainty, now, limits, plateau, nextGain, leastGain } = input;
  const noise = 2 * Math.SQRT2 * uncertainty;
  if (lastDrop > firstDrop + noise) return 'worse';
  if (lastDrop > lowestBefore + noise) return 'rising';
  if (limits !== undefined) {
    if (lastDrop + 2 * uncertainty < limits.lowest) return 'too-open';
    if (lastDrop <= limits.clean || now.drop + 2 * now.uncertainty <= limits.accepted) return 'clean';
    if (plateau !== undefined && above(plateau, limits.takeOff)) return 'take-off';
  }
  // A fall that the readings cannot tell from noise is no reason to pour in more.
  if (nextGain.share >= leastGain) return firstDrop - lastDrop > noise ? 'another-pass' : 'unclear';
  if (nextGain.share + 2 * nextGain.uncertainty >= leastGain) return 'unclear';
  if (limits === undefined) return 'stop';
  return above(now, limits.takeOff) ? 'take-off' : 'between';
}
