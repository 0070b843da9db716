import { molarGasConstant } from '../../gas/constants.js';
import { molarMassOfCarbon, type OxidationLaw } from './kernel.js';

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
