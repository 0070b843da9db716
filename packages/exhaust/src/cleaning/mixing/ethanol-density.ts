/** Coefficients A_k of OIML R 22 for 20 °C in kg/m³; the term k carries the mass fraction to the power k − 1. */
export const coefficients = [
  998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998, -547846.1354,
  223446.0334, -39032.85426,
] as const;

/** Density of an ethanol–water mixture at 20 °C in kg/m³ from the mass fraction of ethanol, 0 to 1 (OIML R 22). */
export function ethanolWaterDensity(massFraction: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * massFraction + coefficient, 0);
}
