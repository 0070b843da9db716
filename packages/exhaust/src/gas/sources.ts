import type { Source } from '@wallflow/calculation';

export const lemmonJacobsen2004: Source = {
  type: 'paper',
  by: 'Lemmon, Jacobsen',
  title: 'Viscosity and Thermal Conductivity Equations for Nitrogen, Oxygen, Argon, and Air, Int. J. Thermophysics 25, 21–69',
  year: 2004,
  mark: 'from memory',
  note: 'Coefficients from memory; they reproduce the check points of Table V for nitrogen, oxygen, argon and air to six digits.',
};

export const atomBalance: Source = {
  type: 'derivation',
  title: 'Atom balance of complete combustion: carbon, hydrogen, oxygen, nitrogen and argon leave as they enter',
  mark: 'read',
};

export const unRegulation49: Source = {
  type: 'regulation',
  by: 'UNECE',
  title: 'UN Regulation No. 49, emissions of compression-ignition engines',
  mark: 'from memory',
};

export const nasaTm4513: Source = {
  type: 'report',
  by: 'McBride, Gordon, Reno',
  title: 'Coefficients for Calculating Thermodynamic and Transport Properties of Individual Species, NASA TM-4513',
  year: 1993,
  mark: 'read',
  note: 'Nitrogen only, 200 to 6000 K; read as a data file transcribes it under the name of the report, not in the report itself.',
};

export const griMech30: Source = {
  type: 'dataset',
  by: 'Smith, Golden, Frenklach and others',
  title: 'GRI-Mech 3.0 thermodynamic data',
  year: 1999,
  mark: 'read',
};

export const wilke1950: Source = {
  type: 'paper',
  by: 'Wilke',
  title: 'A Viscosity Equation for Gas Mixtures, J. Chem. Phys. 18, 517–519',
  year: 1950,
  mark: 'from memory',
};

export const fenghour1998: Source = {
  type: 'paper',
  by: 'Fenghour, Wakeham, Vesovic',
  title: 'The Viscosity of Carbon Dioxide, J. Phys. Chem. Ref. Data 27, 31–44',
  year: 1998,
  mark: 'from memory',
  note: 'Coefficients from memory; they reproduce the published check points to the printed digits.',
};

export const iapwsViscosity: Source = {
  type: 'standard',
  by: 'IAPWS',
  title: 'R12-08, Release on the IAPWS Formulation 2008 for the Viscosity of Ordinary Water Substance',
  year: 2008,
  mark: 'from memory',
  note: 'Coefficients from memory; they reproduce the published check points of thin vapour.',
};

export const standardAtmosphere: Source = {
  type: 'standard',
  by: 'NOAA, NASA, US Air Force',
  title: 'US Standard Atmosphere 1976',
  year: 1976,
  mark: 'from memory',
};

export const buck1996: Source = {
  type: 'report',
  by: 'Buck',
  title: 'Model CR-1A Hygrometer Operating Manual, Appendix 1: vapour pressure equations revised',
  year: 1996,
  mark: 'from memory',
};

export const polingPrausnitz: Source = {
  type: 'book',
  by: 'Poling, Prausnitz, O’Connell',
  title: 'The Properties of Gases and Liquids, 5th edition, McGraw-Hill',
  year: 2001,
  mark: 'from memory',
};

export const vesovic1990: Source = {
  type: 'paper',
  by: 'Vesovic, Wakeham, Olchowy, Sengers, Watson, Millat',
  title: 'The Transport Properties of Carbon Dioxide, J. Phys. Chem. Ref. Data 19, 763–808',
  year: 1990,
  mark: 'from memory',
  note: 'Coefficients from memory; at 225 K they are 1.1 % above a published check point of a later correlation.',
};

export const iapwsConductivity: Source = {
  type: 'standard',
  by: 'IAPWS',
  title: 'R15-11, Release on the IAPWS Formulation 2011 for the Thermal Conductivity of Ordinary Water Substance',
  year: 2011,
  mark: 'from memory',
  note: 'Coefficients from memory; they reproduce the published check points of thin vapour to all printed digits.',
};
