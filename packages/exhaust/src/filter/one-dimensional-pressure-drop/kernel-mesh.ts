/** Values on a mesh from 0 to 1: positions, q and v. */
export interface WallFlowMesh {
  readonly x: Float64Array;
  readonly q: Float64Array;
  readonly v: Float64Array;
}

/** An empty mesh of so many intervals. */
export function createMesh(intervals: number): WallFlowMesh {
  const points = intervals + 1;
  return { x: new Float64Array(points), q: new Float64Array(points), v: new Float64Array(points) };
}

/**
 * Spread the points of `target` so that every interval gets the same share of a density given per interval of
 * `source`, with q and v by straight lines in between: a start for the next iteration, not a result.
 */
export function redistribute(source: WallFlowMesh, density: Float64Array, target: WallFlowMesh): void {
  const intervals = source.x.length - 1;
  const wanted = target.x.length - 1;
  let total = 0;
  for (let i = 0; i < intervals; i += 1) total += density[i]! * (source.x[i + 1]! - source.x[i]!);
  let before = 0;
  let i = 0;
  for (let k = 0; k <= wanted; k += 1) {
    const share = (total * k) / wanted;
    let here = density[i]! * (source.x[i + 1]! - source.x[i]!);
    while (before + here < share && i < intervals - 1) {
      before += here;
      i += 1;
      here = density[i]! * (source.x[i + 1]! - source.x[i]!);
    }
    const part = k === wanted ? 1 : Math.min(1, (share - before) / here);
    target.x[k] = source.x[i]! + part * (source.x[i + 1]! - source.x[i]!);
    target.q[k] = source.q[i]! + part * (source.q[i + 1]! - source.q[i]!);
    target.v[k] = source.v[i]! + part * (source.v[i + 1]! - source.v[i]!);
  }
}

/** Turn the residual of every interval into a density of points that evens it out. */
export function densityFrom(mesh: WallFlowMesh, errors: Float64Array): void {
  const worst = errors.reduce((most, error) => Math.max(most, error), 0);
  for (let i = 0; i < errors.length; i += 1) {
    // Third-order residual; the floor keeps quiet stretches from losing all of their points.
    errors[i] = Math.cbrt(errors[i]! / worst + 1e-7) / (mesh.x[i + 1]! - mesh.x[i]!);
  }
}
