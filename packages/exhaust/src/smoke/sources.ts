import type { Source } from '@wallflow/calculation';

export const unR24: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 24, Emissions of visible pollutants of compression-ignition engines',
  mark: 'from memory',
  note: 'The effective path of 0.430 m and the formula are also in UN R49 of 2008, which was read.',
};

export const unR49Smoke: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 49, Official Journal of the European Union L 103',
  year: 2008,
  locator: 'Annex 4, ELR test, worked example, p. 300',
  mark: 'read',
};

export const cfr86Smoke: Source = {
  type: 'regulation',
  by: 'US Environmental Protection Agency',
  title: '40 CFR 86.884-14, Calculations (smoke)',
  mark: 'read',
};
