import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Shape of an input's distribution; all are scaled to its value and standard uncertainty. */
export type DistributionShape =
  | 'normal'
  /** Any value within ± √3 standard uncertainties is as likely. */
  | 'rectangular'
  /** Symmetric triangle over ± √6 standard uncertainties. */
  | 'triangular'
  /** Values at the ends are likelier: a sine of unknown phase, over ± √2 standard uncertainties. */
  | 'arcsine'
  /**
   * Student's t, `value + standardUncertainty · t` (JCGM 101:2008, 6.4.9). Needs degrees of freedom
   * and has a larger standard deviation than the standard uncertainty.
   */
  | 'student_t';

/** Draws of one standardised variable. */
export interface RandomSource {
  /** Uniform, from 0 (inclusive) to 1 (exclusive). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/** A repeatable source of random numbers (xoroshiro128+ of the pure-rand library). */
export function makeRandomSource(seed: number): RandomSource {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  let spare: number | undefined;
  return {
    uniform,
    // Polar method: G. Marsaglia and T. A. Bray, SIAM Review 6 (1964) 260–264.
    normal: () => {
      if (spare !== undefined) {
        const value = spare;
        spare = undefined;
        return value;
      }
      for (;;) {
        const x = 2 * uniform() - 1;
        const y = 2 * uniform() - 1;
        const square = x * x + y * y;
        if (square >= 1 || square === 0) continue;
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = y * scale;
        return x * scale;
      }
    },
  };
}

/** One draw of a variable with mean 0 and, but for Student's t, standard deviation 1. */
export function drawStandardised(source: RandomSource, shape: DistributionShape, degreesOfFreedom: number): number {
  switch (shape) {
    case 'normal':
      return source.normal();
    case 'rectangular':
      return Math.sqrt(3) * (2 * source.uniform() - 1);
    case 'triangular':
      return Math.sqrt(6) * (source.uniform() + source.uniform() - 1);
    case 'arcsine':
      return Math.SQRT2 * Math.cos(2 * Math.PI * source.uniform());
    case 'student_t':
      return degreesOfFreedom === Infinity
        ? source.normal()
        : source.normal() / Math.sqrt(chiSquared(source, degreesOfFreedom) / degreesOfFreedom);
  }
}

/** Chi-squared variable as a gamma variable: G. Marsaglia and W. W. Tsang, ACM Trans. Math. Softw. 26 (2000) 363–372. */
function chiSquared(source: RandomSource, degreesOfFreedom: number): number {
  const shape = degreesOfFreedom / 2;
  if (shape < 1) return chiSquared(source, degreesOfFreedom + 2) * (1 - source.uniform()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = source.normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - source.uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v;
  }
}
