import type { DiluteGasConstants } from '../dynamic-viscosity/kernel.js';
import { diluteAir, diluteAirViscosity } from '../dynamic-viscosity/kernel.js';
import type { PerSpecies } from '../species.js';
import { diluteArgon, diluteNitrogen, diluteOxygen } from '../viscosity-of-mixture/dilute-gas.js';

/** Share of the viscosity in µPa·s, and factor and power of the reduced inverse temperature, all giving mW/(m·K). */
export interface ConductivityConstants {
  readonly gas: DiluteGasConstants;
  readonly criticalTemperature: number;
  readonly viscosityFactor: number;
  readonly terms: readonly (readonly [factor: number, power: number])[];
}

/** Lemmon and Jacobsen 2004, Eq. 5 with Table IV. */
export const conductivityConstants = {
  air: {
    gas: diluteAir,
    criticalTemperature: 132.6312,
    viscosityFactor: 1.308,
    terms: [
      [1.405, -1.1],
      [-1.036, -0.3],
    ],
  },
  nitrogen: {
    gas: diluteNitrogen,
    criticalTemperature: 126.192,
    viscosityFactor: 1.511,
    terms: [
      [2.117, -1],
      [-3.332, -0.7],
    ],
  },
  oxygen: {
    gas: diluteOxygen,
    criticalTemperature: 154.581,
    viscosityFactor: 1.036,
    terms: [
      [6.283, -0.9],
      [-4.262, -0.6],
    ],
  },
  argon: { gas: diluteArgon, criticalTemperature: 150.687, viscosityFactor: 0.8158, terms: [[-0.432, -0.77]] },
} as const satisfies Record<string, ConductivityConstants>;

/** Thermal conductivity of a dilute gas in W/(m·K) at a temperature in K, Lemmon and Jacobsen 2004, Eq. 5. */
export function diluteConductivity(temperature: number, name: keyof typeof conductivityConstants): number {
  const { gas, criticalTemperature, viscosityFactor, terms } = conductivityConstants[name];
  const tau = criticalTemperature / temperature;
  const viscosity = diluteAirViscosity(temperature, gas) * 1e6;
  return 1e-3 * terms.reduce((sum, [factor, power]) => sum + factor * tau ** power, viscosityFactor * viscosity);
}

/** Thermal conductivity of dilute air in W/(m·K) at a temperature in K. */
export function diluteAirConductivity(temperature: number): number {
  return diluteConductivity(temperature, 'air');
}

/** Thermal conductivity of dilute water vapour in W/(m·K), IAPWS R15-11, Eq. 16 and Table 1. */
export function diluteWaterConductivity(temperature: number): number {
  const reduced = temperature / 647.096;
  const coefficients = [2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4];
  return (1e-3 * Math.sqrt(reduced)) / coefficients.reduce((sum, coefficient, power) => sum + coefficient / reduced ** power, 0);
}

/** Thermal conductivity of dilute carbon dioxide in W/(m·K), Vesovic and others 1990, Eqs 29 to 31 and Table 1. */
export function diluteCarbonDioxideConductivity(temperature: number): number {
  const reduced = temperature / 251.196;
  const collision = [0.4226159, 0.6280115, -0.5387661, 0.6735941, 0, 0, -0.4362677, 0.2255388].reduce(
    (sum, coefficient, power) => sum + coefficient / reduced ** power,
    0,
  );
  const inner = [2.387869e-2, 4.350794, -10.33404, 7.98159, -1.940558].reduce(
    (sum, coefficient, power) => sum + coefficient * (temperature / 100) ** (1 - power),
    0,
  );
  const internalHeat = 1 + Math.exp(-183.5 / temperature) * inner;
  return (1e-3 * 0.475598 * Math.sqrt(temperature) * (1 + 0.4 * internalHeat)) / collision;
}

/** Thermal conductivity in W/(m·K) of each pure gas. */
export function diluteConductivities(temperature: number): PerSpecies {
  return {
    nitrogen: diluteConductivity(temperature, 'nitrogen'),
    oxygen: diluteConductivity(temperature, 'oxygen'),
    carbonDioxide: diluteCarbonDioxideConductivity(temperature),
    water: diluteWaterConductivity(temperature),
    argon: diluteConductivity(temperature, 'argon'),
  };
}
