/** Molar gas constant in J/(mol·K), exact by the 2019 definition of the SI (BIPM SI Brochure, 9th edition). */
export const molarGasConstant = 8.31446261815324;

/** Molar mass of dry air in kg/mol (40 CFR 1065.1005(f)(2), Table 7). Lean diesel exhaust is within 1.2 % of it. */
export const molarMassOfDryAir = 0.02896559;
