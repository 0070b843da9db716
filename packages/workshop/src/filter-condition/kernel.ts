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

/** A reading for the growth of the drop, all SI. */
export interface GrowthReading {
  readonly pressureDrop: number;
  /** Standard uncertainty of the drop, that of the flow included, Pa. */
  readonly uncertainty: number;
  /** Viscosity times volume flow, Pa·m³. */
  readonly viscousFlow: number;
  /** Density times volume flow squared, N·m². */
  readonly inertialFlow: number;
}

export interface Growth {
  /** Exponent n of Δp ∝ (μQ)^n between the two readings. */
  readonly exponent: number;
  /** Standard uncertainty of that. */
  readonly uncertainty: number;
  /** The exponent that Δp ∝ ρQ² gives between these very readings: no restriction grows faster. */
  readonly largest: number;
}

/**
 * How the drop grows between two readings: with μQ it is a filter's, with ρQ² a pipe's, and nothing grows faster than that. Hot gas
 * is thinner, so that the pipe's exponent in μQ is below two. Undefined without two positive drops at flows that differ.
 */
export function growthOf(low: GrowthReading, high: GrowthReading): Growth | undefined {
  const ratio = high.viscousFlow / low.viscousFlow;
  if (!(ratio > 1.2) || low.pressureDrop <= 0 || high.pressureDrop <= 0) return undefined;
  const logRatio = Math.log(ratio);
  const relative = Math.hypot(low.uncertainty / low.pressureDrop, high.uncertainty / high.pressureDrop);
  return {
    exponent: Math.log(high.pressureDrop / low.pressureDrop) / logRatio,
    uncertainty: relative / logRatio,
    largest: Math.log(high.inertialFlow / low.inertialFlow) / logRatio,
  };
}

/** What the growth says of the restriction. */
export type GrowthShape = 'filter-like' | 'between' | 'pipe-like' | 'impossible' | 'unknown';

/** Shares of the way from a filter's exponent to a pipe's. */
export interface ShapeShares {
  /** A filter up to here: channels, plugs and the ends of the filter have their own part that goes with flow squared. */
  readonly filter: number;
  /** A pipe from here on. */
  readonly pipe: number;
}

/** The restriction by its growth, told only as far as twice the uncertainty allows. */
export function growthShape(growth: Growth | undefined, shares: ShapeShares): GrowthShape {
  if (growth === undefined || !(growth.largest > 1.05)) return 'unknown';
  const { exponent, uncertainty, largest } = growth;
  const share = (value: number) => (value - 1) / (largest - 1);
  const [lowest, middle, highest] = [share(exponent - 2 * uncertainty), share(exponent), share(exponent + 2 * uncertainty)];
  if (lowest > 1) return 'impossible';
  if (lowest > shares.pipe) return 'pipe-like';
  if (highest <= shares.pipe) return middle <= shares.filter ? 'filter-like' : 'between';
  return middle <= shares.filter ? 'unknown' : 'between';
}
