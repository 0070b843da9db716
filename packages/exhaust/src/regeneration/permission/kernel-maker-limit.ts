/** How a maker's limit stands to practice: tighter or equal, looser, or beyond what can be right. */
export type MakerStanding = 'tighter' | 'looser' | 'beyond';

export interface MakerLimit {
  /** Whether the value must be at least or at most the limit. */
  readonly side: 'least' | 'most';
  readonly maker: number;
  /** Limit of practice. */
  readonly usual: number;
  /** Loosest limit that can be right; left out where a loose one hurts nobody. */
  readonly outer?: number | undefined;
}

/** Tightening is free, loosening beyond practice is to be warned of, beyond the outer bound to be refused. */
export function makerStanding({ side, maker, usual, outer }: MakerLimit): MakerStanding {
  const looserBy = (bound: number) => (side === 'most' ? maker - bound : bound - maker);
  // What is typed in another unit may miss its own bound by rounding.
  const slack = 1e-9 * Math.abs(maker);
  if (looserBy(usual) <= slack) return 'tighter';
  return outer === undefined || looserBy(outer) <= slack ? 'looser' : 'beyond';
}

/** What the highest load that a filter survives follows from, in SI. */
export interface HeatBound {
  /** Temperature of the filter when it starts to burn. */
  readonly start: number;
  /** Temperature that damages it. */
  readonly damage: number;
  /** Share of the heat of the soot that stays in the filter. */
  readonly keptShare: number;
  readonly bulkDensity: number;
  readonly specificHeat: number;
  /** Heat of burning in J/kg. */
  readonly heatOfCombustion: number;
}

/** Soot load in kg/m³ whose heat, as far as it stays, takes the filter to the temperature that damages it. */
export function heatBoundLoad({ start, damage, keptShare, bulkDensity, specificHeat, heatOfCombustion }: HeatBound): number {
  return ((damage - start) * bulkDensity * specificHeat) / (keptShare * heatOfCombustion);
}
