import { errorNorm, type Tolerances } from './error-norm.js';
import type { Stepper } from './stepper.js';

/**
 * First step length from the sizes of the state, its slope and its curvature (Hairer, Nørsett and
 * Wanner, Solving Ordinary Differential Equations I, 1993, II.4 "Starting step size"). Costs one
 * evaluation of the derivative, never beyond `longest`, which carries the sign of the direction.
 */
export function chooseInitialStep(stepper: Stepper, t: number, y: Float64Array, longest: number, tolerances: Tolerances): number {
  const { slope, order } = stepper;
  const limit = Math.abs(longest);
  const sizeOfState = errorNorm(y, y, y, tolerances);
  const sizeOfSlope = errorNorm(slope, y, y, tolerances);
  const usable = sizeOfState >= 1e-5 && sizeOfSlope >= 1e-5 && Number.isFinite(sizeOfSlope);
  const first = Math.min(usable ? (0.01 * sizeOfState) / sizeOfSlope : 1e-6, limit);
  const h = first * Math.sign(longest);
  const probe = y.map((value, i) => value + h * slope[i]!);
  const probeSlope = new Float64Array(y.length);
  stepper.evaluate(t + h, probe, probeSlope);
  const change = probeSlope.map((value, i) => value - slope[i]!);
  const curvature = errorNorm(change, y, y, tolerances) / first;
  // A probe that leaves the derivative's domain says nothing about the curvature; step control will.
  if (!Number.isFinite(curvature)) return first;
  const steepest = Math.max(sizeOfSlope, curvature);
  const second = steepest <= 1e-15 ? Math.max(1e-6, first * 1e-3) : (0.01 / steepest) ** (1 / (order + 1));
  return Math.min(100 * first, second, limit);
}
