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
