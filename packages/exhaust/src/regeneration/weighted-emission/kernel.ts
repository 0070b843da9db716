/** What is emitted without and with a regeneration in the same test, and how often there is one; any one unit of emission. */
export interface WeightedEmissionInput {
  readonly without: number;
  readonly during: number;
  /** Share of tests, or of the distance or work, with a regeneration, 0 to 1. */
  readonly share: number;
}

export interface WeightedEmission {
  readonly average: number;
  /** To be added to a test without a regeneration. */
  readonly upward: number;
  /** To be taken off a test with one. */
  readonly downward: number;
}

/** Mean emission over many tests, 40 CFR 1065.680(c)(2) to (4), in the unit that both emissions have. */
export function weightedEmission({ without, during, share }: WeightedEmissionInput): WeightedEmission {
  const average = share * during + (1 - share) * without;
  return { average, upward: average - without, downward: during - average };
}
