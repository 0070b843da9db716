/** A straight line through points with errors in both coordinates. */
export interface LineFit {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptUncertainty: number;
  readonly slopeUncertainty: number;
  /** Weighted sum of squares over its degrees of freedom: near 1 where the uncertainties tell the scatter. */
  readonly reducedChiSquare: number;
  readonly iterations: number;
}

/** One point with its standard uncertainties. */
export interface UncertainPoint {
  readonly x: number;
  readonly y: number;
  readonly uncertaintyX: number;
  readonly uncertaintyY: number;
}

const mostIterations = 200;

/**
 * The best line by D. York, N. Evensen, M. Martinez and J. Delgado, Am. J. Phys. 72 (2004) 367, equations 13, without correlation
 * between the errors of a point. Undefined for fewer than three points, points of one x, or uncertainties that are not above zero.
 */
export function fitLineBothErrors(points: readonly UncertainPoint[]): LineFit | undefined {
  const count = points.length;
  if (
    count < 3 ||
    points.some(({ uncertaintyX, uncertaintyY }) => !(uncertaintyX >= 0 && uncertaintyY >= 0 && uncertaintyX + uncertaintyY > 0))
  )
    return undefined;
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / count;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / count;
  const spread = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  if (!(spread > 0)) return undefined;
  let slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / spread;
  let [centreX, centreY] = [meanX, meanY];
  let iterations = 0;
  let weights: number[] = [];
  for (; iterations < mostIterations; iterations += 1) {
    const b = slope;
    weights = points.map(({ uncertaintyX, uncertaintyY }) => 1 / (uncertaintyY ** 2 + (b * uncertaintyX) ** 2));
    if (!weights.every(Number.isFinite)) return undefined;
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    centreX = points.reduce((sum, { x }, i) => sum + (weights[i] as number) * x, 0) / total;
    centreY = points.reduce((sum, { y }, i) => sum + (weights[i] as number) * y, 0) / total;
    let [top, bottom] = [0, 0];
    points.forEach(({ x, y, uncertaintyX, uncertaintyY }, i) => {
      const weight = weights[i] as number;
      const [u, v] = [x - centreX, y - centreY];
      const beta = weight * (u * uncertaintyY ** 2 + b * v * uncertaintyX ** 2);
      top += weight * beta * v;
      bottom += weight * beta * u;
    });
    if (bottom === 0) return undefined;
    slope = top / bottom;
    if (Math.abs(slope - b) <= 1e-15 * Math.abs(slope)) break;
  }
  const intercept = centreY - slope * centreX;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const adjusted = points.map(({ x, y, uncertaintyX, uncertaintyY }, i) => {
    const [u, v] = [x - centreX, y - centreY];
    return centreX + (weights[i] as number) * (u * uncertaintyY ** 2 + slope * v * uncertaintyX ** 2);
  });
  const meanAdjusted = adjusted.reduce((sum, x, i) => sum + (weights[i] as number) * x, 0) / total;
  const spreadAdjusted = adjusted.reduce((sum, x, i) => sum + (weights[i] as number) * (x - meanAdjusted) ** 2, 0);
  const slopeUncertainty = Math.sqrt(1 / spreadAdjusted);
  const chiSquare = points.reduce((sum, { x, y }, i) => sum + (weights[i] as number) * (y - intercept - slope * x) ** 2, 0);
  return {
    intercept,
    slope,
    interceptUncertainty: Math.sqrt(1 / total + meanAdjusted ** 2 * slopeUncertainty ** 2),
    slopeUncertainty,
    reducedChiSquare: chiSquare / (count - 2),
    iterations,
  };
}
