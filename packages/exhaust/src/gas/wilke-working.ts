import { quantityOutput, tableOutput } from '@wallflow/calculation';
import { dynamicViscosity, molarMass, ratio } from '@wallflow/units';
import { ofParts } from './mixture-working.js';
import { exhaustSpecies, molarMassOf, type PerSpecies } from './species.js';
import { diluteArgon, diluteNitrogen, diluteOxygen } from './viscosity-of-mixture/dilute-gas.js';
import { wilkeDenominator } from './viscosity-of-mixture/kernel.js';

/** Viscosity of a gas at its temperature; five digits, as the correlations are given. */
export const viscosityOutput = (symbol: string, label: string) =>
  quantityOutput(dynamicViscosity, { symbol, label, digits: 5, units: ['uPa.s', 'Pa.s'] });

const lemmonJacobsen = ({ molarMass: mass, energy, size, collision }: typeof diluteNitrogen) => {
  const [first, ...others] = collision;
  const exponent = others.map(
    (a, index) => ` ${a < 0 ? '-' : '+'} ${Math.abs(a)} * ln(gasTemperature / ${energy})${index === 0 ? '' : ` ^ ${index + 1}`}`,
  );
  return `as(0.0266958 * sqrt(${mass} * gasTemperature) / (${size} ^ 2 * exp(${first}${exponent.join('')})), 'uPa.s')`;
};

/** The dilute-gas viscosity of each part, as the ways of a column. */
export const diluteViscosityRows = ofParts(
  (species) =>
    ({
      nitrogen: lemmonJacobsen(diluteNitrogen),
      oxygen: lemmonJacobsen(diluteOxygen),
      argon: lemmonJacobsen(diluteArgon),
      carbonDioxide:
        "as(1.00697 * sqrt(gasTemperature) / exp(0.235156 - 0.491266 * ln(gasTemperature / 251.196) + 0.05211155 * ln(gasTemperature / 251.196) ^ 2 + 0.05347906 * ln(gasTemperature / 251.196) ^ 3 - 0.01537102 * ln(gasTemperature / 251.196) ^ 4), 'uPa.s')",
      water:
        "as(100 * sqrt(gasTemperature / 647.096) / (1.67752 + 2.20462 * 647.096 / gasTemperature + 0.6366564 * (647.096 / gasTemperature) ^ 2 - 0.241605 * (647.096 / gasTemperature) ^ 3), 'uPa.s')",
    })[species],
);

/**
 * How much the other parts hinder each one, by Wilke's rule: a table of the same rows as `gasParts`, in whose formulas a bare name is
 * the part itself and what is summed runs over all parts. `symbols` are of its own viscosity and of what comes out.
 */
export const hindranceTable = (symbols: { readonly viscosity: string; readonly hindrance: string }, label: string) =>
  tableOutput({
    label,
    columns: {
      ownMolarMass: quantityOutput(molarMass, { symbol: 'M_k', label: 'Its molar mass', digits: 6, units: ['g/mol'] }),
      ownViscosity: viscosityOutput(symbols.viscosity, 'Its viscosity'),
      hindrance: quantityOutput(ratio, { symbol: symbols.hindrance, label: 'Sum of the factors of all parts, by their shares', digits: 5 }),
    },
  });

/** Formulas of that table; `viscosity` is the column of `gasParts` that holds the viscosities. */
export const hindranceRows = (viscosity: string) => ({
  ownMolarMass: 'gasParts.partMolarMass',
  ownViscosity: `gasParts.${viscosity}`,
  hindrance: `sum(gasParts.share * (1 + sqrt(ownViscosity / gasParts.${viscosity}) * (gasParts.partMolarMass / ownMolarMass) ^ 0.25) ^ 2 / sqrt(8 * (1 + ownMolarMass / gasParts.partMolarMass)))`,
});

export function hindranceOf(fractions: PerSpecies, viscosities: PerSpecies) {
  return exhaustSpecies.map((part) => ({
    ownMolarMass: molarMassOf[part],
    ownViscosity: viscosities[part],
    hindrance: wilkeDenominator(part, fractions, viscosities),
  }));
}
