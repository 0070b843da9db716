import { requireEqualLengths } from '../errors.js';
import { solveLeastSquares } from './least-squares.js';
import { type FitWeights, rootWeights } from './weights.js';

/** Options of {@link fitLinear}. */
export interface LinearFitOptions extends FitWeights {
  /** Whether a constant is fitted as well, as the first coefficient. Default true. */
  readonly intercept?: boolean;
}

/** Why no line could be fitted. */
export type LinearFitProblem =
  /** Fewer points than coefficients. */
  | 'too_few_points'
  /** A predictor is constant, zero, or a combination of others. */
  | 'rank_deficient'
  | 'not_finite'
  /** A weight or standard uncertainty is not above zero. */
  | 'invalid_weights';

/** A fitted linear model. */
export interface LinearFit {
  readonly status: 'fitted';
  /** The intercept first when one was fitted, then one for each predictor. */
  readonly coefficients: readonly number[];
  /** Of the coefficients, row by row; `undefined` when as many points as coefficients leave no scatter to judge by. */
  readonly covariance: readonly number[][] | undefined;
  /** Square roots of the diagonal of `covariance`. */
  readonly standardErrors: readonly number[] | undefined;
  /** Measured less fitted, not weighted. */
  readonly residuals: readonly number[];
  /** Weighted sum of squared residuals. */
  readonly sumOfSquares: number;
  /** Square root of the weighted sum of squared residuals over the degrees of freedom. */
  readonly residualStandardDeviation: number | undefined;
  readonly degreesOfFreedom: number;
  readonly intercept: boolean;
  /** `rSquaredAboutMean` with an intercept, `rSquaredAboutZero` without one. */
  readonly rSquared: number | undefined;
  /** 1 - Σ w r² / Σ w (y - ȳ)²; `undefined` when y does not vary. Can be negative without an intercept. */
  readonly rSquaredAboutMean: number | undefined;
  /** 1 - Σ w r² / Σ w y²; `undefined` when y is zero throughout. */
  readonly rSquaredAboutZero: number | undefined;
}

/** A fit, or why there is none. */
export type LinearFitResult = LinearFit | { readonly status: LinearFitProblem };

/**
 * Fits `y = b0 + b1 x1 + b2 x2 + …` by weighted least squares. Predictors are taken about their
 * weighted means first when there is an intercept, which saves digits. For confidence limits of a
 * coefficient see `confidenceInterval` of the main entry, with the fit's degrees of freedom.
 *
 * Source: N. R. Draper and H. Smith, Applied Regression Analysis, 3rd ed. 1998, chapters 1, 5 and 9;
 * R² without intercept as in the NIST Statistical Reference Datasets (NoInt1).
 *
 * @param predictors - for each point its predictor values: `[[x1, x2], …]`
 * @throws NumericsError `unequal_lengths` when the lists do not fit together; `invalid_argument` for
 * weights and standard uncertainties at once
 */
export function fitLinear(
  predictors: ReadonlyArray<ArrayLike<number>>,
  y: ArrayLike<number>,
  options: LinearFitOptions = {},
): LinearFitResult {
  requireEqualLengths('predictors', predictors, 'y', y);
  const intercept = options.intercept ?? true;
  const count = y.length;
  const width = predictors[0]?.length ?? 0;
  for (const row of predictors) requireEqualLengths('a row of predictors', row, 'the first row', { length: width });
  const roots = rootWeights(options, count);
  if (!roots) return { status: 'invalid_weights' };
  const size = width + (intercept ? 1 : 0);
  if (count < size || size === 0) return { status: 'too_few_points' };
  const measured = Float64Array.from(y);
  const columns = Array.from({ length: width }, (_, j) => Float64Array.from(predictors, (row) => row[j]!));
  if (![measured, ...columns].every((column) => column.every(Number.isFinite))) return { status: 'not_finite' };

  const about = (values: Float64Array) => (intercept ? weightedCentre(values, roots) : 0);
  const centres = columns.map(about);
  const centreOfY = about(measured);
  const weightedAbout = (values: Float64Array, centre: number) => values.map((value, i) => (value - centre) * roots[i]!);
  const solved = solveLeastSquares(
    columns.map((column, j) => weightedAbout(column, centres[j]!)),
    weightedAbout(measured, centreOfY),
  );
  if (!solved) return { status: 'rank_deficient' };

  const slopes = solved.solution;
  const atCentres = slopes.reduce((sum, slope, j) => sum + slope * centres[j]!, 0);
  const coefficients = intercept ? [centreOfY - atCentres, ...slopes] : slopes;
  // From the centred values: the intercept would bring its rounding into every residual.
  const residuals = Array.from(measured, (value, i) =>
    slopes.reduce((rest, slope, j) => rest - slope * (columns[j]![i]! - centres[j]!), value - centreOfY),
  );
  const sumOfSquares = (values: ArrayLike<number>) => Array.from(values).reduce((sum, value, i) => sum + (value * roots[i]!) ** 2, 0);
  const unexplained = sumOfSquares(residuals);
  const centre = weightedCentre(measured, roots);
  const rSquaredAboutMean = explainedShare(unexplained, sumOfSquares(measured.map((value) => value - centre)));
  const rSquaredAboutZero = explainedShare(unexplained, sumOfSquares(measured));

  const degreesOfFreedom = count - size;
  const variance = degreesOfFreedom > 0 ? unexplained / degreesOfFreedom : undefined;
  const scale = options.standardUncertainties ? 1 : variance;
  const inverse = intercept
    ? addIntercept(solved.inverseGram, centres, 1 / sumOfSquares(new Float64Array(count).fill(1)))
    : solved.inverseGram;
  const covariance = scale === undefined ? undefined : inverse.map((row) => row.map((value) => value * scale));
  if (!coefficients.every(Number.isFinite) || !Number.isFinite(unexplained)) return { status: 'not_finite' };
  return {
    status: 'fitted',
    coefficients,
    covariance,
    standardErrors: covariance?.map((row, i) => Math.sqrt(row[i]!)),
    residuals,
    sumOfSquares: unexplained,
    residualStandardDeviation: variance === undefined ? undefined : Math.sqrt(variance),
    degreesOfFreedom,
    intercept,
    rSquared: intercept ? rSquaredAboutMean : rSquaredAboutZero,
    rSquaredAboutMean,
    rSquaredAboutZero,
  };
}

function weightedCentre(values: Float64Array, roots: Float64Array): number {
  let sum = 0;
  let weights = 0;
  for (let i = 0; i < values.length; i += 1) {
    const weight = roots[i]! ** 2;
    weights += weight;
    sum += weight * values[i]!;
  }
  return sum / weights;
}

function explainedShare(unexplained: number, total: number): number | undefined {
  return total > 0 ? 1 - unexplained / total : undefined;
}

/** Covariance (up to the scale) of intercept and slopes from that of the slopes about the centres. */
function addIntercept(slopes: number[][], centres: readonly number[], ofMean: number): number[][] {
  const shared = slopes.map((row) => -row.reduce((sum, value, j) => sum + value * centres[j]!, 0));
  const ofIntercept = shared.reduce((sum, value, j) => sum - value * centres[j]!, ofMean);
  return [[ofIntercept, ...shared], ...slopes.map((row, j) => [shared[j]!, ...row])];
}
