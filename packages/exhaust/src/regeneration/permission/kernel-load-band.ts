/** Material of the honeycomb. */
export type Substrate = 'silicon-carbide' | 'cordierite' | 'unknown';

/** What the soot load calls for. */
export type SootBand = 'normal' | 'due' | 'service' | 'high' | 'too-high';

/** Upper ends of the bands in kg/m³; above `high` the filter must not be heated. */
export interface SootBands {
  readonly normal: number;
  readonly due: number;
  /** The load limit for a forced regeneration. */
  readonly service: number;
  readonly high: number;
}

/** Common practice, no source; the stricter end where a range is in use. */
export const siliconCarbideBands: SootBands = { normal: 3.5, due: 6, service: 8, high: 9 };

/** Common practice, no source. */
export const cordieriteBands: SootBands = { normal: 2.5, due: 4, service: 5, high: 6 };

/** Bands of a substrate; one that is not known counts as the stricter. */
export function sootBandsOf(substrate: Substrate): SootBands {
  return substrate === 'silicon-carbide' ? siliconCarbideBands : cordieriteBands;
}

/** Bands around a maker's load limit in kg/m³, as shares of it (common practice: 45 %, 75 %, 100 %, 110 %). */
export function sootBandsAround(limit: number): SootBands {
  return { normal: 0.45 * limit, due: 0.75 * limit, service: limit, high: 1.1 * limit };
}

/** Band of a load in kg/m³ that may be wrong by `uncertainty`: taken at its upper end. */
export function sootBand(load: number, uncertainty: number, bands: SootBands): SootBand {
  const worst = load + uncertainty;
  if (worst <= bands.normal) return 'normal';
  if (worst <= bands.due) return 'due';
  if (worst <= bands.service) return 'service';
  return worst <= bands.high ? 'high' : 'too-high';
}
