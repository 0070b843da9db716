import { requireArgument } from '../errors.js';

/** How a search for a bracket ended. */
export type BracketStatus =
  /** The function has opposite signs (or a zero) at the two ends. */
  | 'bracketed'
  /** No change of sign within the limits or the number of expansions. */
  | 'no_bracket'
  /** The function or an end is NaN or infinite. */
  | 'not_finite';

/** Outcome of {@link expandBracket}. */
export interface BracketResult {
  readonly status: BracketStatus;
  readonly lower: number;
  readonly upper: number;
  /** The function's values at `lower` and `upper`. */
  readonly values: readonly [number, number];
  readonly evaluations: number;
}

/** Options of {@link expandBracket}. */
export interface BracketOptions {
  /** Each move lengthens the interval by this factor. Default 2. */
  readonly factor?: number;
  /** Default 60. */
  readonly maxExpansions?: number;
  /** The interval never reaches below this value. */
  readonly minimum?: number;
  /** The interval never reaches above this value. */
  readonly maximum?: number;
}

/**
 * Widens an interval until a function changes sign over it, always on the side where the function
 * is nearer to zero, and on the other side once a limit stops it.
 *
 * A sign change that lies wholly inside the starting interval (two roots) stays unseen.
 *
 * @throws NumericsError `invalid_argument` when `lower` is not below `upper`, the factor is not
 * above 1 or the limits do not enclose the interval
 */
export function expandBracket(f: (x: number) => number, lower: number, upper: number, options: BracketOptions = {}): BracketResult {
  const { factor = 2, maxExpansions = 60, minimum = -Infinity, maximum = Infinity } = options;
  requireArgument(!(lower >= upper), 'lower must be below upper');
  requireArgument(factor > 1, 'factor must be above 1');
  requireArgument(!(lower < minimum) && !(upper > maximum), 'the limits must enclose the interval');

  let evaluations = 0;
  const evaluate = (x: number): number => {
    if (!Number.isFinite(x)) return Number.NaN;
    evaluations += 1;
    return f(x);
  };
  let low = lower;
  let high = upper;
  let valueLow = evaluate(low);
  let valueHigh = evaluate(high);
  const end = (status: BracketStatus): BracketResult => ({
    status,
    lower: low,
    upper: high,
    values: [valueLow, valueHigh],
    evaluations,
  });

  for (let expansions = 0; ; expansions += 1) {
    if (!Number.isFinite(valueLow) || !Number.isFinite(valueHigh)) return end('not_finite');
    if (valueLow === 0 || valueHigh === 0 || valueLow < 0 !== valueHigh < 0) return end('bracketed');
    const canLower = low > minimum;
    const canRaise = high < maximum;
    if (expansions >= maxExpansions || (!canLower && !canRaise)) return end('no_bracket');
    const growth = (factor - 1) * (high - low);
    if (canLower && (!canRaise || Math.abs(valueLow) < Math.abs(valueHigh))) {
      low = Math.max(minimum, low - growth);
      valueLow = evaluate(low);
    } else {
      high = Math.min(maximum, high + growth);
      valueHigh = evaluate(high);
    }
  }
}
