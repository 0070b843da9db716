import { makeRandomSource, type RandomSource, type SamplingProblem, sampleByFit, weightsFromLogs } from '@wallflow/numerics/sampling';
import { describe, expect, it } from 'vitest';

// Simulation-based calibration (S. Talts, M. Betancourt, D. Simpson, A. Vehtari and A. Gelman, arXiv 1804.06788, 2018): what was
// drawn from the prior has every rank among draws from its posterior equally often, if the sampler is right.

/** So many degrees of freedom that Student's t is a normal distribution. */
const normal = 1e9;
const others = 9;
/** 99.9 % of χ² with 9 degrees of freedom lie below (tables; from memory). */
const bound = 27.88;

/** One draw of a weighted sample. */
function pick(weights: Float64Array, uniform: number): number {
  let left = uniform;
  for (let k = 0; k < weights.length; k += 1) {
    left -= weights[k]!;
    if (left <= 0) return k;
  }
  return weights.length - 1;
}

/** χ² of the ranks of truths among nine draws of their posteriors; those of a discrete truth that tie fall anywhere among them. */
function unevenness(cases: number, one: (source: RandomSource, seed: number) => { truth: number; draw: () => number }): number {
  const source = makeRandomSource(20_181);
  const counts = new Array<number>(others + 1).fill(0);
  for (let seed = 1; seed <= cases; seed += 1) {
    const { truth, draw } = one(source, seed);
    const drawn = Array.from({ length: others }, draw);
    const ties = drawn.filter((value) => value === truth).length;
    counts[drawn.filter((value) => value < truth).length + Math.floor(source.uniform() * (ties + 1))]! += 1;
  }
  const even = cases / (others + 1);
  return counts.reduce((sum, count) => sum + (count - even) ** 2 / even, 0);
}

/** Readings with normal errors, whose mean and scale a point gives. */
function readings(
  observed: readonly number[],
  dimension: number,
  of: (point: Float64Array) => { mean: number; scale: number },
): SamplingProblem {
  return {
    dimension,
    observed,
    degreesOfFreedom: normal,
    predict: (point, expected, scale) => {
      const { mean, scale: error } = of(point);
      expected.fill(mean);
      scale.fill(error);
      return true;
    },
  };
}

/** A normal mean, read three times with error 0.4; the sampler is told `told`. */
const normalMean =
  (told: number, shift = 0) =>
  (source: RandomSource, seed: number) => {
    const truth = source.normal();
    const observed = [0, 0, 0].map(() => truth + shift + 0.4 * source.normal());
    const { points, weights } = sampleByFit(
      readings(observed, 1, (point) => ({ mean: point[0]!, scale: told })),
      { draws: 60, seed },
    );
    return { truth, draw: () => points[pick(weights, source.uniform())]![0]! };
  };

/** Share of the standard normal distribution below z (Abramowitz and Stegun 26.2.17, within 7.5e-8). */
function below(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}

/** Mean and variance unknown: the precision is exponential (gamma of shape 1), the mean normal with twice the variance. */
const meanAndVariance = (point: Float64Array) => {
  const scale = 1 / Math.sqrt(-Math.log(below(point[1]!)));
  return { mean: Math.SQRT2 * scale * point[0]!, scale };
};

/** Three explanations of two readings: a mean and the spread of an offset that both share; error 0.5. */
const explanations = [
  { chance: 0.6, mean: 0, spread: 0.5 },
  { chance: 0.3, mean: 1.5, spread: 1 },
  { chance: 0.1, mean: -2, spread: 2 },
] as const;

function chancesBySampler(observed: readonly number[], seed: number, prior: readonly number[] = explanations.map(({ chance }) => chance)) {
  const drawn = explanations.map(({ mean, spread }, k) =>
    sampleByFit(
      readings(observed, 1, (point) => ({ mean: mean + spread * point[0]!, scale: 0.5 })),
      { draws: 40, seed: 10 * seed + k },
    ),
  );
  return { drawn, chances: weightsFromLogs(drawn.map(({ logEvidence }, k) => logEvidence + Math.log(prior[k]!))) };
}

const mixture = (prior?: readonly number[]) => (source: RandomSource, seed: number) => {
  const which = pick(
    Float64Array.from(explanations, ({ chance }) => chance),
    source.uniform(),
  );
  const { mean, spread } = explanations[which]!;
  const offset = mean + spread * source.normal();
  const { chances } = chancesBySampler(
    [0, 0].map(() => offset + 0.5 * source.normal()),
    seed,
    prior,
  );
  return { truth: which, draw: () => pick(chances, source.uniform()) };
};

