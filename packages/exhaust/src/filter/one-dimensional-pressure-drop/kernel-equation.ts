/**
 * The two-channel model of Bissett (Chem. Eng. Sci. 39, 1984) for one density, reduced to the part q of the flow that
 * is still in the inlet channels at x = z/L, and to v = -dq/dx, the wall flow over its mean:
 *
 * q' = -v, (1 + 2 e |v|) v' = -A q + B (1 - q) + (C1 q + C2 (1 - q)) v, q(0) = 1, q(1) = 0.
 *
 * All five numbers are pressure scales over the viscous wall drop D at even wall flow.
 */
export interface WallFlowEquation {
  /** A: friction of the full flow along the inlet channels. */
  readonly inletFriction: number;
  /** B: friction of the full flow along the outlet channels. */
  readonly outletFriction: number;
  /** C1: twice the momentum flux ρ U² into the inlet channels. */
  readonly inletInertia: number;
  /** C2: the same out of the outlet channels. */
  readonly outletInertia: number;
  /** e: Forchheimer drop of the wall at even flow. */
  readonly wallInertia: number;
}

/** v' at a point. */
export function wallFlowSlope(equation: WallFlowEquation, q: number, v: number): number {
  const { inletFriction, outletFriction, inletInertia, outletInertia, wallInertia } = equation;
  const force = -inletFriction * q + outletFriction * (1 - q) + (inletInertia * q + outletInertia * (1 - q)) * v;
  return force / (1 + 2 * wallInertia * Math.abs(v));
}

/** v' at a point and its derivatives by q and by v, written into `into`. */
export function linearise(equation: WallFlowEquation, q: number, v: number, into: Float64Array): void {
  const { inletFriction, outletFriction, inletInertia, outletInertia, wallInertia } = equation;
  const drag = 1 + 2 * wallInertia * Math.abs(v);
  const momentum = inletInertia * q + outletInertia * (1 - q);
  const slope = (-inletFriction * q + outletFriction * (1 - q) + momentum * v) / drag;
  into[0] = slope;
  into[1] = (-inletFriction - outletFriction + (inletInertia - outletInertia) * v) / drag;
  into[2] = (momentum - 2 * wallInertia * Math.sign(v) * slope) / drag;
}

/**
 * The solution without inertia: q settles towards B/(A + B) in layers of relative width 1/√(A + B) at either end.
 * Written in decaying exponentials so that it cannot overflow for nearly full channels.
 */
export function linearWallFlow({ inletFriction, outletFriction }: WallFlowEquation): (x: number) => { q: number; v: number } {
  const sum = inletFriction + outletFriction;
  const rate = Math.sqrt(sum);
  const level = outletFriction / sum;
  const decay = Math.exp(-rate);
  const gap = -Math.expm1(-2 * rate);
  const left = (1 - level + level * decay) / gap;
  const right = (-level - (1 - level) * decay) / gap;
  return (x) => {
    const near = left * Math.exp(-rate * x);
    const far = right * Math.exp(-rate * (1 - x));
    return { q: level + near + far, v: rate * (near - far) };
  };
}
