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

/** Whether a drop is above what it should be by more than twice the uncertainty of a reading, all in Pa. */
export function isAbove(drop: number, normal: number | undefined, uncertainty: number): normal is number {
  return normal !== undefined && drop > normal + 2 * uncertainty;
}

/**
 * Index of the part that is the most times what it should be, among those above it by more than twice the uncertainty of a
 * reading; undefined when there is none.
 */
export function furthestDropAbove(
  drops: readonly number[],
  normals: readonly (number | undefined)[],
  uncertainty: number,
): number | undefined {
  let worst: number | undefined;
  let most = 1;
  for (const [index, drop] of drops.entries()) {
    const normal = normals[index];
    if (!isAbove(drop, normal, uncertainty) || drop / normal <= most) continue;
    worst = index;
    most = drop / normal;
  }
  return worst;
}

export type SharesVerdict = 'contradict' | 'rest' | 'part-above' | 'none-above' | 'normal-unknown';

/**
 * What the split says. Parts that exceed the whole by more than twice the uncertainty of the sum, u√(n + 1), cannot all be
 * right; a rest larger than every part is where the back pressure is made.
 */
export function sharesVerdict(
  { rest, largest }: DropShares,
  drops: readonly number[],
  normals: readonly (number | undefined)[],
  uncertainty: number,
): SharesVerdict {
  if (rest < -2 * uncertainty * Math.sqrt(drops.length + 1)) return 'contradict';
  if (rest > (drops[largest] ?? 0)) return 'rest';
  if (furthestDropAbove(drops, normals, uncertainty) !== undefined) return 'part-above';
  return normals.includes(undefined) ? 'normal-unknown' : 'none-above';
}
