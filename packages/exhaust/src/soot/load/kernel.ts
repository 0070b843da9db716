/** What was measured, by the quantity it was measured in. */
export type SootLoadGiven = 'mass' | 'load' | 'surface-load' | 'percent-of-trigger' | 'percent-of-limit';

/** What turns one way of stating a soot load into another. */
export interface SootLoadReference {
  /** Volume of the filter in m³, outer dimensions of the honeycomb. */
  readonly filterVolume: number;
  /** Filtration area per filter volume in 1/m; only for loads per area. */
  readonly filtrationAreaPerVolume?: number | undefined;
  /** Load at which a regeneration is triggered in kg/m³. */
  readonly triggerLoad?: number | undefined;
  /** Load that must not be exceeded in kg/m³. */
  readonly limitLoad?: number | undefined;
}

/** Filtration area per filter volume in 1/m of square cells, inlet channels only: 2 α / s² with s = 1/√σ and α = s − w. */
export function squareCellFiltrationArea(cellDensity: number, wallThickness: number): number {
  const pitch = 1 / Math.sqrt(cellDensity);
  return (2 * (pitch - wallThickness)) / pitch ** 2;
}

/** Soot load in kg/m³ from a value in the SI unit of what is given; undefined when the reference for it is missing. */
export function sootLoadFrom(given: SootLoadGiven, value: number, reference: SootLoadReference): number | undefined {
  switch (given) {
    case 'mass':
      return value / reference.filterVolume;
    case 'load':
      return value;
    case 'surface-load':
      return times(value, reference.filtrationAreaPerVolume);
    case 'percent-of-trigger':
      return times(value, reference.triggerLoad);
    case 'percent-of-limit':
      return times(value, reference.limitLoad);
  }
}

/** All ways of stating a soot load in kg/m³ for which the reference is known; fractions, not percent numbers. */
export function sootLoadIn(load: number, reference: SootLoadReference) {
  const over = (base: number | undefined) => (base === undefined ? undefined : load / base);
  return {
    mass: load * reference.filterVolume,
    surfaceLoad: over(reference.filtrationAreaPerVolume),
    fractionOfTrigger: over(reference.triggerLoad),
    fractionOfLimit: over(reference.limitLoad),
  };
}

function times(value: number, factor: number | undefined): number | undefined {
  return factor === undefined ? undefined : value * factor;
}
