import type { KindData } from './types.js';

/** Beyond this two units are told apart by whoever uses them, however coarse the number. */
const mostDifference = 0.01;

/** Half of the last digit of a decimal text over its value; of zero, without limit. */
function halfLastDigit(decimal: string): number {
  const [mantissa = '', exponent = '0'] = decimal.split('e');
  const places = (mantissa.split('.')[1] ?? '').length - Number(exponent);
  const size = Math.abs(Number(decimal));
  return size === 0 ? Number.POSITIVE_INFINITY : (0.5 * 10 ** -places) / size;
}

/**
 * The conventional one of several units that one spelling can mean, where they differ by less than half of the last digit typed,
 * as inches of water at 4 °C and at 60 °F do; without a conventional one the first.
 *
 * @returns undefined where the difference could be seen in the number
 */
export function alikeUnits(data: KindData, candidates: readonly string[], decimal: string): string | undefined {
  const units = candidates.flatMap((id) => data.units.get(id) ?? []);
  if (units.some(({ offset, reciprocal }) => offset !== 0 || reciprocal)) return undefined;
  const factors = units.map(({ factor }) => factor);
  const difference = Math.max(...factors) / Math.min(...factors) - 1;
  if (difference > mostDifference || difference >= halfLastDigit(decimal)) return undefined;
  return candidates.find((id) => id.endsWith('_conventional')) ?? candidates[0];
}
