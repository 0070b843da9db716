import { type IntegrationOptions, type IntegrationResult, integrateStiff } from '@wallflow/numerics';
import type { AxialBed } from './kernel-axial.js';

/** Steps that a stretch takes here, counted in those of the explicit method that cost the same. */
const stepsElsewhere = 1500;

/** How far an explicit step may go, times the fastest rate. */
const explicitReach = 3.3;

/** Rate in 1/s of the wall with the gas of its channel, whatever the number of cells. */
const gasRate = 0.5;

/** Whether conduction from cell to cell makes small steps, and so this way is the cheaper. */
export function conductionIsStiff(model: AxialBed, span: number): boolean {
  // Two cells and fewer have nothing to gain, and one has no neighbour.
  return model.cells > 2 && ((4 * model.conduction + gasRate) * span) / explicitReach > stepsElsewhere;
}

/**
 * Integrate a stretch with conduction taken implicitly, so that its steps do not shrink with the cells. The matrix of the
 * Rosenbrock method holds conduction alone: heat and oxygen that the gas carries reach from every cell to all those behind it
 * and would fill it, but they are slow, and the method stays of second order without them. State by cells in place of by kind,
 * so that the matrix has a band of three.
 */
export function integrateConduction(
  model: AxialBed,
  { from, to, initial }: { readonly from: number; readonly to: number; readonly initial: Float64Array },
  { relativeTolerance = 1e-6, absoluteTolerance, maxSteps = 20_000 }: IntegrationOptions & { readonly absoluteTolerance: Float64Array },
): IntegrationResult {
  const { cells: n, size, conduction, risePerLoad, soot0 } = model;
  const [state, slope] = [new Float64Array(size), new Float64Array(size)];
  const result = integrateStiff(
    {
      derivative: (time, y, into) => {
        byKind(y, state, n);
        model.derivative(time, state, slope);
        byCell(slope, into, n);
      },
      from,
      to,
      initial: byCell(initial, new Float64Array(size), n),
      structure: { lowerBandwidth: 3, upperBandwidth: 3 },
      jacobian: (_, y, jacobian) => {
        // T = H − a s₀ e^(−θ), so that a wall temperature moves with both of its states.
        const put = (row: number, cell: number, weight: number) => {
          jacobian.set(2 * row + 1, 2 * cell + 1, weight);
          jacobian.set(2 * row + 1, 2 * cell, weight * risePerLoad * soot0[cell]! * Math.exp(-y[2 * cell]!));
        };
        for (let i = 0; i < n; i += 1) {
          const neighbours = [i - 1, i + 1].filter((k) => k >= 0 && k < n);
          for (const k of neighbours) put(i, k, conduction);
          put(i, i, -conduction * neighbours.length);
        }
      },
      timeDerivative: (_, __, into) => {
        into.fill(0);
      },
    },
    { relativeTolerance, absoluteTolerance: byCell(absoluteTolerance, new Float64Array(size), n), maxSteps },
  );
  const there = new Float64Array(size);
  return {
    ...result,
    y: byKind(result.y, new Float64Array(size), n),
    at: (time, out = new Float64Array(size)) => byKind(result.at(time, there), out, n),
  };
}

/** θ and H of each cell side by side. */
function byCell(from: ArrayLike<number>, into: Float64Array, n: number): Float64Array {
  for (let i = 0; i < n; i += 1) {
    into[2 * i] = from[i]!;
    into[2 * i + 1] = from[n + i]!;
  }
  into[2 * n] = from[2 * n]!;
  return into;
}

/** All θ, then all H, as the model has them. */
function byKind(from: ArrayLike<number>, into: Float64Array, n: number): Float64Array {
  for (let i = 0; i < n; i += 1) {
    into[i] = from[2 * i]!;
    into[n + i] = from[2 * i + 1]!;
  }
  into[2 * n] = from[2 * n]!;
  return into;
}
