/** What a {@link NumericsError} can be about. */
export type NumericsErrorCode =
  /** Two lists that belong together have different lengths. */
  | 'unequal_lengths'
  /** An argument or option has no meaning here: a negative tolerance, an empty state, a matrix that is not square. */
  | 'invalid_argument'
  /** A solution was asked for its value at a time that it does not cover. */
  | 'outside_solution';

/**
 * Thrown for a mistake in the calling code only. Data never throws: every algorithm returns a
 * `status` that says how it ended.
 */
export class NumericsError extends Error {
  readonly code: NumericsErrorCode;

  constructor(code: NumericsErrorCode, message: string) {
    super(message);
    this.name = 'NumericsError';
    this.code = code;
  }
}

/** Throws `unequal_lengths` unless both lists have the same length. */
export function requireEqualLengths(
  nameOfFirst: string,
  first: ArrayLike<unknown>,
  nameOfSecond: string,
  second: ArrayLike<unknown>,
): void {
  if (first.length !== second.length) {
    throw new NumericsError('unequal_lengths', `${nameOfFirst} has ${first.length} values, ${nameOfSecond} has ${second.length}`);
  }
}

/** Throws `invalid_argument` with the given text unless the condition holds. */
export function requireArgument(condition: boolean, message: string): asserts condition {
  if (!condition) throw new NumericsError('invalid_argument', message);
}
