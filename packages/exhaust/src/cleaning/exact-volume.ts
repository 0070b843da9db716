import { Decimal } from 'decimal.js';

/** Room for products of several inputs of twelve digits without rounding. */
const WideDecimal = Decimal.clone({ precision: 60 });

/**
 * A number as the decimal fact that it is on a label, a jug or a price list. A double that stands for 0.1 is not 0.1; twelve
 * digits bring the decimal back, because nobody types more.
 */
export function exact(value: number): Decimal {
  return new WideDecimal(value.toPrecision(12));
}

export interface PouredMix {
  /** In m³, whole numbers of marks. */
  readonly concentrate: number;
  readonly water: number;
  readonly concentrateMarks: number;
  readonly waterMarks: number;
}

/**
 * What to pour so that both volumes end on a mark, the mix is no less than needed and no weaker than 1:n.
 *
 * Concentrate goes up to the next mark, water down to the last mark that keeps the strength; if the mix then falls short,
 * another mark of concentrate follows.
 */
export function pourToMarks(mixVolume: number, dilutionRatio: number, mark: number): PouredMix {
  const step = exact(mark);
  const needed = exact(mixVolume);
  const ratio = exact(dilutionRatio);
  const waterFor = (concentrate: Decimal) => concentrate.times(ratio).dividedToIntegerBy(step).times(step);
  let concentrate = needed.dividedBy(ratio.plus(1)).dividedBy(step).ceil().times(step);
  while (concentrate.plus(waterFor(concentrate)).lessThan(needed)) concentrate = concentrate.plus(step);
  const water = waterFor(concentrate);
  return {
    concentrate: concentrate.toNumber(),
    water: water.toNumber(),
    concentrateMarks: concentrate.dividedBy(step).toNumber(),
    waterMarks: water.dividedBy(step).toNumber(),
  };
}
