import type { Source } from '@wallflow/calculation';

export const unR83Inducement: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 83, 06 and 07 series, Appendix 6 (and Regulations (EC) 692/2008 and (EU) 2017/1151, reagent requirements)',
  mark: 'from memory',
  note: 'The four methods of inducement were read second-hand. One fluid supplier prints 1000 km where 800 km is remembered.',
};

export const euroSixHeavyInducement: Source = {
  type: 'regulation',
  by: 'European Commission',
  title: 'Regulation (EU) 582/2011, Annex XIII (and UN Regulation No. 49, 06 series, Annex 11)',
  year: 2011,
  mark: 'from memory',
};

export const usGuidance2025: Source = {
  type: 'regulation',
  by: 'US Environmental Protection Agency',
  title: 'Guidance on inducement for diesel exhaust fluid systems, August 2025',
  year: 2025,
  mark: 'read',
  note: 'Read in two trade reports, not in the original. Only the final stage for heavy vehicles is known: 8400 miles or 160 hours, 25 mph.',
};
