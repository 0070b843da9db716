import { molarGasConstant } from '../../gas/constants.js';
import { molarMassOfCarbon } from '../../soot/oxidation/kernel.js';
import type { SootCombustion } from './kernel-bed.js';

/** (1 − e^(−x)) / x: what is left of a first-order rate when the oxidant runs short; 1 without shortage. */
export function supplyFactor(x: number): number {
  return x < 1e-9 ? 1 : -Math.expm1(-x) / x;
}

/**
 * Rate constant in 1/s at which soot burns in a layer that the whole gas passes through, with the oxidants used up in it
 * (Konstandopoulos et al. 2000, Eq. A55, per filter volume).
 */
export class LayerCombustion {
  private readonly combustion: SootCombustion;
  private readonly carbonPerOxygen: number;
  private readonly carbonPerNitrogenDioxide: number;
  private readonly gasConstant: number;

  constructor(combustion: SootCombustion) {
    this.combustion = combustion;
    this.gasConstant = combustion.gasConstant ?? molarGasConstant;
    // C + (1 − f/2) O₂ and C + (2 − f) NO₂, with the share f of the carbon that becomes CO.
    this.carbonPerOxygen = (1 - combustion.carbonMonoxideShare / 2) / molarMassOfCarbon;
    this.carbonPerNitrogenDioxide = (2 - combustion.carbonMonoxideShare) / molarMassOfCarbon;
  }

  /** Rate in 1/s at a temperature and soot load, where `supply` is the molar gas flow per filter volume in mol/(m³·s). */
  rate(temperature: number, soot: number, supply: number, oxygen: number, nitrogenDioxide: number): number {
    const { oxygen: oxygenLaw, nitrogenDioxide: nitrogenDioxideLaw } = this.combustion.kinetics;
    let rate = 0;
    if (oxygenLaw !== undefined && oxygen > 0 && supply > 0) {
      const share = oxygen / oxygenLaw.referenceFraction;
      const order = oxygenLaw.oxidantOrder;
      const k =
        oxygenLaw.preExponential *
        Math.exp(-oxygenLaw.activationEnergy / (this.gasConstant * temperature)) *
        (order === 1 ? share : share ** order);
      rate += k * supplyFactor((this.carbonPerOxygen * k * soot) / (supply * oxygen));
    }
    if (nitrogenDioxideLaw !== undefined && nitrogenDioxide > 0 && supply > 0) {
      const k =
        nitrogenDioxideLaw.preExponential *
        Math.exp(-nitrogenDioxideLaw.activationEnergy / (this.gasConstant * temperature)) *
        (nitrogenDioxide / nitrogenDioxideLaw.referenceFraction) ** nitrogenDioxideLaw.oxidantOrder;
      rate += k * supplyFactor((this.carbonPerNitrogenDioxide * k * soot) / (supply * nitrogenDioxide));
    }
    return rate;
  }
}
