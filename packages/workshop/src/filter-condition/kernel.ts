/** What one reading, or all of them, say of the filter. */
export type ConditionVerdict =
  | 'zero-fault'
  | 'contradiction'
  | 'reversed'
  | 'suspiciously-low'
  | 'clean'
  | 'in-service'
  | 'loaded'
  | 'blocked'
  | 'unclear';

/** Upper edges of the bands as multiples of the drop expected of the clean filter at the same flow. */
export interface ConditionBands {
  readonly low: number;
  readonly clean: number;
  readonly inService: number;
  readonly loaded: number;
  /** Drop in Pa above which the filter counts as blocked at any flow. */
  readonly blockedDrop: number;
}

export interface ConditionReading {
  /** Measured drop less the zero reading, Pa. */
  readonly pressureDrop: number;
  /** Standard uncertainty of that, Pa. */
  readonly uncertainty: number;
  /** The part of it that stays at any drop, Pa. */
  readonly zeroUncertainty: number;
  /** Drop expected of the clean filter, Pa. */
  readonly cleanDrop: number;
}

function bandOf(pressureDrop: number, cleanDrop: number, bands: ConditionBands): ConditionVerdict {
  const ratio = pressureDrop / cleanDrop;
  if (pressureDrop >= bands.blockedDrop || ratio > bands.loaded) return 'blocked';
  if (ratio > bands.inService) return 'loaded';
  if (ratio > bands.clean) return 'in-service';
  return ratio >= bands.low ? 'clean' : 'suspiciously-low';
}

/** Whether the flow is so low that the clean filter is lost in the error of the zero, as at idle. */
export function flowTooLow({ cleanDrop, zeroUncertainty }: ConditionReading): boolean {
  return cleanDrop <= 2 * zeroUncertainty;
}

/**
 * The band of a reading, or `unclear` when its uncertainty reaches over two band edges or more, or from the suspiciously
 * low into the clean band: such a reading cannot tell. Where the flow is too low for a clean filter to show, only a drop
 * that no error explains counts: a blockage, or a negative reading.
 */
export function conditionOfReading(reading: ConditionReading, bands: ConditionBands): ConditionVerdict {
  const { pressureDrop, uncertainty, cleanDrop } = reading;
  if (pressureDrop < -2 * uncertainty) return 'reversed';
  if (flowTooLow(reading)) return bandOf(pressureDrop - 2 * uncertainty, cleanDrop, bands) === 'blocked' ? 'blocked' : 'unclear';
  const order: readonly ConditionVerdict[] = ['suspiciously-low', 'clean', 'in-service', 'loaded', 'blocked'];
  const lowest = order.indexOf(bandOf(pressureDrop - uncertainty, cleanDrop, bands));
  const highest = order.indexOf(bandOf(pressureDrop + uncertainty, cleanDrop, bands));
  if (highest - lowest > 1 || (lowest === 0 && highest > 0)) return 'unclear';
  return bandOf(pressureDrop, cleanDrop, bands);
}

/**
 * Exponent n of Δp ∝ (μQ)^n between two readings: 1 for a filter, 2 for a pipe. Undefined without two positive drops at
 * flows that differ.
 */
export function growthExponent(
  low: { readonly pressureDrop: number; readonly viscousFlow: number },
  high: { readonly pressureDrop: number; readonly viscousFlow: number },
): number | undefined {
  const ratio = high.viscousFlow / low.viscousFlow;
  if (!(ratio > 1.2) || low.pressureDrop <= 0 || high.pressureDrop <= 0) return undefined;
  return Math.log(high.pressureDrop / low.pressureDrop) / Math.log(ratio);
}
