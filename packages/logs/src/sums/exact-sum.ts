/**
 * A sum as two doubles, the second what the first has rounded away (T. J. Dekker, Numer. Math. 18 (1971) 224-242; D. E.
 * Knuth's sum of two). About 32 digits are kept, so that order and grouping of millions of terms do not show in the double
 * that is read off at the end.
 */
export interface ExactSum {
  high: number;
  low: number;
}

/** Nothing added yet. */
export const noSum = (): ExactSum => ({ high: 0, low: 0 });

/** Splits a double into two of 26 bits, whose products are exact. */
const splitter = 134_217_729;

/** Add a number. */
export function addTo(sum: ExactSum, value: number): void {
  const total = sum.high + value;
  const back = total - sum.high;
  const lost = sum.high - (total - back) + (value - back);
  const low = sum.low + lost;
  sum.high = total + low;
  sum.low = low - (sum.high - total);
}

/** Add a product, all of its digits. */
export function addProductTo(sum: ExactSum, a: number, b: number): void {
  const product = a * b;
  const scaledA = splitter * a;
  const highA = scaledA - (scaledA - a);
  const lowA = a - highA;
  const scaledB = splitter * b;
  const highB = scaledB - (scaledB - b);
  const lowB = b - highB;
  const rest = lowA * lowB - (product - highA * highB - lowA * highB - highA * lowB);
  addTo(sum, product);
  addTo(sum, rest);
}

/** Add another sum. */
export function addSumTo(sum: ExactSum, other: ExactSum): void {
  addTo(sum, other.high);
  addTo(sum, other.low);
}

/** `n Σxy - Σx Σy` over `n`: the sum of products about the means, worked with all digits. */
export function aboutMeans(count: number, sumXY: ExactSum, sumX: ExactSum, sumY: ExactSum): number {
  const total = noSum();
  addProductTo(total, count, sumXY.high);
  addProductTo(total, count, sumXY.low);
  addProductTo(total, -sumX.high, sumY.high);
  addProductTo(total, -sumX.high, sumY.low);
  addProductTo(total, -sumX.low, sumY.high);
  addProductTo(total, -sumX.low, sumY.low);
  return (total.high + total.low) / count;
}
