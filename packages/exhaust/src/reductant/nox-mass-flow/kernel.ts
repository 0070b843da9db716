import { molarMassOfNitrogenDioxide } from '../constants.js';

/** How the ratio of gas densities in the mass equation is obtained. */
export type NoxCoefficientEdition = 'exact' | 'un-r49-2008' | 'un-r49-later';

/**
 * Coefficient u of NOx for diesel exhaust, in g/h per ppm and kg/h as the regulations print it, at an
 * exhaust density of 1.293 kg/m³ (0 °C, 101.3 kPa). Both values are in print.
 */
export const printedNoxCoefficient = { 'un-r49-2008': 0.001587, 'un-r49-later': 0.001586 } as const;

export interface NoxMassRatioInput {
  readonly edition: NoxCoefficientEdition;
  /** Molar mass of the wet exhaust in kg/mol; used by the exact method only. */
  readonly exhaustMolarMass: number;
}

/** Mass of NOx counted as NO2 per mass of wet exhaust and per mole fraction, without unit: M(NO2)/M(exhaust), or 1000 u. */
export function noxMassRatio({ edition, exhaustMolarMass }: NoxMassRatioInput, molarMass = molarMassOfNitrogenDioxide): number {
  return edition === 'exact' ? molarMass / exhaustMolarMass : printedNoxCoefficient[edition] * 1000;
}

export interface NoxMassFlowInput {
  /** Mole fraction of NOx in wet exhaust. */
  readonly wetMoleFraction: number;
  /** Mass flow of wet exhaust in kg/s. */
  readonly exhaustMassFlow: number;
  /** From `noxMassRatio`. */
  readonly massRatio: number;
  /** Humidity factor of a test cycle; 1 for the mass that really flows. */
  readonly humidityFactor: number;
}

/** Mass flow of NOx counted as NO2 in kg/s: u c k q (UN Regulation No. 49, raw exhaust). */
export function noxMassFlow({ wetMoleFraction, exhaustMassFlow, massRatio, humidityFactor }: NoxMassFlowInput): number {
  return massRatio * wetMoleFraction * humidityFactor * exhaustMassFlow;
}
