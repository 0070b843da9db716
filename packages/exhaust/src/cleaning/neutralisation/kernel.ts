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

/**
 * Protons that one molecule of an acid has given up on average at a pH, in ideal solution: Σ i·βᵢ/Σ βᵢ with
 * βᵢ = 10^(i·pH − pK₁ − … − pKᵢ), the amount with i protons gone over that with none.
 *
 * @param acidConstants - pK of each step at the temperature and ionic strength, first step first
 */
export function protonsGiven(ph: number, acidConstants: readonly number[]): number {
  const exponents = [0];
  for (const constant of acidConstants) exponents.push((exponents.at(-1) ?? 0) + ph - constant);
  // Over the largest, so that no power overflows.
  const largest = Math.max(...exponents);
  const amounts = exponents.map((each) => 10 ** (each - largest));
  const all = amounts.reduce((sum, each) => sum + each, 0);
  return amounts.reduce((sum, each, given) => sum + given * each, 0) / all;
}

/** Mass of acid in kg for an amount of alkali in mol, from its molar mass in kg/mol and the protons it gives. */
export function acidMass(alkali: number, molarMass: number, protons: number): number {
  return (alkali * molarMass) / protons;
}
