import { requireArgument } from '../errors.js';
import { BandedMatrix } from '../linear/banded-matrix.js';
import { DenseMatrix } from '../linear/dense-matrix.js';
import type { SystemMatrix } from '../linear/system-matrix.js';
import { TridiagonalMatrix } from '../linear/tridiagonal-matrix.js';
import type { Derivative } from './types.js';

/** Which entries of the Jacobian can differ from zero. */
export type JacobianStructure =
  | 'dense'
  /** Each state depends on its neighbours only. Solved without row swaps: no algebraic states. */
  | 'tridiagonal'
  | { readonly lowerBandwidth: number; readonly upperBandwidth: number };

/** Writes `∂f_row/∂y_column` into a matrix that holds zeros. */
export type JacobianFunction = (t: number, y: Float64Array, jacobian: { set(row: number, column: number, value: number): void }) => void;

/** Storage for a Jacobian of the given structure. */
export function makeSystemMatrix(size: number, structure: JacobianStructure): SystemMatrix {
  if (structure === 'dense') return new DenseMatrix(size);
  if (structure === 'tridiagonal') return new TridiagonalMatrix(size);
  requireArgument(typeof structure === 'object', 'unknown Jacobian structure');
  return new BandedMatrix(size, structure.lowerBandwidth, structure.upperBandwidth);
}

/**
 * Jacobian by forward differences. Columns that share no row are moved together (A. R. Curtis,
 * M. J. D. Powell and J. K. Reid, J. Inst. Math. Appl. 13 (1974) 117–119), so that a band matrix
 * costs its bandwidth in evaluations, whatever its size.
 */
export class DifferenceJacobian {
  private readonly lower: number;
  private readonly upper: number;
  private readonly moved: Float64Array;
  private readonly movedSlope: Float64Array;
  private readonly smallest: Float64Array;

  /** @param smallest - the least change of each state, its absolute tolerance */
  constructor(size: number, structure: JacobianStructure, smallest: Float64Array) {
    const full = { lowerBandwidth: size - 1, upperBandwidth: size - 1 };
    const neighbours = { lowerBandwidth: 1, upperBandwidth: 1 };
    const band = structure === 'dense' ? full : structure === 'tridiagonal' ? neighbours : structure;
    this.lower = Math.min(band.lowerBandwidth, size - 1);
    this.upper = Math.min(band.upperBandwidth, size - 1);
    this.moved = new Float64Array(size);
    this.movedSlope = new Float64Array(size);
    this.smallest = smallest;
  }

  /** Fills the matrix; `slope` is the derivative at `t`, `y`. */
  fill(derivative: Derivative, t: number, y: Float64Array, slope: Float64Array, matrix: SystemMatrix): void {
    const size = y.length;
    const { lower, upper, moved, movedSlope } = this;
    const groups = Math.min(lower + upper + 1, size);
    for (let group = 0; group < groups; group += 1) {
      moved.set(y);
      for (let j = group; j < size; j += groups) moved[j]! += this.change(y, j);
      derivative(t, moved, movedSlope);
      for (let j = group; j < size; j += groups) {
        // The change that was really made, after rounding.
        const change = moved[j]! - y[j]!;
        const lastRow = Math.min(size - 1, j + lower);
        for (let i = Math.max(0, j - upper); i <= lastRow; i += 1) {
          matrix.set(i, j, (movedSlope[i]! - slope[i]!) / change);
        }
      }
    }
  }

  /** Away from zero, so that a state that cannot be negative stays in its domain. */
  private change(y: Float64Array, j: number): number {
    const size = Math.abs(y[j]!);
    const root = Math.sqrt(Number.EPSILON);
    const change = Math.max(root * size, Math.min(root, this.smallest[j]!)) || root;
    return y[j]! < 0 ? -change : change;
  }
}
