export interface SampleEstimate {
  readonly ureaFraction: number;
  /** Uncertainty by the instrument and the shift to 20 °C; the relation is the same for all samples and drops out. */
  readonly uncertainty: number;
}

export type SampleVerdict = 'same' | 'differ' | 'undecided';

/** Whether samples differ by more than they may: compares the highest with the lowest. */
export function compareSamples(
  samples: readonly SampleEstimate[],
  allowed: number,
): { readonly spread: number; readonly uncertainty: number; readonly verdict: SampleVerdict } {
  const sorted = [...samples].sort((a, b) => a.ureaFraction - b.ureaFraction);
  const lowest = sorted[0]!;
  const highest = sorted.at(-1)!;
  const spread = highest.ureaFraction - lowest.ureaFraction;
  const uncertainty = Math.hypot(lowest.uncertainty, highest.uncertainty);
  const verdict = spread - uncertainty > allowed ? 'differ' : spread + uncertainty <= allowed ? 'same' : 'undecided';
  return { spread, uncertainty, verdict };
}
