import { commonPractice, type Source } from '@wallflow/calculation';

export const tischer2019: Source = {
  type: 'paper',
  by: 'Tischer, Börnhorst, Amsler, Schoch, Deutschmann',
  title: 'Thermodynamics and reaction mechanism of urea decomposition, Physical Chemistry Chemical Physics 21',
  year: 2019,
  locator: 'biuret mixtures liquefy and solidify again between 193 °C and 230 °C; urea melts at 132.7 °C',
  mark: 'read',
};

export const depositAnalysis2015: Source = {
  type: 'paper',
  title: 'Analytical Investigation of Urea Deposits in SCR System, SAE Int. J. Engines 8(3), 2015-01-1037',
  year: 2015,
  locator: 'deposits of 200–250 °C: urea, biuret, cyanuric acid; of 335–425 °C: mostly cyanuric acid',
  doi: '10.4271/2015-01-1037',
  mark: 'read',
  note: 'Abstract.',
};

export const depositFormation2014: Source = {
  type: 'paper',
  title: 'Study on Deposit Formation in Urea-SCR System of Diesel Engine, Chinese Internal Combustion Engine Engineering 35(6)',
  year: 2014,
  locator: 'weight-loss steps 150–250 °C and 280–360 °C (nozzle), 320–400 °C (wall); all gone above about 430 °C',
  mark: 'read',
  note: 'Abstract.',
};

export const depositFormation2009: Source = {
  type: 'paper',
  title: 'Deposit Formation in Urea-SCR Systems, SAE 2009-01-2780',
  year: 2009,
  locator: 'deposits grow with lower exhaust and ambient temperature and with the dose',
  mark: 'read',
  note: 'Abstract.',
};

export const depositAgeing2020: Source = {
  type: 'paper',
  title: 'Infrared and Thermal Decomposition Study on Solid Deposits, Reactions 1(2), 72–88',
  year: 2020,
  locator: 'with heat up to 400 °C deposits turn into fused rings that are more stable',
  doi: '10.3390/reactions1020007',
  mark: 'read',
  note: 'Abstract.',
};

export const dosingRelease: Source = {
  type: 'practice',
  title: 'Dosing is released at a gas temperature of about 180 °C to 200 °C',
  mark: 'from memory',
};

export const depositPractice: Source = commonPractice(
  'Warm demineralised water of 50 °C to 70 °C dissolves urea and biuret, not cyanuric acid and ammelide',
);
