import { commonPractice, type Source } from '@wallflow/calculation';

export const fillPractice = commonPractice(
  'Cleaning liquid per pass: 0.3 to 1 times the open volume of the inlet channels; 2 to 4 passes, stop when a pass gains less than 10 %',
);

export const dilutionPractice = commonPractice(
  'On-vehicle concentrates are mixed 1:1 to 1:4 with demineralised water; the label of the product counts',
);

export const partsArithmetic: Source = { type: 'derivation', title: 'Parts by volume: concentrate = total / (1 + n)', mark: 'read' };

export const waterDensity20: Source = {
  type: 'paper',
  by: 'Tanaka, Girard, Davis, Peuto, Bignell',
  title: 'Recommended table for the density of water between 0 °C and 40 °C, Metrologia 38, 301–309',
  year: 2001,
  mark: 'from memory',
  note: '998.2 kg/m³ at 20 °C',
};

export const massBalance: Source = {
  type: 'derivation',
  title: 'Balance of the active substance: what goes in stays in, C1 V1 = C2 V2',
  mark: 'read',
};

export const pearsonSquare: Source = {
  type: 'derivation',
  title: 'Alligation (Pearson square): two balances solved for the two amounts',
  mark: 'read',
  note: 'The method is in every pharmacy and dairy textbook; the equations are derived here.',
};
