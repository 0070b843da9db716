/** Share of every part in a total, the rest that no part explains, and the index of the largest part. */
export interface DropShares {
  readonly shares: readonly number[];
  /** Pa; pipes, bends and whatever was not measured. */
  readonly rest: number;
  readonly largest: number;
}

/** Split a total drop into the parts measured in it, both in Pa. */
export function dropShares(total: number, parts: readonly number[]): DropShares {
  const sum = parts.reduce((all, part) => all + part, 0);
  const largest = parts.reduce((best, part, index) => (part > parts[best]! ? index : best), 0);
  return { shares: parts.map((part) => part / total), rest: total - sum, largest };
}
