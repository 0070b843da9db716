/** A life of which the mean and the relative standard uncertainty are known, up to a distance beyond which it is worth nothing. */
export interface UncertainLife {
  readonly mean: number;
  readonly uncertainty: number;
  readonly cap: number;
}

/** One of the distances that a life may be used for, with its probability. */
export interface UsefulLife {
  readonly distance: number;
  readonly weight: number;
}

/** Standard deviations beyond which a normal variable is not followed; 1e-15 lies there. */
const farthest = 8;
/** Steps of a quarter of a standard deviation at most: exact to about 1e-6 with two points each. */
const panels = 64;
/** A life known as well as this is exact. */
const exact = 1e-6;
/** Two distances as near as this are the same. */
const same = 1e-9;

const density = (z: number) => Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Nodes and weights of Gauss's rule, two to a step, for a normal variable below z: none lies at z, where a chance may jump. */
function nodesBelow(z: number): readonly { readonly z: number; readonly weight: number }[] {
  const half = (z + farthest) / panels / 2;
  return Array.from({ length: panels }, (_, index) => -farthest + (2 * index + 1) * half)
    .flatMap((middle) => [middle - half / Math.sqrt(3), middle + half / Math.sqrt(3)])
    .map((at) => ({ z: at, weight: half * density(at) }));
}

/** Probability that a standard normal variable is below z. */
export function normalBelow(z: number): number {
  if (z <= -farthest) return 0;
  if (z > 0) return 1 - normalBelow(-z);
  return nodesBelow(z).reduce((sum, { weight }) => sum + weight, 0);
}

/** Lognormal with the mean and standard deviation: a life is never below zero. Standard normal value of a distance. */
function lognormal({ mean, uncertainty }: UncertainLife) {
  const spread = Math.sqrt(Math.log1p(uncertainty ** 2));
  const middle = Math.log(mean) - spread ** 2 / 2;
  return { of: (z: number) => Math.exp(middle + spread * z), at: (distance: number) => (Math.log(distance) - middle) / spread };
}

/**
 * Distances that a life is used for and their probabilities. Where it is cut off by the cap, the probability beyond lies at
 * the cap itself and the rest is integrated up to it, so that the kink of min(life, cap) is a limit of the integral.
 */
export function usefulFilterLives(life: UncertainLife): readonly UsefulLife[] {
  const { mean, uncertainty, cap } = life;
  if (uncertainty < exact) return [{ distance: Math.min(mean, cap), weight: 1 }];
  const { of, at } = lognormal(life);
  const end = Math.min(farthest, at(cap));
  if (end <= -farthest) return [{ distance: cap, weight: 1 }];
  const below = nodesBelow(end).map(({ z, weight }) => ({ distance: of(z), weight }));
  const lives = end < farthest ? [...below, { distance: cap, weight: normalBelow(-end) }] : below;
  const all = lives.reduce((sum, { weight }) => sum + weight, 0);
  return lives.map(({ distance, weight }) => ({ distance, weight: weight / all }));
}

/** Probabilities that the life, as far as it is used, is shorter and longer than a distance; the same counts as neither. */
export function comparedWith(life: UncertainLife, distance: number): { readonly shorter: number; readonly longer: number } {
  const { mean, uncertainty, cap } = life;
  if (distance > cap * (1 + same)) return { shorter: 1, longer: 0 };
  const atCap = distance >= cap * (1 - same);
  if (uncertainty >= exact) {
    const z = distance > 0 ? lognormal(life).at(distance) : Number.NEGATIVE_INFINITY;
    return { shorter: normalBelow(z), longer: atCap ? 0 : normalBelow(-z) };
  }
  const used = Math.min(mean, cap);
  const equal = Math.abs(used - distance) <= same * distance;
  return { shorter: !equal && used < distance ? 1 : 0, longer: !equal && used > distance ? 1 : 0 };
}
