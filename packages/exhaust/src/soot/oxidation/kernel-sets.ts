import type { OxidationLaw, SootKinetics } from './kernel.js';
import { firstOrderOfSurfaceLaw } from './kernel-surface-law.js';

/** Bai et al. 2016, Tables 4 and 5: whole filter, 250 °C to 350 °C. The paper labels x as ppm; only a mole fraction gives its results. */
export const bai2016NitrogenDioxide: OxidationLaw = {
  preExponential: 4200,
  activationEnergy: 45_500,
  oxidantOrder: 1.13,
  referenceFraction: 1,
};

/**
 * Bai et al. 2016, Table 6, with the misprinted activation energy of 408 kJ/mol read as 108 kJ/mol, which alone gives the
 * errors that the paper states. The paper has no oxygen term; here it is taken as first order from 10 % oxygen.
 */
export const bai2016Oxygen: OxidationLaw = { preExponential: 16_000, activationEnergy: 108_000, oxidantOrder: 1, referenceFraction: 0.1 };

export const bai2016: SootKinetics = { oxygen: bai2016Oxygen, nitrogenDioxide: bai2016NitrogenDioxide };

/**
 * Konstandopoulos and Papaioannou 2008, Fig. 16, read off the curve: engine soot on an uncoated filter disk in 10 % oxygen,
 * 500 °C to 615 °C. The order in oxygen was not tested; here it is 1.
 */
export const konstandopoulos2008Oxygen: OxidationLaw = {
  preExponential: 5.4e6,
  activationEnergy: 161_100,
  oxidantOrder: 1,
  referenceFraction: 0.1,
};

/** An uncoated filter: oxygen as on the disk, nitrogen dioxide as in the whole filter of Bai et al. */
export const uncoated2008: SootKinetics = { oxygen: konstandopoulos2008Oxygen, nitrogenDioxide: bai2016NitrogenDioxide };

/**
 * Bissett and Shadman 1985 (constants from memory). Its surface of 5.5·10⁷ m² per m³ belongs to a layer of 550 kg/m³, that is
 * 100 m²/g; with the thin layers that engines leave it would stand for 570 m²/g, which no soot has. Still much the fastest law.
 */
export const bissettShadman1985Oxygen: OxidationLaw = firstOrderOfSurfaceLaw({
  factor: 29.9,
  activationEnergy: 150_000,
  specificSurface: 5.5e7,
  layerDensity: 550,
  pressure: 101_325,
});

export const bissettShadman1985: SootKinetics = { oxygen: bissettShadman1985Oxygen };

/** Factor by which burn-offs measured on filters lie below and above the law of their kind. */
export const kineticsSpread = 2;
