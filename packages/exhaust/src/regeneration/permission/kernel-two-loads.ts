/** A soot load in kg/m³ with the way up and down that it may be wrong. */
export interface EstimatedLoad {
  readonly load: number;
  readonly uncertainty: number;
}

/** The load that a decision must count: of two the one that reaches higher; undefined where there is none. */
export function countedLoad(...loads: readonly (EstimatedLoad | undefined)[]): EstimatedLoad | undefined {
  return loads.reduce((worst, next) => {
    if (worst === undefined || next === undefined) return worst ?? next;
    return next.load + next.uncertainty > worst.load + worst.uncertainty ? next : worst;
  }, undefined);
}

/** Whether two loads differ by more than both of their uncertainties together. */
export function loadsContradict(first: EstimatedLoad, second: EstimatedLoad): boolean {
  const room = first.uncertainty + second.uncertainty;
  return Math.abs(first.load - second.load) > room * (1 + 1e-9);
}
