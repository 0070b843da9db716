import { type ComputeContext, type Constants, missingInputs, type Refusal } from '@wallflow/calculation';
import { exhaustComposition, waterPerDryAirOfHumidity } from './composition/kernel.js';
import { moistAir, type PerSpecies } from './species.js';

export interface MixtureInput {
  readonly gas: 'exhaust' | 'air';
  readonly lambda?: number | undefined;
  readonly hydrogenToCarbon: number;
  readonly oxygenToCarbon: number;
  readonly humidity: number;
}

/** Mole fractions of the gas that the inputs describe; exhaust needs a lambda. */
export function mixtureOf(input: MixtureInput, context?: Pick<ComputeContext<Constants>, 'assume'>): PerSpecies | Refusal {
  const waterPerDryAir = waterPerDryAirOfHumidity(input.humidity);
  if (input.gas === 'air') return moistAir(waterPerDryAir);
  if (input.lambda === undefined) return missingInputs('lambda');
  context?.assume(
    'complete_combustion',
    'All fuel is burnt to carbon dioxide and water; lean diesel exhaust is so within 0.1 % of its volume.',
  );
  return exhaustComposition({ lambda: input.lambda, fuel: input, waterPerDryAir });
}
