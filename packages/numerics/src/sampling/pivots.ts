import { type Evaluator, linearised } from './fit-mode.js';

/** The unknowns in an order with the pivots first. */
export interface PivotOrder {
  readonly indices: readonly number[];
  readonly pivots: number;
}

const mostPivots = 4;
/** Information of the observations, over that of the prior, from which an unknown is worth a fit for each draw. */
const worthFitting = 1;

/**
 * The unknowns that the observations tell most about: pivoted Gram–Schmidt over the columns of the weighted Jacobian at a
 * point, as in a QR decomposition with column pivoting (Golub and Van Loan, Matrix Computations, 3rd ed. 1996, 5.4.1).
 */
export function pivotOrder(evaluator: Evaluator, point: Float64Array): PivotOrder {
  const size = evaluator.problem.dimension;
  const columns = linearised(evaluator, point);
  const chosen: number[] = [];
  while (chosen.length < Math.min(mostPivots, size)) {
    let best = -1;
    let most = worthFitting;
    columns.forEach((column, j) => {
      const information = chosen.includes(j) ? 0 : dot(column, column);
      if (information > most) [best, most] = [j, information];
    });
    if (best < 0) break;
    chosen.push(best);
    const unit = columns[best]!.map((value) => value / Math.sqrt(most));
    columns.forEach((column, j) => {
      if (chosen.includes(j)) return;
      const part = dot(column, unit);
      for (let i = 0; i < column.length; i += 1) column[i]! -= part * unit[i]!;
    });
  }
  const others = columns.map((_, j) => j).filter((j) => !chosen.includes(j));
  return { indices: [...chosen, ...others], pivots: chosen.length };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}
