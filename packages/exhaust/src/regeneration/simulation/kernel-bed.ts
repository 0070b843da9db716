import type { SootKinetics } from '../../soot/oxidation/kernel.js';

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
  /** Transfer of oxygen from channel gas to soot in mol/(m²·s); left out, soot gets only what the gas carries through it. */
  readonly oxidantTransferCoefficient?: number;
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
