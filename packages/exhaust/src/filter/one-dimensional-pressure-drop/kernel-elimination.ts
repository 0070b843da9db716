/** Numbers kept per interval for the way back. */
const kept = 9;

/** Arrays for one mesh size, allocated once and used by every iteration. */
export interface Elimination {
  readonly pivotRows: Float64Array;
  /** One relation a dq + b dv = c at the current point. */
  readonly relation: Float64Array;
  /** The three rows that meet in an interval, five numbers each: by dq, dv here, by dq, dv at the next point, right side. */
  readonly rows: Float64Array;
}

export function createElimination(intervals: number): Elimination {
  return { pivotRows: new Float64Array(kept * intervals), relation: new Float64Array(3), rows: new Float64Array(15) };
}

/** Row with the largest entry in a column, from a first row on. */
function pivotOf(rows: Float64Array, column: number, first: number): number {
  let best = first;
  for (let row = first + 1; row < 3; row += 1) {
    if (Math.abs(rows[5 * row + column]!) > Math.abs(rows[5 * best + column]!)) best = row;
  }
  return best;
}

function bringUp(rows: Float64Array, column: number, target: number): boolean {
  const best = pivotOf(rows, column, target);
  for (let k = 0; k < 5 && best !== target; k += 1) {
    const value = rows[5 * target + k]!;
    rows[5 * target + k] = rows[5 * best + k]!;
    rows[5 * best + k] = value;
  }
  const pivot = rows[5 * target + column]!;
  if (pivot === 0 || !Number.isFinite(pivot)) return false;
  for (let row = target + 1; row < 3; row += 1) {
    const factor = rows[5 * row + column]! / pivot;
    for (let k = column; k < 5; k += 1) rows[5 * row + k]! -= factor * rows[5 * target + k]!;
  }
  return true;
}

/**
 * Eliminate the unknowns of interval i from its two equations (rows 1 and 2) and the relation at its left end, which
 * leaves a relation at its right end. Rows are exchanged for the largest pivot, as in a band matrix. False when singular.
 */
export function eliminate({ pivotRows, relation, rows }: Elimination, i: number): boolean {
  rows[0] = relation[0]!;
  rows[1] = relation[1]!;
  rows[2] = 0;
  rows[3] = 0;
  rows[4] = relation[2]!;
  if (!bringUp(rows, 0, 0) || !bringUp(rows, 1, 1)) return false;
  const at = kept * i;
  for (let k = 0; k < 5; k += 1) pivotRows[at + k] = rows[k]!;
  for (let k = 1; k < 5; k += 1) pivotRows[at + 4 + k] = rows[5 + k]!;
  const size = Math.max(Math.abs(rows[12]!), Math.abs(rows[13]!));
  for (let k = 0; k < 3; k += 1) relation[k] = rows[12 + k]! / size;
  return size > 0;
}

/** From the unknowns at the right end of interval i, written in `at`, those at its left end, written there in their place. */
export function substituteBack({ pivotRows }: Elimination, i: number, at: Float64Array): void {
  const row = kept * i;
  const [dq, dv] = [at[0]!, at[1]!];
  const left = (pivotRows[row + 8]! - pivotRows[row + 6]! * dq - pivotRows[row + 7]! * dv) / pivotRows[row + 5]!;
  const value = pivotRows[row + 4]! - pivotRows[row + 1]! * left - pivotRows[row + 2]! * dq - pivotRows[row + 3]! * dv;
  at[0] = value / pivotRows[row]!;
  at[1] = left;
}
