import { commonPractice, type Source } from '@wallflow/calculation';

export const readingBands = commonPractice(
  'Bands of filter pressure readings at idle and at raised engine speed, light vehicles',
  'Given in the trade as raw millibar at an engine speed; written here as multiples of the clean filter at the same flow.',
);

export const backPressureCeiling: Source = {
  type: 'report',
  title: 'Recommended exhaust back-pressure limits: 20 kPa for engines of 50 to 500 kW',
  mark: 'from memory',
  note: 'Read in a secondary source only.',
};

export const equalConditions = commonPractice(
  'Before and after are compared at the same flow and temperature, or as resistance Δp/(μQ)',
  'Flow resistance free of flow and temperature follows from Darcy’s law for a laminar filter.',
);

export const acceptance = commonPractice('A clean counts when the resistance falls to 0.4 of what it was, or to 1.3 of a clean filter');

export const zeroPractice = commonPractice(
  'A differential pressure sensor reads zero without flow: accepted to 2 mbar, subtracted to five times that, a fault beyond',
);

export const oneResistance: Source = {
  type: 'derivation',
  title: 'Δp/(μQ) of one filter at two flows: a + bρQ/μ grows with the flow; slip lowers a at most as the mean free path grows',
  mark: 'read',
  note: 'Darcy and Forchheimer for the growth, the limit of free molecular flow for the slip.',
};
