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

/** Flow resistance in 1/m³ and its standard uncertainty. */
export function resistanceOf(reading: ComparedReading): { readonly resistance: number; readonly uncertainty: number } {
  const resistance = reading.pressureDrop / reading.viscousFlow;
  return {
    resistance,
    uncertainty: Math.hypot(reading.dropUncertainty / reading.viscousFlow, reading.flowUncertainty * resistance),
  };
}

export type ChangeVerdict = 'cleaned' | 'improved' | 'unchanged' | 'worse' | 'not-comparable' | 'unclear';

/**
 * Judge a change of resistance. It counts only when it is larger than twice its uncertainty; `cleaned` also needs the
 * resistance to fall to `acceptedShare` of what it was, at the upper end of its uncertainty.
 */
export function changeVerdict(
  before: ComparedReading,
  after: ComparedReading,
  acceptedShare: number,
  widestFlowRatio: number,
): ChangeVerdict {
  const flowRatio = after.viscousFlow / before.viscousFlow;
  if (flowRatio > widestFlowRatio || flowRatio < 1 / widestFlowRatio) return 'not-comparable';
  const first = resistanceOf(before);
  const second = resistanceOf(after);
  const change = first.resistance - second.resistance;
  const spread = 2 * Math.hypot(first.uncertainty, second.uncertainty);
  if (first.resistance <= 2 * first.uncertainty) return 'unclear';
  if (change < -spread) return 'worse';
  if (change <= spread) return 'unchanged';
  return second.resistance + 2 * second.uncertainty <= acceptedShare * first.resistance ? 'cleaned' : 'improved';
}
