import { findPointProblem, type InterpolantResult, makeInterpolant, type OutsidePolicy } from './interpolant.js';

/**
 * Smooth curve through points that rises and falls only where they do: piecewise cubic with a
 * continuous slope, no overshoot.
 *
 * Sources: F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer.
 * Anal. 17 (1980) 238–246 (what makes a piece monotone); slopes inside by F. N. Fritsch and J.
 * Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304, as a weighted harmonic mean; slopes at the
 * ends by the three-point formula, limited to keep the shape (C. B. Moler, Numerical Computing with
 * MATLAB, SIAM 2004, section 3.4).
 *
 * @param x - must increase
 * @throws NumericsError `unequal_lengths`
 */
export function interpolateMonotonically(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  outside: 'refuse',
): InterpolantResult<number | undefined>;
export function interpolateMonotonically(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  outside: Exclude<OutsidePolicy, 'refuse'>,
): InterpolantResult;
export function interpolateMonotonically(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  outside: OutsidePolicy,
): InterpolantResult<number | undefined> {
  const problem = findPointProblem(x, y);
  if (problem) return problem;
  const points = Float64Array.from(x);
  const values = Float64Array.from(y);
  return { status: 'ready', interpolant: makeInterpolant(points, values, makeSlopes(points, values), outside) };
}

function makeSlopes(points: Float64Array, values: Float64Array): Float64Array {
  const end = points.length - 1;
  const width = new Float64Array(end);
  const chord = new Float64Array(end);
  for (let i = 0; i < end; i += 1) {
    width[i] = points[i + 1]! - points[i]!;
    chord[i] = (values[i + 1]! - values[i]!) / width[i]!;
  }
  const slopes = new Float64Array(end + 1);
  if (end === 1) return slopes.fill(chord[0]!);
  for (let i = 1; i < end; i += 1) {
    const before = chord[i - 1]!;
    const after = chord[i]!;
    if (before * after <= 0) continue;
    const weightBefore = 2 * width[i]! + width[i - 1]!;
    const weightAfter = width[i]! + 2 * width[i - 1]!;
    slopes[i] = (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
  }
  slopes[0] = endSlope(width[0]!, width[1]!, chord[0]!, chord[1]!);
  slopes[end] = endSlope(width[end - 1]!, width[end - 2]!, chord[end - 1]!, chord[end - 2]!);
  return slopes;
}

function endSlope(width: number, nextWidth: number, chord: number, nextChord: number): number {
  const slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
  if (slope * chord <= 0) return 0;
  const turns = chord * nextChord <= 0;
  return turns && Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope;
}
