import type { Vehicle } from './evidence-input.js';

/** How far the basis of a prior was checked. */
export type PriorMark = 'read' | 'abstract' | 'from memory' | 'derived here' | 'common practice, no source';

/** A value before anything is measured, and what it rests on. */
export interface Prior {
  readonly label: string;
  /** Median, SI. */
  readonly median: number;
  /** Geometric standard deviation: two thirds lie within a factor of this. */
  readonly spread: number;
  readonly basis: string;
  readonly mark: PriorMark;
}

/** All that is assumed of the filter, the engine and the sensor of one vehicle. */
export interface Priors {
  readonly volume: Prior;
  /** Length of the body if it is known, m. */
  readonly length?: number;
  readonly cellDensity: Prior;
  readonly wallThickness: Prior;
  readonly wallPermeability: Prior;
  /** Soot permeability times packing density, kg/m: what a gram of soot adds to the drop. */
  readonly sootFactor: Prior;
  readonly sootDensity: Prior;
  /** Rise of the wall's resistance by soot in its pores, over that of the clean wall. */
  readonly deepBedRise: Prior;
  readonly ashPermeability: Prior;
  readonly ashLoad: Prior;
  /** Soot load at which the control unit asks for a regeneration, kg/m³. */
  readonly trigger: Prior;
  /** Soot that a sound engine brings in, load over distance, kg/m⁴. */
  readonly sootRate: Prior;
}

const heavyFrom = 3.4e-3;

export const dutyOf = ({ duty, displacement }: Vehicle): 'light' | 'heavy' => duty ?? (displacement < heavyFrom ? 'light' : 'heavy');

const known = (label: string, value: number, spread: number): Prior => ({
  label,
  median: value,
  spread,
  basis: 'entered',
  mark: 'common practice, no source',
});

const thousandKilometres = 1e6;
const usualDistance = 140 * thousandKilometres;

/** Typical values for this engine, replaced by what is known. */
export function priorsOf(vehicle: Vehicle): Priors {
  const { displacement, distance, weighedAsh, filter = {} } = vehicle;
  const light = dutyOf(vehicle) === 'light';
  const volume: Prior =
    filter.volume !== undefined
      ? known('Filter volume', filter.volume, 1.01)
      : {
          label: 'Filter volume',
          median: displacement * (light ? 1.3 : 1.65),
          spread: 1.3,
          basis: 'volume over displacement of eight filters in published tests, 0.9 to 2.4',
          mark: 'derived here',
        };
  // Ash comes with distance; without the distance its spread adds.
  const travelled = (distance ?? usualDistance) / thousandKilometres;
  const spread = Math.exp(Math.hypot(Math.log(2.3), distance === undefined ? Math.log(1.6) : 0));
  return {
    volume,
    ...(filter.length === undefined ? {} : { length: filter.length }),
    cellDensity:
      filter.cellDensity !== undefined
        ? known('Cell density', filter.cellDensity, 1.005)
        : {
            label: 'Cell density',
            median: light ? 4.1e5 : 3.4e5,
            spread: 1.17,
            basis: 'published filters of 181 to 325 cells per square inch',
            mark: 'derived here',
          },
    wallThickness:
      filter.wallThickness !== undefined
        ? known('Wall thickness', filter.wallThickness, 1.02)
        : {
            label: 'Wall thickness',
            median: 2.8e-4,
            spread: 1.13,
            basis: 'published filters of 0.24 to 0.38 mm',
            mark: 'derived here',
          },
    wallPermeability: {
      label: 'Permeability of the clean wall',
      median: 3.3e-13,
      spread: 1.55,
      basis: 'six published fits, 2.4 × 10⁻¹³ to 5.3 × 10⁻¹³ m², widened for coats',
      mark: 'derived here',
    },
    sootFactor: {
      label: 'Permeability times density of the soot',
      median: 2.1e-12,
      spread: 1.5,
      basis: 'five published fits, 1.5 × 10⁻¹² to 3.2 × 10⁻¹² kg/m',
      mark: 'derived here',
    },
    sootDensity: {
      label: 'Packing density of the soot',
      median: 85,
      spread: 1.4,
      basis: 'published values of 35 to 122 kg/m3',
      mark: 'read',
    },
    deepBedRise: {
      label: 'Rise of the wall by soot in its pores',
      median: 0.8,
      spread: 2,
      basis: 'measured curves of two published filters',
      mark: 'derived here',
    },
    ashPermeability: {
      label: 'Permeability of the ash',
      median: 7e-14,
      spread: 2.4,
      basis: 'published fits of 2.8 × 10⁻¹⁴ to 1.7 × 10⁻¹³ m²',
      mark: 'read',
    },
    ashLoad:
      weighedAsh !== undefined && filter.volume !== undefined
        ? known('Ash load', Math.max(0.1, weighedAsh / filter.volume), 1.2)
        : {
            label: 'Ash load',
            median: 0.1 * travelled,
            spread,
            basis: 'oil use, sulphated ash and capture as published; 0.1 g/L in 1000 km',
            mark: 'derived here',
          },
    trigger: {
      label: 'Soot load that starts a regeneration',
      median: light ? 5 : 3.5,
      spread: 1.3,
      basis: 'loads of published regeneration tests',
      mark: 'common practice, no source',
    },
    sootRate: {
      label: 'Soot that comes in over a distance',
      median: light ? 1e-5 : 4.5e-6,
      spread: light ? 1.9 : 2.2,
      basis: '200 km between regenerations measured on one car, 400 km quoted as usual, 1000 km on motorways',
      mark: 'common practice, no source',
    },
  };
}
