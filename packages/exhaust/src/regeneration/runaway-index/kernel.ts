import { molarGasConstant } from '../../gas/constants.js';
import { molarMassOfCarbon, type OxidationLaw, oxidationRateConstant } from '../../soot/oxidation/kernel.js';

export interface RunawayInput {
  readonly law: OxidationLaw;
  /** Temperature of gas and filter in K. */
  readonly temperature: number;
  /** Soot in kg. */
  readonly sootMass: number;
  /** Mole fraction of oxygen. */
  readonly oxygen: number;
  /** Exhaust mass flow in kg/s. */
  readonly massFlow: number;
  /** Specific heat of the gas in J/(kg·K). */
  readonly gasSpecificHeat: number;
  /** Heat of burning in J/kg. */
  readonly heatOfCombustion: number;
}

/**
 * How near the burning is to running away: 1 where a steady state ceases to exist (Semenov 1928), proportional to soot,
 * oxygen and 1/flow: e · k m Δh E / (R T² ṁ c).
 */
export function runawayIndex(input: RunawayInput, gasConstant = molarGasConstant): number {
  const { law, temperature, sootMass, oxygen, massFlow, gasSpecificHeat, heatOfCombustion } = input;
  const rate = oxidationRateConstant(law, temperature, oxygen, gasConstant);
  const sharpness = law.activationEnergy / (gasConstant * temperature ** 2);
  return (Math.E * rate * sootMass * heatOfCombustion * sharpness) / (massFlow * gasSpecificHeat);
}

/** Rise in K beyond which no steady burning exists, one R T²/E. */
export function criticalRise(law: OxidationLaw, temperature: number, gasConstant = molarGasConstant): number {
  return (gasConstant * temperature ** 2) / law.activationEnergy;
}

/** Rise in K of the gas if all its oxygen burnt soot: x M_C Δh / ((1 − f/2) M_g c). */
export function oxygenRise(
  { oxygen, gasSpecificHeat, heatOfCombustion }: Pick<RunawayInput, 'oxygen' | 'gasSpecificHeat' | 'heatOfCombustion'>,
  carbonMonoxideShare: number,
  gasMolarMass: number,
  carbonMolarMass = molarMassOfCarbon,
): number {
  return (oxygen * carbonMolarMass * heatOfCombustion) / ((1 - carbonMonoxideShare / 2) * gasMolarMass * gasSpecificHeat);
}
