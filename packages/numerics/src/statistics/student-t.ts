import { findRoot } from '../roots/find-root.js';

/** Quadrature points are this far apart, and there are so many on either side of zero. */
const SPACING = 1 / 32;
const POINTS = 160;

/**
 * Area under the t density beyond `from`, up to a constant factor, by double-exponential quadrature
 * (H. Takahasi and M. Mori, Publ. RIMS Kyoto Univ. 9 (1974) 721–741). Needs no gamma function, and
 * the normal distribution is no special case but for the limit of the density.
 */
function areaBeyond(from: number, degreesOfFreedom: number): number {
  const scale = Math.max(1, from);
  let sum = 0;
  for (let k = -POINTS; k <= POINTS; k += 1) {
    const x = k * SPACING;
    const exponent = 0.5 * Math.PI * Math.sinh(x);
    const t = from + scale * Math.exp(exponent);
    const logarithm = degreesOfFreedom === Infinity ? -0.5 * t * t : -0.5 * (degreesOfFreedom + 1) * Math.log1p((t * t) / degreesOfFreedom);
    sum += Math.exp(logarithm + exponent) * Math.cosh(x);
  }
  return scale * sum;
}

/**
 * Quantile of Student's t distribution: the value that a t variable stays below with the given
 * probability, to about 12 digits. Degrees of freedom may be fractional, or infinite (the normal
 * distribution). `undefined` for a probability outside of 1e-12 to 1 - 1e-12 or degrees of freedom
 * below 0.5.
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number | undefined {
  const tail = Math.min(probability, 1 - probability);
  if (!(tail >= 1e-12) || !(degreesOfFreedom >= 0.5)) return undefined;
  if (tail === 0.5) return 0;
  const half = areaBeyond(0, degreesOfFreedom);
  // Logarithms make the search even over all sizes of t; an area that underflows is far too small.
  const excess = (logarithm: number): number => {
    const area = areaBeyond(Math.exp(logarithm), degreesOfFreedom);
    return area > 0 ? Math.log(area / half / (2 * tail)) : -1e4;
  };
  const found = findRoot(excess, -40, 60);
  if (found.status !== 'converged') return undefined;
  const size = Math.exp(found.root);
  return probability < 0.5 ? -size : size;
}

/**
 * Factor by which a standard uncertainty is multiplied to cover the given probability on both sides
 * together (JCGM 100:2008, G.3.2, `t_p(ν)`). `undefined` as for {@link studentTQuantile}.
 *
 * JCGM 100:2008, G.4.1 suggests to truncate effective degrees of freedom to a whole number first.
 *
 * @param probability - 0.95, say
 */
export function coverageFactor(probability: number, degreesOfFreedom = Infinity): number | undefined {
  return studentTQuantile((1 + probability) / 2, degreesOfFreedom);
}
