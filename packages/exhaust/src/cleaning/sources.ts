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

export const oimlR22: Source = {
  type: 'standard',
  by: 'OIML',
  title: 'R 22, International alcoholometric tables; the same formula is annexed to Council Directive 76/766/EEC',
  year: 1975,
  locator: 'general formula, coefficients A_k (20 °C)',
  mark: 'read',
};

/** The relation of the reductant subject, cited again because a mix here uses it too. */
export const ureaDensity: Source = {
  type: 'paper',
  by: 'Pace',
  title: 'Determination and analysis of urea and guanidine hydrochloride denaturation curves, Methods in Enzymology 131, 266–280',
  year: 1986,
  mark: 'from memory',
  note: 'Measured at 25 °C, scaled to the density that ISO 22241-1 gives for 32.5 % at 20 °C',
};

export const stagedRinse: Source = {
  type: 'derivation',
  title: 'Ideal stages: what is dissolved in the held liquid spreads over held liquid and rinse, and the same volume stays behind',
  mark: 'read',
};

export const rinsePractice = commonPractice(
  'Rinse with 0.5 to 1 L of demineralised water per rinse, drain, repeat; chlorides and sodium harm the coating',
);

export const exponentialDecay: Source = {
  type: 'derivation',
  title: 'If every pass takes the same share of what can be taken, the drop falls exponentially to a plateau; fitted by least squares',
  mark: 'read',
  note: 'Uncertainty from the covariance of the fit, JCGM 100:2008 5.2',
};

export const treatmentPractice = commonPractice(
  'On-vehicle chemistry moves soot and very little ash; a drop that stays above about 1.5 times clean calls for off-vehicle cleaning',
);

export const heatBalance: Source = {
  type: 'derivation',
  title: 'Heat balance: what the gas gives up warms and evaporates the water',
  mark: 'read',
};

export const nistSteamTables: Source = {
  type: 'dataset',
  by: 'NIST',
  title: 'Properties of saturated water and steam (NISTIR 5078)',
  year: 1998,
  mark: 'from memory',
  note: 'Heat of evaporation 2257 kJ/kg at 100 °C; 4.19 kJ/(kg·K) is the mean from 20 to 100 °C',
};

export const dryingPractice = commonPractice(
  'After on-vehicle cleaning: drain, then 2000 to 2500 rpm for at least 10 to 20 minutes, then regenerate; real drying takes 1.5 to 2 times the ideal time',
);

export const leastCostCover: Source = {
  type: 'derivation',
  title: 'Covering a need with packs at least cost, by branch and bound over all combinations',
  mark: 'read',
  note: 'Checked against trying every combination on small cases',
};

export const weighingPractice = commonPractice(
  'Filters are weighed hot, above 120 to 150 °C and at the same temperature both times: soot and coating take up tens of grams of water when cold',
);

export const acceptancePractice = commonPractice(
  'A cleaned filter: bench drop at most 110 to 115 % of new, recovery 90 to 95 %, rod depth 95 %, light in all sampled channels, spread of speeds under 15 to 20 %',
  'No general published criterion was found.',
);

export const sampleStandardDeviation: Source = {
  type: 'standard',
  by: 'JCGM',
  title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
  year: 2008,
  locator: '4.2.2, Eq. 4',
  mark: 'from memory',
};
