/** Rise in K when all injected fuel burns in the gas: ṁ_f H / (ṁ c). */
export function fullExotherm(fuelFlow: number, heatingValue: number, massFlow: number, specificHeat: number): number {
  return (fuelFlow * heatingValue) / (massFlow * specificHeat);
}

/** Share of the fuel heat found in the gas: measured rise over the rise of full burning. */
export function exothermEfficiency(rise: number, fullRise: number): number {
  return rise / fullRise;
}
