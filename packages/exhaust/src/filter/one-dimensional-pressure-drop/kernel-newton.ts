import { eliminate, substituteBack } from './kernel-elimination.js';
import { linearise, type WallFlowEquation } from './kernel-equation.js';
import { type NewtonSpace, setInterval } from './kernel-interval.js';
import type { WallFlowMesh } from './kernel-mesh.js';

/** One pass over the mesh that leaves the linear system eliminated; false when it is singular. */
function forward(equation: WallFlowEquation, mesh: WallFlowMesh, space: NewtonSpace): boolean {
  const { q, v } = mesh;
  const { relation } = space.elimination;
  // q is given at the entrance: its step is zero there.
  relation[0] = 1;
  relation[1] = 0;
  relation[2] = 0;
  linearise(equation, q[0]!, v[0]!, space.left);
  for (let i = 0; i < q.length - 1; i += 1) {
    linearise(equation, q[i + 1]!, v[i + 1]!, space.right);
    setInterval(equation, mesh, i, space);
    if (!eliminate(space.elimination, i)) return false;
    space.left.set(space.right);
  }
  return true;
}

/** Newton's method on one mesh, in place. True when the last step was negligible. */
export function newton(equation: WallFlowEquation, mesh: WallFlowMesh, space: NewtonSpace, maxIterations = 25): boolean {
  const { q, v } = mesh;
  const { step, elimination } = space;
  const last = q.length - 1;
  for (let iteration = 0; iteration < maxIterations; iteration += 1) {
    if (!forward(equation, mesh, space)) return false;
    step[0] = 0;
    step[1] = elimination.relation[2]! / elimination.relation[1]!;
    let largest = 0;
    let size = 0;
    for (let i = last; i >= 0; i -= 1) {
      if (i < last) substituteBack(elimination, i, step);
      if (i > 0 && i < last) q[i]! += step[0]!;
      v[i]! += step[1]!;
      largest = Math.max(largest, Math.abs(step[1]!));
      size = Math.max(size, Math.abs(v[i]!));
    }
    if (!Number.isFinite(largest)) return false;
    // Convergence is quadratic: the next step would be about the square of this one.
    if (largest <= 1e-7 * size) return true;
  }
  return false;
}
