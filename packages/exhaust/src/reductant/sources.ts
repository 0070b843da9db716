import type { Source } from '@wallflow/calculation';

export const iso22241Part1: Source = {
  type: 'standard',
  by: 'ISO',
  title: 'ISO 22241-1, Diesel engines — NOx reduction agent AUS 32 — Part 1: Quality requirements',
  year: 2019,
  locator: 'Table 1',
  mark: 'read',
  note: 'Urea content, refractive index, biuret, alkalinity and aldehydes read in the published summary; density read in a second-hand listing.',
};

export const unR49Edition2008: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 49, Official Journal of the European Union L 103',
  year: 2008,
  mark: 'read',
};

export const unR49Later: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 49, 05 series of amendments and later, and GTR No. 4: table of u coefficients',
  mark: 'from memory',
};

export const directive1999: Source = {
  type: 'regulation',
  by: 'European Parliament and Council',
  title: 'Directive 1999/96/EC, Annex VII section 1.1, worked example (repeated in Directive 2005/55/EC)',
  year: 1999,
  mark: 'from memory',
  note: 'Every printed step was recomputed and agrees.',
};

export const scrReactions: Source = {
  type: 'paper',
  by: 'Madia, Koebel, Elsener, Wokaun',
  title: 'The Effect of an Oxidation Precatalyst on the NOx Reduction by Ammonia SCR, Ind. Eng. Chem. Res. 41, 3512–3517',
  year: 2002,
  locator: 'standard, fast and NO2 reaction',
  mark: 'from memory',
  note: 'Abstract read; the reaction equations are textbook chemistry.',
};

export const ureaHydrolysis: Source = {
  type: 'paper',
  title: 'Urea thermolysis and hydrolysis: CO(NH2)2 → NH3 + HNCO, HNCO + H2O → NH3 + CO2, Emission Control Science and Technology',
  year: 2016,
  doi: '10.1007/s40825-016-0042-2',
  mark: 'read',
};

export const cfr1066: Source = {
  type: 'regulation',
  by: 'US Environmental Protection Agency',
  title: '40 CFR Part 1066, Vehicle-Testing Procedures',
  locator: '1066.615, NOx intake-air humidity correction',
  mark: 'from memory',
};

export const sensorCrossSensitivity: Source = {
  type: 'paper',
  title: 'Estimation with a non-linear model of the ammonia cross-sensitivity of a NOx sensor, Int. J. Engine Research',
  year: 2022,
  doi: '10.1177/14680874221140447',
  mark: 'read',
  note: 'Abstract: zirconia sensors respond to ammonia and read high. The factor of 0.5 to 1.0 is from memory.',
};
