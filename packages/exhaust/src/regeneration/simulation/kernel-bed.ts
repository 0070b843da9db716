import { molarGasConstant } from '../../gas/constants.js';
import { molarMassOfCarbon, type SootKinetics } from '../../soot/oxidation/kernel.js';

/** The honeycomb and the soot in it, as far as its heat is concerned. */
export interface FilterBed {
  /** Volume in m³. */
  readonly volume: number;
  /** Length in m. */
  readonly length: number;
  /** Mass of the honeycomb per filter volume in kg/m³. */
  readonly bulkDensity: number;
  /** Specific heat of the honeycomb in J/(kg·K). */
  readonly specificHeat: number;
  /** Axial conductivity over the whole cross-section in W/(m·K). */
  readonly axialConductivity: number;
  /** Wall area of the inlet channels per filter volume in 1/m; the outlet channels have as much again. */
  readonly filtrationAreaPerVolume: number;
  /** Heat transfer coefficient from channel gas to wall in W/(m²·K). */
  readonly heatTransferCoefficient: number;
}

/** How soot burns in the bed. */
export interface SootCombustion {
  readonly kinetics: SootKinetics;
  /** Heat of burning in J per kg of soot. */
  readonly heatOfCombustion: number;
  /** Share of the carbon that leaves as carbon monoxide, 0 to 1; it lowers the oxygen that is used. */
  readonly carbonMonoxideShare: number;
  /** Specific heat of the gas in J/(kg·K). */
  readonly gasSpecificHeat: number;
  /** Molar mass of the gas in kg/mol. */
  readonly gasMolarMass: number;
  /** Molar gas constant in J/(mol·K). */
  readonly gasConstant?: number;
}

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
