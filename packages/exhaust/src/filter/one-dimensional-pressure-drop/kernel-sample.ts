import { type WallFlowEquation, wallFlowSlope } from './kernel-equation.js';
import type { WallFlowMesh } from './kernel-mesh.js';

/** The solution at one place: q, v, and the integral of 1 - q from there to the end. */
export interface WallFlowSample {
  readonly x: number;
  readonly q: number;
  readonly v: number;
  readonly outletIntegral: number;
}

/** Value of the cubic through two points with given slopes, at part t of an interval of length h. */
function hermite(t: number, h: number, [a, b]: readonly [number, number], [slopeA, slopeB]: readonly [number, number]): number {
  const u = 1 - t;
  return u * u * (1 + 2 * t) * a + t * t * (3 - 2 * t) * b + h * t * u * (u * slopeA - t * slopeB);
}

/** Integral of 1 - q from every mesh point to the end, by the fourth-order Hermite rule. */
export function outletIntegrals({ x, q, v }: WallFlowMesh): Float64Array {
  const integrals = new Float64Array(x.length);
  for (let i = x.length - 2; i >= 0; i -= 1) {
    const h = x[i + 1]! - x[i]!;
    integrals[i] = integrals[i + 1]! + h - (h * (q[i]! + q[i + 1]!)) / 2 + (h * h * (v[i]! - v[i + 1]!)) / 12;
  }
  return integrals;
}

/** The solution at evenly spaced places, both ends included. */
export function sampleEvenly(equation: WallFlowEquation, mesh: WallFlowMesh, integrals: Float64Array, rows: number): WallFlowSample[] {
  const { x, q, v } = mesh;
  const samples: WallFlowSample[] = [];
  let i = 0;
  for (let row = 0; row < rows; row += 1) {
    const at = row / (rows - 1);
    while (i < x.length - 2 && x[i + 1]! < at) i += 1;
    const h = x[i + 1]! - x[i]!;
    const t = Math.min(1, (at - x[i]!) / h);
    const slopes = [wallFlowSlope(equation, q[i]!, v[i]!), wallFlowSlope(equation, q[i + 1]!, v[i + 1]!)] as const;
    samples.push({
      x: at,
      q: hermite(t, h, [q[i]!, q[i + 1]!], [-v[i]!, -v[i + 1]!]),
      v: hermite(t, h, [v[i]!, v[i + 1]!], slopes),
      outletIntegral: hermite(t, h, [integrals[i]!, integrals[i + 1]!], [q[i]! - 1, q[i + 1]! - 1]),
    });
  }
  return samples;
}
