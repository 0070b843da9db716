import { molarGasConstant } from '../../gas/constants.js';

/** A rate or equilibrium constant at a reference temperature and its activation or adsorption energy. */
export interface Arrhenius {
  readonly atReference: number;
  /** J/mol */
  readonly energy: number;
  /** K */
  readonly reference: number;
}

/** Value at a temperature in K. */
export function arrhenius({ atReference, energy, reference }: Arrhenius, temperature: number): number {
  return atReference * Math.exp((-energy / molarGasConstant) * (1 / temperature - 1 / reference));
}

/**
 * Teaching model of an SCR catalyst. Its structure is that of the literature: NOx from the gas reacts with adsorbed
 * ammonia (Eley–Rideal), ammonia adsorbs and desorbs, and burns when hot. Its numbers were chosen for a plausible shape
 * and belong to no catalyst.
 */
export interface ScrModel {
  /** Reaction of NO alone on a surface full of ammonia, 1/s at 0 °C and 101.325 kPa. */
  readonly reaction: Arrhenius;
  /** What the fast reaction adds where NO and NO2 are in equal parts, 1/s. It needs less heat. */
  readonly fastReaction: Arrhenius;
  /** Share of the first rate that is lost where all NOx is NO2. */
  readonly nitrogenDioxideLoss: number;
  /** Transport to the wall, 1/s. */
  readonly transport: number;
  /** Adsorption constant of ammonia, per mole fraction. */
  readonly adsorption: Arrhenius;
  /** Burning of ammonia, 1/s. */
  readonly oxidation: Arrhenius;
}

export const teachingScrModel: ScrModel = {
  reaction: { atReference: 25, energy: 60_000, reference: 523.15 },
  fastReaction: { atReference: 100, energy: 40_000, reference: 523.15 },
  nitrogenDioxideLoss: 0.7,
  transport: 60,
  adsorption: { atReference: 60_000, energy: -60_000, reference: 523.15 },
  oxidation: { atReference: 1, energy: 150_000, reference: 723.15 },
};

/** Share of the surface that ammonia covers in balance with a mole fraction in the gas (Langmuir). */
export function ammoniaCoverage(temperature: number, ammonia: number, model: ScrModel = teachingScrModel): number {
  const loading = arrhenius(model.adsorption, temperature) * Math.max(0, ammonia);
  return loading / (1 + loading);
}

/** Rate constant of NOx in 1/s on a surface with this coverage; reaction and transport in series. */
export function noxRate(
  temperature: number,
  coverage: number,
  shares: { readonly fast: number; readonly nitrogenDioxide: number },
  model: ScrModel = teachingScrModel,
): number {
  const slow = arrhenius(model.reaction, temperature) * (1 - model.nitrogenDioxideLoss * shares.nitrogenDioxide);
  const reaction = (slow + arrhenius(model.fastReaction, temperature) * shares.fast) * coverage;
  return (reaction * model.transport) / (reaction + model.transport);
}
