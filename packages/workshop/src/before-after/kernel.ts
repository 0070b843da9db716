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
  | 'no-signal'
  | 'unchanged'
  | 'worse'
  | 'not-comparable'
  | 'unclear';

/**
 * Judge a change of resistance. It counts only when it is larger than twice its uncertainty, and a later drop within twice
 * its own error counts for nothing: a hose that is off reads the same. `cleaned` also needs the later drop to lie among the
 * multiples of the clean filter with twice its uncertainty to the upper end; without that reference nobody knows.
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
  if (reference !== undefined && after.pressureDrop < reference.lowest * reference.cleanDrop) return 'too-low';
  const change = first.resistance - second.resistance;
  const spread = 2 * Math.hypot(first.uncertainty, second.uncertainty);
  if (change < -spread) return 'worse';
  if (change <= spread) return 'unchanged';
  if (reference === undefined) return 'improved-unproven';
  const upperEnd = (second.resistance + 2 * second.uncertainty) * after.viscousFlow;
  return upperEnd <= reference.highest * reference.cleanDrop ? 'cleaned' : 'improved';
}
