import { molarGasConstant } from '../../gas/constants.js';

/** Molar mass of carbon in kg/mol (IUPAC conventional atomic weight 12.011). */
export const molarMassOfCarbon = 0.012011;

/** First-order rate law of soot with one oxidant: k = A exp(−E / (R T)) (x / x_ref)^n, in 1/s. */
export interface OxidationLaw {
  /** A in 1/s at the reference mole fraction. */
  readonly preExponential: number;
  /** E in J/mol. */
  readonly activationEnergy: number;
  /** n, the order in the oxidant. */
  readonly oxidantOrder: number;
  /** x_ref, the mole fraction for which A holds; 1 when A multiplies the plain mole fraction. */
  readonly referenceFraction: number;
}

/** Laws for the two oxidants; one that is left out does not burn anything. */
export interface SootKinetics {
  readonly oxygen?: OxidationLaw | undefined;
  readonly nitrogenDioxide?: OxidationLaw | undefined;
}

/** Gas at the soot: temperature in K, oxidants as mole fractions. */
export interface OxidationConditions {
  readonly temperature: number;
  readonly oxygen: number;
  readonly nitrogenDioxide: number;
}

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

/** Law of a reaction on the soot surface: k_s = k₀ T exp(−E / (R T)) in m/s, first order in oxygen. */
export interface SurfaceLaw {
  /** k₀ in m/(s·K). */
  readonly factor: number;
  /** E in J/mol. */
  readonly activationEnergy: number;
  /** Surface per volume of the soot layer in 1/m. */
  readonly specificSurface: number;
  /** Density of the soot layer in kg/m³. */
  readonly layerDensity: number;
  /** Absolute pressure in Pa. */
  readonly pressure: number;
}

/**
 * A surface law as a first-order law per mass of soot. The factor T of the law cancels against the 1/T of the oxygen
 * concentration x p / (R T), so that the form is exact: A = S k₀ p M_C x_ref / (R ρ), all carbon to CO₂.
 */
export function firstOrderOfSurfaceLaw(law: SurfaceLaw, referenceFraction = 0.1, gasConstant = molarGasConstant): OxidationLaw {
  const { factor, activationEnergy, specificSurface, layerDensity, pressure } = law;
  const preExponential = (specificSurface * factor * pressure * molarMassOfCarbon * referenceFraction) / (gasConstant * layerDensity);
  return { preExponential, activationEnergy, oxidantOrder: 1, referenceFraction };
}

/** Bissett and Shadman 1985 (constants from memory), with the layer density of Konstandopoulos et al. 2000. Much the fastest law here. */
export const bissettShadman1985Oxygen: OxidationLaw = firstOrderOfSurfaceLaw({
  factor: 29.9,
  activationEnergy: 150_000,
  specificSurface: 5.5e7,
  layerDensity: 97,
  pressure: 101_325,
});

export const bissettShadman1985: SootKinetics = { oxygen: bissettShadman1985Oxygen };

/** First-order rate constant of one law in 1/s; zero without oxidant. */
export function oxidationRateConstant(law: OxidationLaw, temperature: number, fraction: number, gasConstant = molarGasConstant): number {
  if (fraction <= 0) return 0;
  const { preExponential, activationEnergy, oxidantOrder, referenceFraction } = law;
  return preExponential * Math.exp(-activationEnergy / (gasConstant * temperature)) * (fraction / referenceFraction) ** oxidantOrder;
}

/** Rate constants of soot with oxygen and with nitrogen dioxide in 1/s, and their sum. */
export function sootOxidationRate(kinetics: SootKinetics, at: OxidationConditions, gasConstant = molarGasConstant) {
  const of = (law: OxidationLaw | undefined, fraction: number) =>
    law === undefined ? 0 : oxidationRateConstant(law, at.temperature, fraction, gasConstant);
  const oxygen = of(kinetics.oxygen, at.oxygen);
  const nitrogenDioxide = of(kinetics.nitrogenDioxide, at.nitrogenDioxide);
  return { oxygen, nitrogenDioxide, total: oxygen + nitrogenDioxide };
}
