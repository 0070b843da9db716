/** One side of a comparison. */
export interface ComparedReading {
  /** Drop less zero, Pa. */
  readonly pressureDrop: number;
  /** Viscosity times actual volume flow, Pa·m³. */
  readonly viscousFlow: number;
  /** Standard uncertainty of the drop, Pa. */
  readonly dropUncertainty: number;
  /** Relative standard uncertainty of the flow. */
  readonly flowUncertainty: number;
}

/** The clean filter at the flow and temperature of the later reading, with the multiples of it that count as clean. */
export interface CleanReference {
  /** Drop of the clean filter, Pa. */
  readonly cleanDrop: number;
  readonly lowest: number;
  readonly highest: number;
  /** Clean for certain up to this multiple, however far off the clean drop is. */
  readonly surelyClean: number;
  /** Share of the resistance before at which a clean counts, where the clean drop alone cannot tell; undefined where it can. */
  readonly cleanShare?: number;
}

/** Flow resistance in 1/m³ and its standard uncertainty. */
export function resistanceOf(reading: ComparedReading): { readonly resistance: number; readonly uncertainty: number } {
  const resistance = reading.pressureDrop / reading.viscousFlow;
  return {
    resistance,
    uncertainty: Math.hypot(reading.dropUncertainty / reading.viscousFlow, reading.flowUncertainty * resistance),
  };
}

export type ChangeVerdict =
  | 'cleaned'
  | 'improved'
  | 'improved-unproven'
  | 'too-low'
  | 'before-too-low'
  | 'no-signal'
  | 'unchanged'
  | 'worse'
  | 'not-comparable'
  | 'unclear';

/**
 * Judge a change of resistance. It counts only when it is larger than twice its uncertainty, and a later drop within twice
 * its own error counts for nothing: a hose that is off reads the same. A drop before that is lower than a clean filter gives makes
 * the comparison void: a hose leaked then. `cleaned` needs the later drop, with twice its uncertainty, to be clean for certain; or,
 * where the clean drop is only calculated, to lie among its possible multiples and to be down to the share of practice.
 */
export function changeVerdict(
  before: ComparedReading,
  after: ComparedReading,
  widestFlowRatio: number,
  reference?: CleanReference,
): ChangeVerdict {
  if (after.pressureDrop < -2 * after.dropUncertainty) return 'no-signal';
  const flowRatio = after.viscousFlow / before.viscousFlow;
  if (flowRatio > widestFlowRatio || flowRatio < 1 / widestFlowRatio) return 'not-comparable';
  const first = resistanceOf(before);
  const second = resistanceOf(after);
  if (first.resistance <= 2 * first.uncertainty) return 'unclear';
  if (after.pressureDrop <= 2 * after.dropUncertainty) return 'no-signal';
  if (reference !== undefined) {
    // The clean filter at the earlier flow: its drop goes with viscosity times flow.
    const cleanBefore = (reference.cleanDrop * before.viscousFlow) / after.viscousFlow;
    if (before.pressureDrop < reference.lowest * cleanBefore) return 'before-too-low';
  }
  if (reference !== undefined && after.pressureDrop < reference.lowest * reference.cleanDrop) return 'too-low';
  const change = first.resistance - second.resistance;
  const spread = 2 * Math.hypot(first.uncertainty, second.uncertainty);
  if (change < -spread) return 'worse';
  if (change <= spread) return 'unchanged';
  if (reference === undefined) return 'improved-unproven';
  const upperEnd = (second.resistance + 2 * second.uncertainty) * after.viscousFlow;
  if (upperEnd <= reference.surelyClean * reference.cleanDrop) return 'cleaned';
  if (reference.cleanShare === undefined || upperEnd > reference.highest * reference.cleanDrop) return 'improved';
  const share = second.resistance / first.resistance;
  const shareUncertainty = Math.hypot(second.uncertainty, share * first.uncertainty) / first.resistance;
  return share + 2 * shareUncertainty <= reference.cleanShare ? 'cleaned' : 'improved';
}
