import { type FuelFormula, oxygenDemand } from '../air-fuel-ratio/kernel.js';
import { dryAir } from '../species.js';

export interface LambdaFromGasInput {
  /** Measured mole fraction. */
  readonly moleFraction: number;
  readonly fuel: FuelFormula;
  /** Moles of water per mole of dry intake air. */
  readonly waterPerDryAir: number;
  /** Whether the sample keeps its water (a sensor in the exhaust) or was dried (a cold analyser). */
  readonly basis: 'wet' | 'dry';
}

/** Exhaust moles per mole of carbon burnt are `fixed + perLambda · λ`, by atom balance. */
export interface ExhaustMoles {
  readonly fixed: number;
  readonly perLambda: number;
}

/** The two numbers for a wet or a dry sample. */
export function exhaustMolesByLambda({ fuel, waterPerDryAir, basis }: Omit<LambdaFromGasInput, 'moleFraction'>): ExhaustMoles {
  const demand = oxygenDemand(fuel);
  const wet = basis === 'wet';
  return {
    fixed: 1 - demand + (wet ? fuel.hydrogenToCarbon / 2 : 0),
    perLambda: (demand / dryAir.oxygen) * (1 + (wet ? waterPerDryAir : 0)),
  };
}

/** Lambda from oxygen; negative or infinite when the reading is that of air or more. */
export function lambdaFromOxygen(input: LambdaFromGasInput): number {
  const demand = oxygenDemand(input.fuel);
  const { fixed, perLambda } = exhaustMolesByLambda(input);
  return (demand + input.moleFraction * fixed) / (demand - input.moleFraction * perLambda);
}

/** Lambda from carbon dioxide; below 1 when the reading exceeds complete combustion without excess air. */
export function lambdaFromCarbonDioxide(input: LambdaFromGasInput): number {
  const { fixed, perLambda } = exhaustMolesByLambda(input);
  const carbonDioxideOfAir = (oxygenDemand(input.fuel) * dryAir.carbonDioxide) / dryAir.oxygen;
  return (1 - input.moleFraction * fixed) / (input.moleFraction * perLambda - carbonDioxideOfAir);
}