describe('the ranks of what was hidden among the draws', () => {
  it('are even for a normal mean', () => {
    expect(unevenness(400, normalMean(0.4))).toBeLessThan(bound);
  });

  it.each([
    ['half as wide', normalMean(0.2)],
    ['twice as wide', normalMean(0.8)],
    ['shifted by a fifth of the error of a reading', normalMean(0.4, 0.08)],
  ])('are not for a posterior that is %s', (_, wrong) => {
    expect(unevenness(400, wrong)).toBeGreaterThan(bound);
  });

  it.each([
    ['mean', (point: Float64Array) => meanAndVariance(point).mean],
    ['scale', (point: Float64Array) => meanAndVariance(point).scale],
  ])('are even for the %s where the variance is unknown too', (_, value) => {
    const chi = unevenness(300, (source, seed) => {
      const truth = Float64Array.of(source.normal(), source.normal());
      const { mean, scale } = meanAndVariance(truth);
      const observed = [0, 0, 0, 0, 0].map(() => mean + scale * source.normal());
      const { points, weights } = sampleByFit(readings(observed, 2, meanAndVariance), { draws: 100, seed });
      return { truth: value(truth), draw: () => value(points[pick(weights, source.uniform())]!) };
    });
    expect(chi).toBeLessThan(bound);
  });

  it('are even for one of three explanations, and not where their starting chances are turned round', () => {
    expect(unevenness(300, mixture())).toBeLessThan(bound);
    expect(unevenness(300, mixture([0.1, 0.3, 0.6]))).toBeGreaterThan(bound);
  });
});

describe('the draws have the closed form', () => {
  it('of a normal mean and variance', () => {
    // Normal-gamma, shape 1, rate 1, half an observation at 0: n = 5, mean 1, sum of squares about it 4.
    const observed = [-0.264911064, 0.367544468, 1, 1.632455532, 2.264911064];
    const { points, weights } = sampleByFit(readings(observed, 2, meanAndVariance), { draws: 4000 });
    const over = (value: (point: Float64Array) => number) => points.reduce((sum, point, k) => sum + weights[k]! * value(point), 0);
    const [shape, rate] = [1 + 5 / 2, 1 + 4 / 2 + (0.5 * 5 * 1) / (2 * 5.5)];
    expect(over((point) => meanAndVariance(point).mean)).toBeCloseTo(5 / 5.5, 1);
    // Standard error of the mean precision: √shape / rate over the root of the effective size, about 0.02.
    expect(Math.abs(over((point) => meanAndVariance(point).scale ** -2) - shape / rate)).toBeLessThan(0.06);
  });

  it('of the chances of three explanations', () => {
    const observed = [0.9, 1.4] as const;
    // Two readings with a common offset: the sum and the difference are independent normals, the difference tells nothing.
    const mean = (observed[0] + observed[1]) / 2;
    const weights = explanations.map(({ chance, mean: at, spread }) => {
      const variance = spread ** 2 + 0.5 ** 2 / 2;
      return (chance * Math.exp(-((mean - at) ** 2) / (2 * variance))) / Math.sqrt(variance);
    });
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const { chances } = chancesBySampler(observed, 3);
    weights.forEach((weight, k) => {
      expect(Math.abs(chances[k]! - weight / total)).toBeLessThan(0.05);
    });
  });
});

describe('the options of a problem', () => {
  const known = readings([1.2], 2, (point) => ({ mean: point[0]!, scale: 0.5 }));
  const mean = ({ points, weights }: ReturnType<typeof sampleByFit>, index: number) =>
    points.reduce((sum, point, k) => sum + weights[k]! * point[index]!, 0);

  it('weigh: evidence that only weights the draws counts as a reading does', () => {
    // A second reading of 0.4 with error 1: precision 1 + 4 + 1, mean (4 · 1.2 + 0.4) / 6; its evidence is N(0.4; 0.96, 1.2).
    const weighed = sampleByFit({ ...known, weigh: (point) => -((point[0]! - 0.4) ** 2) / 2 }, { draws: 2000 });
    const plain = sampleByFit(known, { draws: 2000 });
    expect(Math.abs(mean(weighed, 0) - 5.2 / 6)).toBeLessThan(0.05);
    expect(weighed.logEvidence - plain.logEvidence).toBeCloseTo(-(0.56 ** 2) / (2 * 1.2) - Math.log(1.2) / 2, 1);
  });

  it('weigh: what it calls impossible gets no weight', () => {
    const { points, weights } = sampleByFit({ ...known, weigh: (point) => (point[1]! > 0 ? 0 : -Infinity) }, { draws: 200 });
    expect(points.every((point, k) => point[1]! > 0 || weights[k] === 0)).toBe(true);
    expect(weights.some((weight) => weight > 0)).toBe(true);
  });

  it('weigh: the same for every point changes the evidence alone', () => {
    const [plain, weighed] = [sampleByFit(known), sampleByFit({ ...known, weigh: () => Math.log(0.3) })];
    expect(weighed.logEvidence - plain.logEvidence).toBeCloseTo(Math.log(0.3), 9);
    weighed.weights.forEach((weight, k) => {
      expect(weight).toBeCloseTo(plain.weights[k]!, 12);
    });
  });

  it('silent: an unknown that no reading depends on is not tried, and the draws are the same', () => {
    const [asked, silent] = [sampleByFit(known, { draws: 400 }), sampleByFit({ ...known, silent: new Set([1]) }, { draws: 400 })];
    expect(silent.points).toEqual(asked.points);
    expect(silent.weights).toEqual(asked.weights);
    expect(silent.evaluations).toBeLessThan(asked.evaluations);
    expect(Math.abs(mean(silent, 1))).toBeLessThan(0.2);
  });
});
