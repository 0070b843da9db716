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

export const iso13443: Source = {
  type: 'standard',
  by: 'ISO',
  title: 'ISO 13443, Natural gas: standard reference conditions (15 °C, 101.325 kPa)',
  mark: 'from memory',
  note: 'The other reference temperatures are named beside each result.',
};

export const pipeRegimes: Source = {
  type: 'book',
  by: 'White',
  title: 'Fluid Mechanics, McGraw-Hill: pipe flow is laminar below a Reynolds number of 2300 and turbulent above 4000',
  mark: 'from memory',
};

export const soundOfIdealGas: Source = {
  type: 'book',
  by: 'White',
  title: 'Fluid Mechanics, McGraw-Hill: speed of sound of an ideal gas',
  mark: 'from memory',
};
