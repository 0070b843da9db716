import { molarMassOfUrea } from '../constants.js';

export interface ReductantMassFlowInput {
  /** Ammonia to be released in mol/s. */
  readonly ammoniaMolarFlow: number;
  /** Mass fraction of urea in the reductant. */
  readonly ureaFraction: number;
}

/** Mass flow of reductant in kg/s. One urea gives two ammonia, so half as many moles of urea are needed. */
export function reductantMassFlow({ ammoniaMolarFlow, ureaFraction }: ReductantMassFlowInput, ureaMolarMass = molarMassOfUrea): number {
  return (ammoniaMolarFlow * ureaMolarMass) / (2 * ureaFraction);
}

/** Ammonia in mol/s that a mass flow of reductant in kg/s releases; undoes `reductantMassFlow`. */
export function ammoniaFromReductant(massFlow: number, ureaFraction: number, ureaMolarMass = molarMassOfUrea): number {
  return (2 * massFlow * ureaFraction) / ureaMolarMass;
}
