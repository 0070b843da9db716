export type ParticleVerdict = 'below' | 'above' | 'undecided';

/** Where a mean concentration stands to a limit when the counter is known to ± a share of its reading. */
export function particleVerdict(mean: number, relativeUncertainty: number, limit: number): ParticleVerdict {
  if (mean * (1 + relativeUncertainty) <= limit) return 'below';
  return mean * (1 - relativeUncertainty) > limit ? 'above' : 'undecided';
}

/** Particles per second from a concentration in 1/m³ and a volume flow in m³/s at the same state. */
export function particleNumberFlow(concentration: number, volumeFlow: number): number {
  return concentration * volumeFlow;
}
