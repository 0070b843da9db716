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
