import { cases, choiceOutput, formula, nested, optional, quantityOutput, type Step } from '@wallflow/calculation';
import { molarMass, moleFraction, ratio } from '@wallflow/units';
import { cfr1065 } from '../sources.js';
import { airMolarMass } from '../vocabulary/constants.js';
import { exhaustCompositionCalculation } from './composition/definition.js';
import { molarMassConstants } from './molar-mass-constants.js';
import { dryAir, type ExhaustSpecies, exhaustSpecies, type PerSpecies } from './species.js';

const share = (symbol: string, label: string) => quantityOutput(moleFraction, { symbol, label, digits: 4, units: ['%', 'ppm'] });

/** A formula for each part of the mixture, as the ways of a column. */
export const ofParts = (value: (species: ExhaustSpecies) => string) =>
  Object.fromEntries(exhaustSpecies.map((species) => [`part == '${species}'`, value(species)]));

/** Rows of the table, one for each part, with what `more` adds. */
export function partsOf<T extends object>(fractions: PerSpecies, molarMasses: PerSpecies, more: (species: ExhaustSpecies) => T) {
  return exhaustSpecies.map((part) => ({ part, share: fractions[part], partMolarMass: molarMasses[part], ...more(part) }));
}

/** How the mole fractions of the gas follow from `mixtureFields`, in every definition alike, and a table of its parts. */
export const mixtureWorking = {
  intermediates: {
    waterPerDryAir: quantityOutput(ratio, { symbol: 'w_a', label: 'Moles of water per mole of dry intake air', digits: 4 }),
    nitrogen: share('x_{N_2}', 'Nitrogen'),
    oxygen: share('x_{O_2}', 'Oxygen'),
    carbonDioxide: share('x_{CO_2}', 'Carbon dioxide'),
    water: share('x_{H_2O}', 'Water'),
    argon: share('x_{Ar}', 'Argon'),
  },
  columns: {
    part: choiceOutput({
      label: 'Part',
      options: { nitrogen: 'nitrogen', oxygen: 'oxygen', carbonDioxide: 'carbon dioxide', water: 'water', argon: 'argon' },
    }),
    share: share('x_i', 'Share'),
    partMolarMass: quantityOutput(molarMass, { symbol: 'M_i', label: 'Molar mass of the part', digits: 6, units: ['g/mol'] }),
  },
  constants: { ...molarMassConstants, airMolarMass },
  steps: [
    formula('waterPerDryAir', 'airMolarMass / waterMolarMass * humidity', cfr1065, '1065.1005(f)(2), Table 7'),
    ...exhaustSpecies.map(
      (species): Step<ExhaustSpecies> =>
        cases(species, {
          "gas == 'air'": species === 'water' ? 'waterPerDryAir / (1 + waterPerDryAir)' : `${dryAir[species]} / (1 + waterPerDryAir)`,
          otherwise: nested(species, exhaustCompositionCalculation, {
            lambda: 'lambda',
            hydrogenToCarbon: 'hydrogenToCarbon',
            oxygenToCarbon: 'oxygenToCarbon',
            humidity: 'humidity',
          }),
        }),
    ),
  ],
  /** Formulas of the columns. */
  rows: { share: ofParts((species) => species), partMolarMass: ofParts((species) => `${species}MolarMass`) },
} as const;

type Intermediates = typeof mixtureWorking.intermediates;

/** The same results where the gas is not always a mixture. */
export const optionalMixture = Object.fromEntries(
  Object.entries(mixtureWorking.intermediates).map(([key, output]) => [key, optional(output)]),
) as { readonly [Key in keyof Intermediates]: Omit<Intermediates[Key], 'optional'> & { readonly optional: true } };
