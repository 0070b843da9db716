import { effectiveSampleSize, sampleByFit, weightedQuantiles, weightsFromLogs } from '@wallflow/numerics/sampling';
import { describe, expect, it } from 'vitest';

/** So many degrees of freedom that Student's t is a normal distribution. */
const normal = 1e9;

const normalDensity = (x: number, variance: number) => Math.exp((-x * x) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);

/** One unknown, read with normal error s. */
const oneReading = (y: number, s: number) => ({
  dimension: 1,
  observed: [y],
  degreesOfFreedom: normal,
  predict: (point: Float64Array, expected: Float64Array, scale: Float64Array) => {
    expected[0] = point[0]!;
    scale[0] = s;
    return true;
  },
});

const meanOf = (values: readonly number[], weights: Float64Array) => values.reduce((sum, value, i) => sum + value * weights[i]!, 0);

describe('weights', () => {
  it('have the effective size of the worked example', () => {
    // W = .5 .3 .1 .05 .05 gives 1 / 0.355.
    expect(effectiveSampleSize([0.5, 0.3, 0.1, 0.05, 0.05])).toBeCloseTo(2.8169, 4);
  });

  it('come from logarithms far below the range of doubles', () => {
    expect([...weightsFromLogs([-2000, -2000 + Math.log(3), -Infinity])]).toEqual([expect.closeTo(0.25, 12), expect.closeTo(0.75, 12), 0]);
  });

  it('put a quantile between draws', () => {
    expect(weightedQuantiles([3, 1, 2], [1, 1, 1], [0.5])).toEqual([2]);
    expect(weightedQuantiles([1, 2], [1, 3], [0.5])[0]).toBeCloseTo(1.75, 12);
    expect(weightedQuantiles([], [], [0.5])).toEqual([]);
  });
});

describe('draws around a fit', () => {
  // Conjugate: the evidence is N(y; 0, 1 + s²), the posterior N(y / (1 + s²), s² / (1 + s²)).
  it.each([
    [0, 1],
    [2, 0.2],
    [3, 0.05],
    [6, 0.01],
  ])('give the closed form for a reading of %f with error %f', (y, s) => {
    const { points, weights, logEvidence, effectiveSize } = sampleByFit(oneReading(y, s), { draws: 1000 });
    const values = points.map((point) => point[0]!);
    const mean = meanOf(values, weights);
    const spread = Math.sqrt(
      meanOf(
        values.map((value) => (value - mean) ** 2),
        weights,
      ),
    );
    const exact = Math.sqrt((s * s) / (1 + s * s));
    // The likelihood leaves out the factor 1/√(2π).
    expect(logEvidence).toBeCloseTo(Math.log(normalDensity(y, 1 + s * s) * Math.sqrt(2 * Math.PI)), 1);
    expect(Math.abs(mean - y / (1 + s * s))).toBeLessThan(0.15 * exact);
    expect(spread / exact).toBeGreaterThan(0.9);
    expect(spread / exact).toBeLessThan(1.1);
    // Draws from the prior alone would leave 0.8 in a thousand for a reading of 3 with error 0.05.
    expect(effectiveSize / points.length).toBeGreaterThan(0.3);
  });

  it('give the evidence of two readings of three unknowns', () => {
    // y = A z + e: the evidence is normal with covariance A Aᵀ + s² I.
    const rows = [
      [1, 2, 0],
      [0, 1, -1],
    ];
    const [s, observed] = [0.3, [2.5, -1.2]];
    const { logEvidence } = sampleByFit(
      {
        dimension: 3,
        observed,
        degreesOfFreedom: normal,
        predict: (point, expected, scale) => {
          rows.forEach((row, i) => {
            expected[i] = row.reduce((sum, a, j) => sum + a * point[j]!, 0);
            scale[i] = s;
          });
          return true;
        },
      },
      { draws: 4000 },
    );
    const [a, b, c] = [5 + s * s, 2, 2 + s * s];
    const determinant = a * c - b * b;
    const [x, y] = observed as [number, number];
    const square = (c * x * x - 2 * b * x * y + a * y * y) / determinant;
    expect(logEvidence).toBeCloseTo(-square / 2 - Math.log(determinant) / 2, 1);
  });

  it('find both modes of a reading of a square', () => {
    const problem = {
      dimension: 1,
      observed: [1],
      degreesOfFreedom: 4,
      predict: (point: Float64Array, expected: Float64Array, scale: Float64Array) => {
        expected[0] = point[0]! ** 2;
        scale[0] = 0.1;
        return true;
      },
    };
    const { points, weights } = sampleByFit(problem, { draws: 1000 });
    const right = points.reduce((sum, point, i) => sum + (point[0]! > 0 ? weights[i]! : 0), 0);
    expect(right).toBeGreaterThan(0.35);
    expect(right).toBeLessThan(0.65);
  });

  it('are the same for the same seed, and others for another', () => {
    const draw = (seed: number) => sampleByFit(oneReading(1, 0.3), { seed, draws: 100 }).logEvidence;
    expect(draw(5)).toBe(draw(5));
    expect(draw(5)).not.toBe(draw(6));
  });

  it('say that nothing is possible', () => {
    const { logEvidence, effectiveSize } = sampleByFit({ dimension: 2, observed: [1], degreesOfFreedom: 4, predict: () => false });
    expect(logEvidence).toBe(-Infinity);
    expect(effectiveSize).toBe(0);
  });
});
