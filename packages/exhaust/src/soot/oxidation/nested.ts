import { nested } from '@wallflow/calculation';
import { sootOxidationRateCalculation } from './definition.js';

/** The choice of a rate law, handed on as it is. */
const chosenLaw = Object.fromEntries(
  [
    'kinetics',
    'ownOxygenFactor',
    'ownOxygenEnergy',
    'ownOxygenReference',
    'ownNitrogenDioxideFactor',
    'ownNitrogenDioxideEnergy',
    'ownNitrogenDioxideOrder',
  ].map((key) => [key, key]),
);

/** A rate of burning by the laws that this definition's inputs choose, with its working; `output` is a key of that calculation. */
export function burnRateAt<const Key extends string>(
  gives: Key,
  gas: { readonly filterTemperature: string; readonly oxygen: string; readonly nitrogenDioxide: string },
  output: 'burnRate' | 'oxygenRate' | 'nitrogenDioxideRate' | 'passiveShare' = 'burnRate',
) {
  return nested(gives, sootOxidationRateCalculation, { ...gas, ...chosenLaw }, output);
}
