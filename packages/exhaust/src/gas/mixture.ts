import { type ComputeContext, type Constants, known, say } from '@wallflow/calculation';
import { exhaustComposition, waterPerDryAirOfHumidity } from './composition/kernel.js';
import { moistAir, type PerSpecies } from './species.js';

export interface MixtureInput {
  readonly gas: 'exhaust' | 'air';
  readonly lambda?: number | undefined;
  readonly hydrogenToCarbon?: number | undefined;
  readonly oxygenToCarbon?: number | undefined;
  readonly humidity: number;
}

/** Mole fractions of the gas that the inputs describe. */
export function mixtureOf(input: MixtureInput, context?: Pick<ComputeContext<Constants>, 'assume'>): PerSpecies {
  const waterPerDryAir = waterPerDryAirOfHumidity(input.humidity);
  if (input.gas === 'air') return moistAir(waterPerDryAir);
  context?.assume(
    'complete_combustion',
    say`All fuel is burnt to carbon dioxide and water; for lean diesel exhaust this holds to within 0.1 % by volume.`,
  );
  const fuel = { hydrogenToCarbon: known(input.hydrogenToCarbon), oxygenToCarbon: known(input.oxygenToCarbon) };
  return exhaustComposition({ lambda: known(input.lambda), fuel, waterPerDryAir });
}
