import type { EstimateInput } from './evidence-input.js';
import { idleBelow } from './idle.js';

/** The unknowns of one vehicle, each standard normal before anything is measured. */
export const unknowns = [
  'volume',
  'cellDensity',
  'wallThickness',
  'wallPermeability',
  'deepBedRise',
  'sootFactor',
  'sootDensity',
  'compaction',
  'soot',
  'ash',
  'plugShare',
  'ashPermeability',
  'flow',
  'recirculationAtIdle',
  'recirculationRaised',
  'zero',
  'gain',
  'temperatureAtIdle',
  'temperatureRaised',
  'tail',
  /** What only one explanation has: its leak, its restriction, its offset. */
  'fault',
] as const;

export type Unknown = (typeof unknowns)[number];

/** Place of each unknown in a point. */
export const at = Object.fromEntries(unknowns.map((name, index) => [name, index])) as Readonly<Record<Unknown, number>>;

/** Unknowns that nothing which was seen depends on: a fit need not try them. */
export function silentUnknowns({ readings, backPressures = [] }: EstimateInput, { id }: { readonly id: string }): ReadonlySet<number> {
  const silent = new Set<number>();
  const all = [...readings, ...backPressures];
  for (const [idle, recirculation, temperature] of [
    [true, at.recirculationAtIdle, at.temperatureAtIdle],
    [false, at.recirculationRaised, at.temperatureRaised],
  ] as const) {
    const those = all.filter(({ engineSpeed }) => engineSpeed < idleBelow === idle);
    if (those.every(({ airMassFlow }) => airMassFlow !== undefined)) silent.add(recirculation);
    if (those.every(({ gasTemperature }) => gasTemperature !== undefined)) silent.add(temperature);
  }
  if (backPressures.length === 0) silent.add(at.tail);
  if (id === 'nothing-wrong' || id === 'hoses-swapped') silent.add(at.fault);
  return silent;
}
