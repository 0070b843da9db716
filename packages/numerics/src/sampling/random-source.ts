import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

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
