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

export const bai2016: Source = {
  type: 'paper',
  by: 'Bai et al.',
  title: 'Soot loading estimation model and passive regeneration of a DPF, Applied Thermal Engineering 100, 1292–1298',
  year: 2016,
  doi: '10.1016/j.applthermaleng.2016.02.055',
  mark: 'read',
  note: 'Misprints: x(NO₂) is labelled ppm, but only a mole fraction gives the results; E(O₂) is printed as 408 kJ/mol, but only 108 kJ/mol gives the stated errors. Fitted from 250 °C to 350 °C (NO₂).',
};

export const bissettShadman1985: Source = {
  type: 'paper',
  by: 'Bissett, Shadman',
  title: 'Thermal Regeneration of Diesel-Particulate Monolithic Filters, AIChE Journal 31, 753–758',
  year: 1985,
  mark: 'from memory',
  note: 'k = 29.9 T exp(−18 040/T) m/s on 5.5·10⁷ m²/m³ of soot layer; turned into a rate per mass with the 550 kg/m³ that belong to it (100 m²/g) and 1 atm. Eight times faster at 600 °C than burn-offs measured on filters.',
};

export const uncoatedDisk2008: Source = {
  type: 'paper',
  by: 'Konstandopoulos, Papaioannou',
  title: 'Update on The Science and Technology of Diesel Particulate Filters, KONA Powder and Particle Journal 26, 36–65',
  year: 2008,
  locator: 'Fig. 16, read off the curve',
  mark: 'read',
  note: 'Engine soot on an uncoated disk, 10 % oxygen, 3 K/min. A full-size uncoated filter of the same work (Fig. 27) burns within 30 % of it at 600 °C.',
};

export const wholeFilterBalance: Source = {
  type: 'derivation',
  title: 'Mass balance dm/dt = ṁ_in − k m with constant rates, solved in closed form',
  mark: 'read',
};

export const nitrogenDioxideSupply: Source = {
  type: 'derivation',
  title: 'Stoichiometry C + NO₂ → CO + NO: 46.0055/12.011 = 3.83 kg of NO₂ per kg of carbon at least; twice that to CO₂',
  mark: 'read',
};

export const emissionRates: Source = {
  type: 'derivation',
  title: 'Rate from a specific emission: per distance times speed, per work times power, per gas volume times flow',
  mark: 'read',
};

export const drivingPractice: Source = commonPractice(
  'Soot rates and exhaust temperatures of driving patterns',
  'Take them from your own vehicle where possible: distance between regenerations and grams at the trigger.',
);

export const ashReview2019: Source = {
  type: 'paper',
  by: 'Wang, Ge, Tan et al.',
  title: 'Ash deposited in diesel particular filter: a review, Energy Sources A, 2184–2193',
  year: 2019,
  mark: 'read',
  note: 'Damage with ash: silicon carbide from 1100 °C, with 10 % water or alkali already at 800 °C to 900 °C; cordierite unharmed below 900 °C.',
};

export const ashGuide: Source = {
  type: 'report',
  by: 'Sappok',
  title: 'Ash Accumulation in Diesel Particulate Filters (technology guide, preview)',
  mark: 'read',
  note: 'With a soot limit of 6 g/L half of the deposit is ash after 53 000 km.',
};

export const ashMassBalance: Source = {
  type: 'derivation',
  title:
    'Ash from oil: oil used · density · sulphated ash · share that reaches the filter; from an additive: fuel used · metal content · mass of its oxide',
  mark: 'read',
};

export const ashGeometry: Source = {
  type: 'derivation',
  title: 'Volume of ash in square inlet channels: end plug over the open inlet area, layer 4 w (α − w) per channel length',
  mark: 'read',
};

export const ashPractice: Source = commonPractice(
  'Ash in a filter',
  'Packing density 0.2 to 0.4 g/cm³; rod depth at least 95 % of the channel in a clean filter; car limits some 40 to 80 g.',
);

export const weightedMean: Source = {
  type: 'standard',
  by: 'JCGM',
  title: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement: combining independent estimates',
  year: 2008,
  mark: 'from memory',
};
