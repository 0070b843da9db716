/** Thermal data of a honeycomb. */
export interface SubstrateProperties {
  /** Mass per filter volume in kg/m³. */
  readonly bulkDensity: number;
  /** Mean specific heat from 300 °C to 900 °C in J/(kg·K). */
  readonly specificHeat: number;
  /** Axial conductivity over the whole cross-section in W/(m·K). */
  readonly axialConductivity: number;
}

/** Silicon carbide, 200 to 300 cells per square inch, uncoated (from memory; 0.74 kg/L is published for one such filter). */
export const siliconCarbideHoneycomb: SubstrateProperties = { bulkDensity: 800, specificHeat: 1100, axialConductivity: 5 };

/** Cordierite, 200 cells per square inch, 12 mil (from memory; 1120 J/(kg·K) is published for one such filter). */
export const cordieriteHoneycomb: SubstrateProperties = { bulkDensity: 450, specificHeat: 1100, axialConductivity: 0.4 };

/** Nusselt number of laminar flow in a square duct with a wall of one temperature (Shah and London 1978, from memory). */
export const squareDuctNusselt = 2.976;

/** Heat transfer coefficient in a square channel in W/(m²·K), from the gas conductivity in W/(m·K) and the channel width in m. */
export function channelHeatTransfer(gasConductivity: number, channelWidth: number, nusselt = squareDuctNusselt): number {
  return (nusselt * gasConductivity) / channelWidth;
}

/**
 * Diffusivity of oxygen in nitrogen times molar density, in mol/(m·s), at 850 K: 1.32·10⁻⁴ m²/s at 1 atm (0.181 cm²/s at
 * 273 K, from memory, raised with T^1.75 after Fuller, Schettler and Giddings 1966). It does not depend on pressure.
 */
export const oxygenMolarDiffusivity = 1.89e-3;

/** Transfer of oxygen to the wall of a square channel in mol/(m²·s); Sherwood as Nusselt number. */
export function channelOxygenTransfer(
  channelWidth: number,
  molarDiffusivity = oxygenMolarDiffusivity,
  sherwood = squareDuctNusselt,
): number {
  return (sherwood * molarDiffusivity) / channelWidth;
}
