import { createElimination, type Elimination } from './kernel-elimination.js';
import { linearise, type WallFlowEquation } from './kernel-equation.js';
import type { WallFlowMesh } from './kernel-mesh.js';

/** Working arrays of one mesh size. */
export interface NewtonSpace {
  readonly elimination: Elimination;
  /** v' and its derivatives at the left end, in the middle and at the right end of an interval. */
  readonly left: Float64Array;
  readonly middle: Float64Array;
  readonly right: Float64Array;
  readonly step: Float64Array;
}

export function createNewtonSpace(intervals: number): NewtonSpace {
  const triple = () => new Float64Array(3);
  return { elimination: createElimination(intervals), left: triple(), middle: triple(), right: triple(), step: new Float64Array(2) };
}

/**
 * The two equations of one interval and their derivatives: the three-stage Lobatto IIIA formula (fourth order; Kierzenka
 * and Shampine, ACM Trans. Math. Softw. 27, 2001). `left` and `right` hold v' at the ends already.
 */
export function setInterval(equation: WallFlowEquation, { x, q, v }: WallFlowMesh, i: number, space: NewtonSpace): void {
  const { left, middle, right } = space;
  const { rows } = space.elimination;
  const h = x[i + 1]! - x[i]!;
  const half = h / 2;
  const sixth = h / 6;
  const [ga, aq, av] = [left[0]!, left[1]!, left[2]!];
  const [gb, bq, bv] = [right[0]!, right[1]!, right[2]!];
  const qm = (q[i]! + q[i + 1]!) / 2 - (half / 4) * (v[i]! - v[i + 1]!);
  const vm = (v[i]! + v[i + 1]!) / 2 + (half / 4) * (ga - gb);
  linearise(equation, qm, vm, middle);
  const [gm, mq, mv] = [middle[0]!, middle[1]!, middle[2]!];
  rows[5] = -1 + sixth * half * aq;
  rows[6] = sixth * (3 + half * av);
  rows[7] = 1 - sixth * half * bq;
  rows[8] = sixth * (3 - half * bv);
  rows[9] = -(q[i + 1]! - q[i]! + sixth * (v[i]! + 4 * vm + v[i + 1]!));
  rows[10] = -sixth * (aq + 2 * mq + mv * half * aq);
  rows[11] = -1 - sixth * (av - half * mq + mv * (2 + half * av));
  rows[12] = -sixth * (bq + 2 * mq - mv * half * bq);
  rows[13] = 1 - sixth * (bv + half * mq + mv * (2 - half * bv));
  rows[14] = -(v[i + 1]! - v[i]! - sixth * (ga + 4 * gm + gb));
}
