import { type WallFlowEquation, wallFlowSlope } from './kernel-equation.js';
import type { WallFlowMesh } from './kernel-mesh.js';

/** Residual of the cubic interpolant a quarter into the interval, relative to the slopes there, per interval. */
export function residuals(equation: WallFlowEquation, { x, q, v }: WallFlowMesh, into: Float64Array): number {
  let worst = 0;
  for (let i = 0; i < into.length; i += 1) {
    const h = x[i + 1]! - x[i]!;
    const ga = wallFlowSlope(equation, q[i]!, v[i]!);
    const gb = wallFlowSlope(equation, q[i + 1]!, v[i + 1]!);
    // Hermite interpolation at one quarter.
    const qt = (27 * q[i]! + 5 * q[i + 1]!) / 32 - (h * (9 * v[i]! - 3 * v[i + 1]!)) / 64;
    const vt = (27 * v[i]! + 5 * v[i + 1]!) / 32 + (h * (9 * ga - 3 * gb)) / 64;
    const dq = (9 / 8) * ((q[i + 1]! - q[i]!) / h) - (3 * v[i]! - 5 * v[i + 1]!) / 16;
    const dv = (9 / 8) * ((v[i + 1]! - v[i]!) / h) + (3 * ga - 5 * gb) / 16;
    const g = wallFlowSlope(equation, qt, vt);
    into[i] = Math.hypot((dq + vt) / (1 + Math.abs(vt)), (dv - g) / (1 + Math.abs(g)));
    worst = Math.max(worst, into[i]!);
  }
  return worst;
}
