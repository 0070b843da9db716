import { Decimal } from 'decimal.js';

/**
 * Volumes as the decimal facts they are on a label or a jug. A double that stands for 0.1 L is not 0.1 L; twelve digits
 * bring the decimal back, because nobody types more.
 */
export function decimalVolume(cubicMetres: number): Decimal {
  return new Decimal(cubicMetres.toPrecision(12));
}

export interface PouredMix {
  /** All in m³, whole numbers of marks. */
  readonly concentrate: number;
  readonly water: number;
}

/**
 * What to pour so that both volumes end on a mark, the mix is no less than needed and no weaker than 1:n.
 *
 * Concentrate goes up to the next mark, water down to the last mark that keeps the strength; if the mix then falls short,
 * another mark of concentrate follows.
 */
export function pourToMarks(mixVolume: number, dilutionRatio: number, mark: number): PouredMix {
  const step = decimalVolume(mark);
  const needed = decimalVolume(mixVolume);
  const ratio = new Decimal(dilutionRatio.toPrecision(12));
  const waterFor = (concentrate: Decimal) => concentrate.times(ratio).dividedToIntegerBy(step).times(step);
  let concentrate = needed.dividedBy(ratio.plus(1)).dividedBy(step).ceil().times(step);
  while (concentrate.plus(waterFor(concentrate)).lessThan(needed)) concentrate = concentrate.plus(step);
  return { concentrate: concentrate.toNumber(), water: waterFor(concentrate).toNumber() };
}
