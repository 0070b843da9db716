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

/** Bissett and Shadman 1985 (constants from memory), with the layer density of Konstandopoulos et al. 2000. Much the fastest law here. */
export const bissettShadman1985Oxygen: OxidationLaw = firstOrderOfSurfaceLaw({
  factor: 29.9,
  activationEnergy: 150_000,
  specificSurface: 5.5e7,
  layerDensity: 97,
  pressure: 101_325,
});

export const bissettShadman1985: SootKinetics = { oxygen: bissettShadman1985Oxygen };
