/** Heat of burning soot in J/kg with a share of the carbon leaving as carbon monoxide, from molar heats in J/mol. */
export function sootHeat(toDioxide: number, toMonoxide: number, carbonMonoxideShare: number, molarMassOfCarbon: number): number {
  return ((1 - carbonMonoxideShare) * toDioxide + carbonMonoxideShare * toMonoxide) / molarMassOfCarbon;
}

/** Rise in K when soot burns and all its heat stays where it burnt: load · heat / (bulk density · specific heat). */
export function adiabaticRise(sootLoad: number, heatOfCombustion: number, bulkDensity: number, specificHeat: number): number {
  return (sootLoad * heatOfCombustion) / (bulkDensity * specificHeat);
}

/**
 * Molar heats of burning carbon in J/mol at 298 K: to CO₂ 393.5 kJ/mol and to CO 110.5 kJ/mol, from standard enthalpies of
 * formation (from memory; they are the CODATA key values rounded).
 */
export const heatOfCarbonToDioxide = 393_500;
export const heatOfCarbonToMonoxide = 110_500;
