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
  note: 'Coefficients and formula were read in two public implementations that cite it, which agree; not in the document itself',
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
  note: 'Heat of evaporation 2292.9 kJ/kg at 60 kPa (85.93 °C), 2257 at 100 °C, 2201.6 at 200 kPa (120.21 °C): a fall of 2.663 kJ/kg per kelvin; 4.19 kJ/(kg·K) is the mean of the liquid from 20 to 100 °C',
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

export const weightDifference: Source = {
  type: 'derivation',
  title: 'Difference of two weighings of the same part',
  mark: 'read',
};

export const weighingUncertainty: Source = {
  type: 'standard',
  by: 'JCGM',
  title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement',
  year: 2008,
  locator: '5.1.2, Eq. 10: independent uncertainties add in squares',
  mark: 'from memory',
};

export const airBuoyancy: Source = {
  type: 'derivation',
  title: 'Buoyancy of the air inside: displaced air less the air that is there, both as ideal gas at the pressure of the room',
  mark: 'read',
};

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

export const bakePractice = commonPractice(
  'Filters are baked with 2 to 5 K/min to 550 to 650 °C, held 3 to 8 h, cooled in the closed oven, 8 to 14 h in all, never above 700 °C',
);

export const carbonCombustion: Source = {
  type: 'dataset',
  by: 'CODATA',
  title: 'Key values for thermodynamics: enthalpy of formation of carbon dioxide −393.51 kJ/mol',
  year: 1989,
  mark: 'from memory',
  note: 'Over 12.011 g/mol that is 32.76 MJ/kg; one mole of oxygen for each mole of carbon',
};

export const dryAirMassShare: Source = {
  type: 'derivation',
  title: 'Dry air with 20.945 % of oxygen by volume: 0.20945 × 31.998/28.965 = 23.14 % by mass; 1.204 kg/m³ at 20 °C and 101.325 kPa',
  mark: 'read',
};

export const isentropicNozzle: Source = {
  type: 'derivation',
  title: 'Isentropic flow of an ideal gas through a nozzle, choked at ((γ+1)/2)^(γ/(γ−1))',
  mark: 'read',
  note: 'In every textbook on gas dynamics; derived from energy and continuity',
};

export const moss1906: Source = {
  type: 'paper',
  by: 'Moss',
  title: 'Formula for the discharge of air through an orifice, on which the usual tables of free air per minute rest',
  year: 1906,
  mark: 'read',
  note: 'The table and its rule (coefficient 1; times 0.97 rounded, 0.61 to 0.65 sharp) were read in reprints',
};

export const airBalance: Source = {
  type: 'derivation',
  title: 'Balance of the air: what the nozzles take is delivered meanwhile or was stored, V (p₁ − p_n)/p_a of free air at room temperature',
  mark: 'read',
};

export const pneumaticPractice = commonPractice(
  'Pneumatic cleaning: 4 to 7 bar at the nozzle, backwards, 15 to 60 minutes in a cabinet with extraction',
);

export const chargeBalance: Source = {
  type: 'derivation',
  title: 'Charge balance: the protons that the acid has given at the pH that is wanted equal the alkali',
  mark: 'read',
};

export const strengthOfAcid: Source = {
  type: 'derivation',
  title: 'Strength is pure acid over what is weighed, density is mass over volume',
  mark: 'read',
};

export const neutralisationHeating: Source = {
  type: 'derivation',
  title: 'Heat balance: the heat of neutralisation warms the wash liquid, taken as water',
  mark: 'read',
};

export const acidBase: Source = {
  type: 'book',
  title: 'General chemistry: pH + pOH = 14.00 at 25 °C, one proton for one hydroxide ion, about 56 kJ per mole of water formed',
  mark: 'from memory',
  note: 'Molar masses from the IUPAC atomic weights; citric acid has three protons to give',
};

export const acidConstants: Source = {
  type: 'book',
  by: 'Haynes (ed.)',
  title: 'CRC Handbook of Chemistry and Physics, dissociation constants of organic and inorganic acids at 25 °C',
  mark: 'from memory',
  note: 'Citric acid 3.13, 4.76, 6.40; acetic acid 4.756; sulfamic acid about 1.0, which does not count above pH 4. Solved here by charge balance.',
};

export const effluentPractice = commonPractice(
  'Wash water of a business is trade effluent: never into surface drains, into the foul sewer only with consent, usually between pH 6 and 9',
);

export const expectedCost: Source = {
  type: 'derivation',
  title: 'Expected price over expected distance of both ways; lives lognormal, propagated by integration as JCGM 101:2008 does by drawing',
  mark: 'read',
};

export const costPractice = commonPractice(
  'Clean if the expected life gained times the cost per kilometre of a new filter is more than the price and the risk of a repeat',
);

export const jurinLaw: Source = {
  type: 'book',
  title: "Jurin's law, h = 4σ/(ρ g d) for a wetting liquid; water at 20 °C has σ = 72.75 mN/m",
  mark: 'from memory',
  note: '2σ/(ρg) = 2 × 0.07275/(998.2 × 9.80665) = 14.86 mm²',
};
