import { constant, formula, quantityOutput } from '@wallflow/calculation';
import { density, ratio, refractiveIndex, temperature } from '@wallflow/units';
import { densityScale, referenceTemperature, waterDensityAt20 } from './density.js';
import { indexScale, waterDensityAt25, waterIndexAt20 } from './refractive-index.js';
import { densitySlopePractice, pace1986, tanaka2001 } from './sources.js';

/** How the density of the fluid follows from `ureaFraction` and `fluidTemperature`, in every definition alike. */
export const solutionDensity = {
  intermediates: {
    densityAt20: quantityOutput(density, {
      symbol: '\\rho_{20}',
      label: 'Density of the fluid at 20 °C',
      digits: 4,
      leastDigits: 4,
      units: ['kg/m3'],
    }),
    fluidDensity: quantityOutput(density, { symbol: '\\rho', label: 'Density of the fluid', digits: 4, leastDigits: 4, units: ['kg/m3'] }),
  },
  constants: {
    waterDensity: constant(density, waterDensityAt20, { symbol: '\\rho_w', label: 'Density of water at 20 °C', source: tanaka2001 }),
    densityScale: constant(ratio, densityScale, {
      symbol: 'k',
      label: 'Factor that makes the density of urea solution 1090 kg/m³ at 32.5 % and 20 °C',
      source: pace1986,
    }),
    referenceTemperature: constant(temperature, referenceTemperature, {
      symbol: 'T_{20}',
      label: 'Temperature to which density and index refer',
      source: pace1986,
    }),
  },
  steps: [
    formula('densityAt20', 'waterDensity * (1 + densityScale * (0.2658 * ureaFraction + 0.033 * ureaFraction ^ 2))', pace1986),
    formula(
      'fluidDensity',
      'densityAt20 - (0.21 + 0.19 * ureaFraction / 0.325) * (fluidTemperature - referenceTemperature)',
      densitySlopePractice,
      'in kg/m³ per kelvin',
    ),
  ],
} as const;

/** What the relation between index and urea needs beside `ureaMolarMass`. */
export const indexConstants = {
  waterDensityAt25: constant(density, waterDensityAt25, { symbol: '\\rho_{25}', label: 'Density of water at 25 °C', source: tanaka2001 }),
  waterIndex: constant(refractiveIndex, waterIndexAt20, { symbol: 'n_w', label: 'Refractive index of water at 20 °C', source: pace1986 }),
  indexScale: constant(ratio, indexScale, {
    symbol: 'k_n',
    label: 'Factor that makes the index 1.38285 at 32.5 % and 20 °C',
    source: pace1986,
  }),
};

/** Index above that of water by the relation at 25 °C, from an index at 20 °C. */
export const indexExcessFormula = (index: string) => `(${index} - waterIndex) / indexScale`;

/** Change of the index per kelvin near 20 °C, with its sign turned. */
export const indexSlopeFormula = (urea: string) => `(0.9e-4 + 0.7e-4 * min(0.52, max(0, ${urea})) / 0.325)`;

/** Moles of urea per litre at 25 °C, from the mass fraction and from the index above that of water. */
export const molarityEquation = (urea: string, excess: string) =>
  `waterDensityAt25 * ${urea} * (1 + 0.2658 * ${urea} + 0.033 * ${urea} ^ 2) / (1000 * ureaMolarMass) = 117.66 * ${excess} + 29.753 * ${excess} ^ 2 + 185.56 * ${excess} ^ 3`;
