import { commonPractice, type Source } from '@wallflow/calculation';

export const loadDefinition: Source = {
  type: 'derivation',
  title: 'Definition of soot load: soot mass over the volume of the filter, over its filtration area, or over the mass called 100 %',
  mark: 'read',
};

export const percentPractice: Source = commonPractice(
  'Soot percent',
  'Heavy-duty network data count 100 % as the load at which a regeneration is triggered; many cars count 100 % as full. Ask which.',
);

export const squareCells: Source = {
  type: 'paper',
  by: 'Konstandopoulos, Kostoglou, Skaperdas, Papaioannou, Zarvalis, Kladopoulou',
  title: 'Fundamental Studies of Diesel Particulate Filters: Transient Loading, Regeneration and Aging, SAE 2000-01-1016',
  year: 2000,
  locator: 'Eq. A3, square cells',
  mark: 'read',
};
