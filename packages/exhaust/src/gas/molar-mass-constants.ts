import { constant } from '@wallflow/calculation';
import { molarMass } from '@wallflow/units';
import { cfr1065 } from '../sources.js';
import { type ExhaustSpecies, molarMassOf } from './species.js';

const ofGas = (species: ExhaustSpecies, symbol: string, label: string) =>
  constant(molarMass, molarMassOf[species], { symbol: `M_{${symbol}}`, label: `Molar mass of ${label}`, source: cfr1065 });

/** Molar masses of the gases as the constants of a definition. */
export const molarMassConstants = {
  nitrogenMolarMass: ofGas('nitrogen', 'N_2', 'nitrogen'),
  oxygenMolarMass: ofGas('oxygen', 'O_2', 'oxygen'),
  carbonDioxideMolarMass: ofGas('carbonDioxide', 'CO_2', 'carbon dioxide'),
  waterMolarMass: ofGas('water', 'H_2O', 'water'),
  argonMolarMass: ofGas('argon', 'Ar', 'argon'),
};
