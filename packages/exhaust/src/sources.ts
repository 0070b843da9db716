import type { Source } from '@wallflow/calculation';

/** Works that more than one subject cites. A subject's own works stand in its own `sources.ts`. */
export const cfr1065: Source = {
  type: 'regulation',
  by: 'US Environmental Protection Agency',
  title: '40 CFR Part 1065, Engine-Testing Procedures',
  mark: 'read',
};

export const siBrochure: Source = {
  type: 'standard',
  by: 'BIPM',
  title: 'The International System of Units, 9th edition',
  year: 2019,
  mark: 'from memory',
};

/** SAE 2000-01-1016. */
export const konstandopoulos2000: Source = {
  type: 'paper',
  by: 'Konstandopoulos, Kostoglou, Skaperdas, Papaioannou, Zarvalis, Kladopoulou',
  title: 'Fundamental Studies of Diesel Particulate Filters: Transient Loading, Regeneration and Aging, SAE 2000-01-1016',
  year: 2000,
  mark: 'read',
};

export const konstandopoulos2008: Source = {
  type: 'paper',
  by: 'Konstandopoulos, Papaioannou',
  title: 'Update on The Science and Technology of Diesel Particulate Filters, KONA Powder and Particle Journal 26, 36–65',
  year: 2008,
  mark: 'read',
};
