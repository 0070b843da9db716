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
 * How near the burning is to running away, if the soot did not run out: 1 where a steady state ceases to exist, proportional
 * to soot, oxygen and 1/flow. It is the heat released over that removed at the temperature T_c at which both curves touch
 * (Semenov 1928): k(T_c) m Δh / (ṁ c (T_c − T)). Undefined for a law so flat that nothing ever runs away.
 */
export function runawayIndex(input: RunawayInput, gasConstant = molarGasConstant): number | undefined {
  const { law, temperature, sootMass, oxygen, massFlow, gasSpecificHeat, heatOfCombustion } = input;
  const rise = criticalRise(law, temperature, gasConstant);
  if (rise === undefined) return undefined;
  const rate = oxidationRateConstant(law, temperature + rise, oxygen, gasConstant);
  return (rate * sootMass * heatOfCombustion) / (massFlow * gasSpecificHeat * rise);
}

/**
 * Rise in K beyond which no steady burning exists: T_c − T with T_c = (E/2R)(1 − √(1 − 4RT/E)), where the curves of heat
 * released and removed touch. One R T²/E, as often written, is its limit for high energies, some 15 % lower here.
 */
export function criticalRise(law: OxidationLaw, temperature: number, gasConstant = molarGasConstant): number | undefined {
  const share = (4 * gasConstant * temperature) / law.activationEnergy;
  if (!(share > 0 && share < 1)) return undefined;
  const root = Math.sqrt(1 - share);
  // 2T/(1 + √) − T, without the difference of two large numbers.
  return (temperature * (1 - root)) / (1 + root);
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
