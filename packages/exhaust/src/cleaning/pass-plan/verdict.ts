export type PassVerdict = 'clean' | 'another-pass' | 'stop' | 'take-off' | 'worse' | 'unclear';

export interface PassVerdictInput {
  readonly firstDrop: number;
  readonly lastDrop: number;
  /** Standard uncertainty of each drop, Pa. */
  readonly uncertainty: number;
  /** Drop of a clean filter at the same flow, Pa; undefined when nobody knows it. */
  readonly goal: number | undefined;
  /** Fitted plateau and its standard uncertainty, Pa; undefined without a fit. */
  readonly plateau: { readonly drop: number; readonly uncertainty: number } | undefined;
  /** Share by which the next pass should lower the drop; by the fit, or as the last pass did. */
  readonly nextGain: number;
  /** Gain below which a pass is not worth it. */
  readonly leastGain: number;
}

/**
 * Whether to go on. A reading counts as above or below another when it differs by twice the standard uncertainty of the
 * difference; the goal has to be met by the reading itself.
 */
export function passVerdict(input: PassVerdictInput): PassVerdict {
  const { firstDrop, lastDrop, uncertainty, goal, plateau, nextGain, leastGain } = input;
  const noise = 2 * Math.SQRT2 * uncertainty;
  if (lastDrop > firstDrop + noise) return 'worse';
  if (goal !== undefined && lastDrop <= goal) return 'clean';
  if (goal !== undefined && plateau !== undefined && plateau.drop - 2 * plateau.uncertainty > goal) return 'take-off';
  if (nextGain >= leastGain) {
    // A fall that the readings cannot tell from noise is no reason to pour in more.
    return firstDrop - lastDrop > noise ? 'another-pass' : 'unclear';
  }
  return goal === undefined ? 'stop' : 'take-off';
}
