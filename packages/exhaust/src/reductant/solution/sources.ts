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
