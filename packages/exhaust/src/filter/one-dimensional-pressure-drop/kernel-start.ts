import { linearWallFlow, type WallFlowEquation } from './kernel-equation.js';
import type { NewtonSpace } from './kernel-interval.js';
import type { WallFlowMesh } from './kernel-mesh.js';
import { newton } from './kernel-newton.js';

/** From 0 to 1 with steps that grow from about 1/rate. */
function graded(s: number, rate: number): number {
  const growth = Math.log(Math.max(rate, 3) / 3);
  return growth < 1e-3 ? s : Math.expm1(growth * s) / Math.expm1(growth);
}

/**
 * Spread a third of the points over either end, graded for the layers there: as thin as friction makes them at the
 * entrance, and as friction and the inlet flow's momentum together make them at the end.
 */
export function spreadForLayers(equation: WallFlowEquation, { x }: WallFlowMesh): void {
  const rate = Math.sqrt(equation.inletFriction + equation.outletFriction);
  const half = equation.inletInertia / 2;
  const endRate = half + Math.hypot(half, rate);
  const intervals = x.length - 1;
  for (let i = 0; i <= intervals; i += 1) {
    const s = (3 * i) / intervals;
    x[i] = s <= 1 ? graded(s, rate) / 3 : s < 2 ? s / 3 : 1 - graded(3 - s, endRate) / 3;
  }
}

/** The solution without inertia at the points of a mesh. */
function startLinear(equation: WallFlowEquation, mesh: WallFlowMesh): void {
  const linear = linearWallFlow(equation);
  mesh.x.forEach((x, i) => {
    const { q, v } = linear(x);
    mesh.q[i] = q;
    mesh.v[i] = v;
  });
  mesh.q[0] = 1;
  mesh.q[mesh.q.length - 1] = 0;
}

function withInertia(equation: WallFlowEquation, factor: number): WallFlowEquation {
  const { inletInertia, outletInertia, wallInertia } = equation;
  return { ...equation, inletInertia: inletInertia * factor, outletInertia: outletInertia * factor, wallInertia: wallInertia * factor };
}

/** From the solution without inertia to the one with it, in steps as large as Newton's method takes them. */
export function continueToInertia(equation: WallFlowEquation, mesh: WallFlowMesh, spare: WallFlowMesh, space: NewtonSpace): boolean {
  startLinear(equation, mesh);
  let reached = 0;
  let step = 1;
  for (let tries = 0; reached < 1 && tries < 60; tries += 1) {
    const factor = Math.min(1, reached + step);
    spare.q.set(mesh.q);
    spare.v.set(mesh.v);
    if (newton(withInertia(equation, factor), mesh, space)) {
      reached = factor;
      step *= 2;
    } else {
      mesh.q.set(spare.q);
      mesh.v.set(spare.v);
      step /= 4;
    }
  }
  return reached === 1;
}
