import { constant, formula, quantityOutput } from '@wallflow/calculation';
import { density, ratio, temperature } from '@wallflow/units';
import { densityScale, referenceTemperature, waterDensityAt20 } from './density.js';
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
      label: 'Factor that makes the density 1090 kg/m³ at 32.5 % and 20 °C',
      source: pace1986,
    }),
    densityTemperature: constant(temperature, referenceTemperature, {
      symbol: 'T_{20}',
      label: 'Temperature of the density line',
      source: pace1986,
    }),
  },
  steps: [
    formula('densityAt20', 'waterDensity * (1 + densityScale * (0.2658 * ureaFraction + 0.033 * ureaFraction ^ 2))', pace1986),
    formula(
      'fluidDensity',
      'densityAt20 - (0.21 + 0.19 * ureaFraction / 0.325) * (fluidTemperature - densityTemperature)',
      densitySlopePractice,
      'in kg/m³ per kelvin',
    ),
  ],
} as const;
