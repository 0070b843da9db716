/**
 * Square matrix that can be factorised in place and solved with. Which entries can be set depends
 * on the storage; the others are zero.
 */
export interface SystemMatrix {
  readonly size: number;
  /** An entry; zero outside of the stored band. Meaningless after `factor`. */
  get(row: number, column: number): number;
  /** Sets an entry. @throws NumericsError `invalid_argument` outside of the stored band */
  set(row: number, column: number, value: number): void;
  /** Makes every entry zero. */
  clear(): void;
  /** Makes this matrix `diag(diagonal) - other`, where `other` has the same storage. */
  setToDiagonalMinus(diagonal: Float64Array, other: this): void;
  /** Factorises in place. False when the matrix is singular to working precision or not finite. */
  factor(): boolean;
  /** Replaces a right-hand side by the solution; only after `factor` gave true. */
  solveInPlace(rightHandSide: Float64Array): void;
}

/** How the solution of a linear system ended. */
export type LinearSolveStatus =
  | 'solved'
  /** Singular to working precision, or an entry is NaN or infinite. */
  | 'singular';

/** Outcome of solving a linear system. */
export interface LinearSolveResult {
  readonly status: LinearSolveStatus;
  /** The solution; empty when singular. */
  readonly solution: Float64Array;
}

/** A pivot this small beside its own row's entries is lost in rounding. */
export function isNegligiblePivot(pivot: number, rowScale: number, size: number): boolean {
  return !(Math.abs(pivot) > size * Number.EPSILON * rowScale);
}
