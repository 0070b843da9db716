import type { Source } from '@wallflow/calculation';

export const heywood1988: Source = {
  type: 'book',
  by: 'Heywood',
  title: 'Internal Combustion Engine Fundamentals, McGraw-Hill',
  year: 1988,
  mark: 'from memory',
};

export const massBalance: Source = {
  type: 'derivation',
  title: 'Conservation of mass: what enters the engine leaves by the exhaust',
  mark: 'read',
};

export const lambdaDefinition: Source = {
  type: 'derivation',
  title: 'Definition of the air ratio: air mass over the air mass that the fuel needs',
  mark: 'read',
};

export const unRegulation24: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 24, visible pollutants of compression-ignition engines',
  mark: 'read',
};
