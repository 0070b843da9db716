import { fitLinear, type LinearFitProblem } from '@wallflow/numerics/fit';

/** One measurement, SI. */
export interface DropPoint {
  /** Pa. */
  readonly pressureDrop: number;
  /** Actual, m³/s. */
  readonly volumeFlow: number;
  /** Pa·s. */
  readonly viscosity: number;
  /** kg/m³. */
  readonly density: number;
}

export interface ViscousInertialFit {
  readonly status: 'fitted';
  /** a of a·μQ, 1/m³. */
  readonly viscousCoefficient: number;
  /** b of b·ρQ², 1/m⁴. */
  readonly inertialCoefficient: number;
  /** Zero reading of the sensor, Pa; 0 when it was not fitted. */
  readonly offset: number;
  /** Of (a, b), or of (offset, a, b); undefined without scatter or known uncertainty to judge by. */
  readonly covariance: readonly (readonly number[])[] | undefined;
  readonly degreesOfFreedom: number;
  /** Of the points from the fit, Pa; undefined without more points than coefficients. */
  readonly residualStandardDeviation: number | undefined;
}

/** Scatter next to the largest drop below which it is the rounding of a change of units, not a measurement. */
const rounding = 1e-9;

/**
 * Split drops into a part a·μQ and a part b·ρQ² by least squares.
 *
 * @param dropUncertainty - known standard uncertainty of every drop, Pa; left out, it is estimated from the scatter
 * @param withOffset - fit a constant as well, the zero reading of the sensor
 */
export function fitViscousInertial(
  points: readonly DropPoint[],
  dropUncertainty?: number,
  withOffset = false,
): ViscousInertialFit | { readonly status: LinearFitProblem } {
  const fit = fitLinear(
    points.map(({ volumeFlow, viscosity, density }) => [viscosity * volumeFlow, density * volumeFlow ** 2]),
    points.map((point) => point.pressureDrop),
    {
      intercept: withOffset,
      ...(dropUncertainty === undefined ? {} : { standardUncertainties: points.map(() => dropUncertainty) }),
    },
  );
  if (fit.status !== 'fitted') return fit;
  const largest = Math.max(...points.map((point) => Math.abs(point.pressureDrop)));
  const exact = (fit.residualStandardDeviation ?? 0) <= rounding * largest;
  const [offset, viscousCoefficient, inertialCoefficient] = withOffset ? fit.coefficients : [0, ...fit.coefficients];
  return {
    status: 'fitted',
    offset: offset!,
    viscousCoefficient: viscousCoefficient!,
    inertialCoefficient: inertialCoefficient!,
    // Points that repeat each other leave no scatter to judge by.
    covariance: dropUncertainty === undefined && exact ? undefined : fit.covariance,
    degreesOfFreedom: fit.degreesOfFreedom,
    residualStandardDeviation: fit.residualStandardDeviation,
  };
}

/** Free area of a restriction with loss coefficient 1 that would cause an inertial part b·ρQ², m²; undefined for b of 0 or less. */
export function equivalentLossArea(inertialCoefficient: number): number | undefined {
  return inertialCoefficient > 0 ? 1 / Math.sqrt(2 * inertialCoefficient) : undefined;
}
