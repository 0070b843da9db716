export interface AlkaliInput {
  /** At the start and as it is wanted. */
  readonly startPh: number;
  readonly targetPh: number;
  /** Amount concentration that pH counts from, 1 mol/L in mol/m³. */
  readonly unitConcentration: number;
  /** pH of neutral water doubled; 14.00 at 25 °C. */
  readonly ionProduct: number;
}

/** Free alkali in mol/m³ at a pH: hydroxide less hydrogen ions, ideal solution. */
export function freeAlkali(ph: number, unitConcentration: number, ionProduct: number): number {
  return unitConcentration * (10 ** (ph - ionProduct) - 10 ** -ph);
}

/** Alkali in mol/m³ that has to be neutralised between two pH values in water without a buffer. */
export function alkaliToNeutralise({ startPh, targetPh, unitConcentration, ionProduct }: AlkaliInput): number {
  return freeAlkali(startPh, unitConcentration, ionProduct) - freeAlkali(targetPh, unitConcentration, ionProduct);
}

/** Mass of acid in kg for an amount of alkali in mol, from its molar mass in kg/mol and the protons it gives. */
export function acidMass(alkali: number, molarMass: number, protons: number): number {
  return (alkali * molarMass) / protons;
}
