/** The gases that lean exhaust consists of to better than a tenth of a per cent. */
export const exhaustSpecies = ['nitrogen', 'oxygen', 'carbonDioxide', 'water', 'argon'] as const;
export type ExhaustSpecies = (typeof exhaustSpecies)[number];

/** A number for each gas: mole fractions, viscosities, heat capacities. */
export type PerSpecies = Readonly<Record<ExhaustSpecies, number>>;

/** Molar masses in kg/mol, 40 CFR 1065.1005(f)(2), Table 7. */
export const molarMassOf: PerSpecies = {
  nitrogen: 0.0280134,
  oxygen: 0.0319988,
  carbonDioxide: 0.0440095,
  water: 0.01801528,
  argon: 0.039948,
};

/** Atomic masses in kg/mol, 40 CFR 1065.1005(f)(2), Table 7. */
export const atomicMass = { carbon: 0.0120107, hydrogen: 0.00100794, oxygen: 0.0159994 };

/** Mole fractions of dry air, 40 CFR 1065.1005(f)(1), Table 6 (from memory); they give the molar mass 28.96559 g/mol of its Table 7. */
export const dryAir: PerSpecies = { nitrogen: 0.78084, oxygen: 0.209445, carbonDioxide: 0.000375, water: 0, argon: 0.00934 };

/** A number per gas from a function of the gas. */
export function perExhaustSpecies(value: (species: ExhaustSpecies) => number): PerSpecies {
  return {
    nitrogen: value('nitrogen'),
    oxygen: value('oxygen'),
    carbonDioxide: value('carbonDioxide'),
    water: value('water'),
    argon: value('argon'),
  };
}

/** Mean of a property weighted by mole fractions. */
export function moleMean(fractions: PerSpecies, property: PerSpecies): number {
  return exhaustSpecies.reduce((sum, species) => sum + fractions[species] * property[species], 0);
}

/** Molar mass of a mixture in kg/mol. */
export function molarMassOfMixture(fractions: PerSpecies, molarMasses = molarMassOf): number {
  return moleMean(fractions, molarMasses);
}

/** Mole fractions of moist air from moles of water per mole of dry air. */
export function moistAir(waterPerDryAir: number): PerSpecies {
  return perExhaustSpecies((species) => (species === 'water' ? waterPerDryAir : dryAir[species]) / (1 + waterPerDryAir));
}
