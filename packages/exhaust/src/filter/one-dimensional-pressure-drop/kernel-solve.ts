import type { WallFlowEquation } from './kernel-equation.js';
import { createNewtonSpace } from './kernel-interval.js';
import { createMesh, densityFrom, redistribute, type WallFlowMesh } from './kernel-mesh.js';
import { newton } from './kernel-newton.js';
import { residuals } from './kernel-residuals.js';
import { continueToInertia, spreadForLayers } from './kernel-start.js';

export interface WallFlowSolution {
  /** `not_converged`: no mesh within the memory limit resolves the profile; the values are not a result. */
  readonly status: 'converged' | 'not_converged';
  readonly mesh: WallFlowMesh;
  /** Largest residual of the interpolated solution, relative to its slopes. */
  readonly residual: number;
}

/** Intervals of the first and of the fine mesh; both with their working arrays take less than 40 kB. */
const coarseIntervals = 36;
const fineIntervals = 200;

/** The relative residual that leaves about 1e-8 of error in the drop. */
const goodResidual = 2e-6;
const acceptableResidual = 1e-3;
/** Above it the coarse mesh says nothing about where points are needed. */
const usefulResidual = 0.3;

/** Solve the two-channel equation; robust from clean to nearly full channels in laminar flow. */
export function solveWallFlow(equation: WallFlowEquation): WallFlowSolution {
  const coarse = createMesh(coarseIntervals);
  const coarseErrors = new Float64Array(coarseIntervals);
  spreadForLayers(equation, coarse);
  const started = continueToInertia(equation, coarse, createMesh(coarseIntervals), createNewtonSpace(coarseIntervals));
  const coarseResidual = started ? residuals(equation, coarse, coarseErrors) : Infinity;
  let best: WallFlowSolution = { status: 'converged', mesh: coarse, residual: coarseResidual };
  if (coarseResidual <= goodResidual) return best;

  let mesh = createMesh(fineIntervals);
  let other = createMesh(fineIntervals);
  const space = createNewtonSpace(fineIntervals);
  const errors = new Float64Array(fineIntervals);
  const useful = coarseResidual < usefulResidual;
  if (useful) {
    densityFrom(coarse, coarseErrors);
    redistribute(coarse, coarseErrors, mesh);
  } else spreadForLayers(equation, mesh);
  for (let pass = 0; pass < 5; pass += 1) {
    const solved =
      ((useful || pass > 0) && newton(equation, mesh, space)) || (pass === 0 && continueToInertia(equation, mesh, other, space));
    const residual = solved ? residuals(equation, mesh, errors) : Infinity;
    if (!(residual < best.residual)) break;
    best = { status: 'converged', mesh, residual };
    if (residual <= goodResidual) break;
    densityFrom(mesh, errors);
    redistribute(mesh, errors, other);
    [mesh, other] = [other, mesh];
  }
  return best.residual <= acceptableResidual ? best : { ...best, status: 'not_converged' };
}
