/** Soot in a filter over a time of constant conditions. */
export interface SootBalanceInput {
  /** Soot at the start in kg. */
  readonly initialMass: number;
  /** Engine-out soot, in kg/s. */
  readonly sootFlow: number;
  /** First-order rate constant of burning in 1/s. */
  readonly rate: number;
  /** Duration in s. */
  readonly duration: number;
}

export interface SootBalance {
  /** Soot at the end in kg. */
  readonly finalMass: number;
  /** Soot that came in, in kg. */
  readonly deposited: number;
  /** Soot that burnt, in kg. */
  readonly oxidised: number;
}

/** (1 − e^(−x)) / x, also for x near or at zero. */
function decayMean(x: number): number {
  return x === 0 ? 1 : -Math.expm1(-x) / x;
}

/** 1 − (1 − e^(−x)) / x without loss of digits for small x. */
function decayMeanLoss(x: number): number {
  return x < 1e-3 ? x / 2 - x ** 2 / 6 + x ** 3 / 24 - x ** 4 / 120 : 1 - decayMean(x);
}

/** Solution of dm/dt = ṁ_in − k m with constant ṁ_in and k. Never negative. */
export function sootBalance({ initialMass, sootFlow, rate, duration }: SootBalanceInput): SootBalance {
  const exponent = rate * duration;
  const deposited = sootFlow * duration;
  return {
    finalMass: initialMass * Math.exp(-exponent) + deposited * decayMean(exponent),
    deposited,
    oxidised: -initialMass * Math.expm1(-exponent) + deposited * decayMeanLoss(exponent),
  };
}

/** Soot mass at which as much burns as comes in, in kg; undefined when nothing burns. */
export function equilibriumSootMass(sootFlow: number, rate: number): number | undefined {
  return rate > 0 && Number.isFinite(sootFlow / rate) ? sootFlow / rate : undefined;
}

/** Least mass of nitrogen dioxide per mass of carbon: C + NO₂ → CO + NO. Twice as much to CO₂. */
export const nitrogenDioxidePerCarbon = 46.0055 / 12.011;
