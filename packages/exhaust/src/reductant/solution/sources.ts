import { commonPractice, type Source } from '@wallflow/calculation';

export const pace1986: Source = {
  type: 'paper',
  by: 'Pace',
  title: 'Determination and analysis of urea and guanidine hydrochloride denaturation curves, Methods in Enzymology 131, 266–280',
  year: 1986,
  locator: 'Table on concentration of urea from refractive index and density at 25 °C',
  mark: 'from memory',
  note: 'After Warren and Gordon 1966 and Kawahara and Tanford 1966. Scaled here by 1.014 (index) and 1.023 (density) to meet ISO 22241-1 at 20 °C.',
};

export const tanaka2001: Source = {
  type: 'paper',
  by: 'Tanaka, Girard, Davis, Peuto, Bignell',
  title: 'Recommended table for the density of water between 0 °C and 40 °C, Metrologia 38, 301–309',
  year: 2001,
  mark: 'from memory',
};

export const itmoIndex: Source = {
  type: 'paper',
  title:
    'Optical properties of carbamide aqueous solutions, Scientific and Technical Journal of Information Technologies, Mechanics and Optics (ITMO)',
  mark: 'read',
  note: 'Abstract: a quadratic in the mass fraction holds within ±0.0005 in index; index falls linearly with temperature from 10 °C to 70 °C.',
};

export const densitySlopePractice: Source = commonPractice('Reductant loses about 0.4 kg/m³ of density per kelvin near 20 °C');

export const solubilityOfUrea: Source = {
  type: 'book',
  title: 'Handbook value: 1079 g of urea dissolve in 1 kg of water at 20 °C (51.9 % by mass)',
  mark: 'from memory',
};

export const thermalProperties: Source = {
  type: 'report',
  title:
    'Properties of AUS 32 in a public encyclopaedia: heat capacity 3.51 kJ/(kg·K), heat of fusion 270 kJ/kg, crystallisation from −11.5 °C',
  mark: 'read',
  note: 'Second-hand; no primary table was available. Other listings print −11 °C.',
};

export const iceHeatCapacity: Source = {
  type: 'derivation',
  title: 'Heat capacity of the frozen eutectic: 67.5 % ice at 2.05 and 32.5 % urea at 1.4 kJ/(kg·K) give 1.84',
  mark: 'from memory',
  note: 'Handbook values of ice and urea from memory, weighted by mass.',
};

export const eutectic: Source = {
  type: 'derivation',
  title: 'Ideal freezing-point depression gives −14.9 °C at 32.5 %, the real eutectic lies near −11.5 °C: the ideal law is not used',
  mark: 'read',
};

export const iso22241Part3: Source = {
  type: 'standard',
  by: 'ISO',
  title: 'ISO 22241-3, Diesel engines — NOx reduction agent AUS 32 — Part 3: Handling, transportation and storage',
  locator: 'table of shelf life against constant storage temperature',
  mark: 'from memory',
  note: '18 months below 25 °C is also given by a public trade page.',
};
