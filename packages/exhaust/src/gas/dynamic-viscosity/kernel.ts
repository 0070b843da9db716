/** Constants of Sutherland's formula for one pure gas. */
export interface SutherlandConstants {
  /** Viscosity at the reference temperature in Pa·s. */
  readonly referenceViscosity: number;
  /** Reference temperature in K; it belongs with the other two. */
  readonly referenceTemperature: number;
  /** Sutherland temperature in K. */
  readonly sutherlandTemperature: number;
}

/** Air, 40 CFR 1065.640 Table 4; stated to hold within 2 % from 170 K to 1900 K. */
export const sutherlandAir: SutherlandConstants = {
  referenceViscosity: 1.716e-5,
  referenceTemperature: 273,
  sutherlandTemperature: 111,
};

/** Dynamic viscosity in Pa·s at a temperature in K by Sutherland's formula, 40 CFR 1065.640(d)(1). */
export function sutherlandViscosity(temperature: number, gas: SutherlandConstants = sutherlandAir): number {
  const { referenceViscosity, referenceTemperature, sutherlandTemperature } = gas;
  const ratio = temperature / referenceTemperature;
  return (referenceViscosity * ratio ** 1.5 * (referenceTemperature + sutherlandTemperature)) / (temperature + sutherlandTemperature);
}

/** Constants of the dilute-gas viscosity of air. */
export interface DiluteGasConstants {
  /** Molar mass in g/mol, Lennard-Jones size in nm, energy over k in K, as the source prints them. */
  readonly molarMass: number;
  readonly size: number;
  readonly energy: number;
  readonly collision: readonly [number, number, number, number, number];
}

/** Air after Lemmon and Jacobsen 2004, Table I and II. */
export const diluteAir: DiluteGasConstants = {
  molarMass: 28.9586,
  size: 0.36,
  energy: 103.3,
  collision: [0.431, -0.4623, 0.08406, 0.005341, -0.00331],
};

/** Collision integral of dilute air at a temperature in K, Lemmon and Jacobsen 2004, Eq. 3. */
export function collisionIntegral(temperature: number, air: DiluteGasConstants = diluteAir): number {
  const logarithm = Math.log(temperature / air.energy);
  return Math.exp(air.collision.reduce((sum, coefficient, power) => sum + coefficient * logarithm ** power, 0));
}

/**
 * Dynamic viscosity of dilute air in Pa·s at a temperature in K, Lemmon and Jacobsen 2004, Eqs 2 and 3.
 *
 * More exact than Sutherland's formula above about 600 K.
 */
export function diluteAirViscosity(temperature: number, air: DiluteGasConstants = diluteAir): number {
  const microPascalSeconds = (0.0266958 * Math.sqrt(air.molarMass * temperature)) / (air.size ** 2 * collisionIntegral(temperature, air));
  return microPascalSeconds * 1e-6;
}
