/** Mass of carbon dioxide per mass of carbon (IUPAC atomic weights 12.011 and 15.999). */
export const dioxidePerCarbon = (12.011 + 2 * 15.999) / 12.011;

/** Power in W that a gas stream takes up over a temperature difference in K. */
export function gasHeatingPower(massFlow: number, specificHeat: number, rise: number): number {
  return massFlow * specificHeat * rise;
}

/** Fuel in kg/s (or kg) for a power in W (or a heat in J), of which a share arrives as heat. */
export function fuelForHeat(heat: number, heatingValue: number, efficiency: number): number {
  return heat / (heatingValue * efficiency);
}

/** Heat in J that a honeycomb stores over a temperature difference in K. */
export function storedHeat(volume: number, bulkDensity: number, specificHeat: number, rise: number): number {
  return volume * bulkDensity * specificHeat * rise;
}
