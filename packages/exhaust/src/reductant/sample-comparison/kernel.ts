export interface SampleEstimate {
  readonly ureaFraction: number;
  /** Uncertainty by the instrument and the shift to 20 °C; the relation is the same for all samples and drops out. */
  readonly uncertainty: number;
}

export type SampleVerdict = 'same' | 'differ' | 'undecided';

export interface SampleComparison {
  readonly strongest: SampleEstimate;
  readonly weakest: SampleEstimate;
  readonly spread: number;
  readonly uncertainty: number;
  readonly verdict: SampleVerdict;
}

/** Whether samples differ by more than they may: compares the strongest with the weakest. */
export function compareSamples(samples: readonly SampleEstimate[], allowed: number): SampleComparison {
  const sorted = [...samples].sort((a, b) => a.ureaFraction - b.ureaFraction);
  const weakest = sorted[0]!;
  const strongest = sorted.at(-1)!;
  const spread = strongest.ureaFraction - weakest.ureaFraction;
  const uncertainty = Math.hypot(weakest.uncertainty, strongest.uncertainty);
  const verdict = spread - uncertainty > allowed ? 'differ' : spread + uncertainty <= allowed ? 'same' : 'undecided';
  return { strongest, weakest, spread, uncertainty, verdict };
}
