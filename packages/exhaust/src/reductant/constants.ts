/**
 * Molar masses in kg/mol from the atomic masses of 40 CFR 1065.1005, Table 7
 * (C 12.0107, H 1.00794, N 14.0067, O 15.9994 g/mol).
 */
export const molarMassOfNitricOxide = 0.0300061;
export const molarMassOfNitrogenDioxide = 0.0460055;
export const molarMassOfAmmonia = 0.01703052;
export const molarMassOfUrea = 0.06005526;
export const molarMassOfWater = 0.01801528;

/** Urea in reductant of the standard grade, mass fraction (ISO 22241-1: 31.8 % to 33.2 %, target 32.5 %). */
export const standardUreaFraction = 0.325;

/** Density of standard reductant at 20 °C in kg/m³, the middle of the range 1087.0 to 1093.0 of ISO 22241-1. */
export const standardReductantDensity = 1090;
