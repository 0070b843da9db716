import { nested } from '@wallflow/calculation';
import { sootOxidationRateCalculation } from '../soot/oxidation/definition.js';

/** The inputs of an own rate law, handed on to another calculation as they are. */
export const ownLaw = {
  ownOxygenFactor: 'ownOxygenFactor',
  ownOxygenEnergy: 'ownOxygenEnergy',
  ownOxygenReference: 'ownOxygenReference',
  ownNitrogenDioxideFactor: 'ownNitrogenDioxideFactor',
  ownNitrogenDioxideEnergy: 'ownNitrogenDioxideEnergy',
  ownNitrogenDioxideOrder: 'ownNitrogenDioxideOrder',
};

/** The rate at which oxygen burns soot, at a temperature and with an oxygen content of this definition, by the chosen law. */
export function oxygenRateAt<const Key extends string>(gives: Key, temperature: string, oxygen: string, law?: string) {
  const kinetics = law === undefined ? 'kinetics' : { is: law };
  const inputs = { filterTemperature: temperature, oxygen, nitrogenDioxide: { is: '0 ppm' }, kinetics, ...ownLaw };
  return nested(gives, sootOxidationRateCalculation, inputs, 'oxygenRate');
}
