import { constant } from '@wallflow/calculation';
import { massFraction, molarMass } from '@wallflow/units';
import { cfr1065 } from '../sources.js';
import {
  molarMassOfAmmonia,
  molarMassOfNitricOxide,
  molarMassOfNitrogenDioxide,
  molarMassOfUrea,
  molarMassOfWater,
  standardUreaFraction,
} from './constants.js';
import { iso22241Limits } from './reductant-concentration/kernel.js';
import { iso22241Part1 } from './sources.js';

// Constants that several definitions of this subject name.

const molarMassConstant = (value: number, symbol: string, label: string) =>
  constant(molarMass, value, { symbol, label: `Molar mass of ${label}`, source: cfr1065 });

export const nitricOxideMolarMass = molarMassConstant(molarMassOfNitricOxide, 'M_{NO}', 'NO');
export const nitrogenDioxideMolarMass = molarMassConstant(molarMassOfNitrogenDioxide, 'M_{NO_2}', 'NO2');
export const ammoniaMolarMass = molarMassConstant(molarMassOfAmmonia, 'M_{NH_3}', 'ammonia');
export const ureaMolarMass = molarMassConstant(molarMassOfUrea, 'M_u', 'urea');
export const waterMolarMass = molarMassConstant(molarMassOfWater, 'M_{H_2O}', 'water');

export const targetUreaFraction = constant(massFraction, standardUreaFraction, {
  symbol: 'w_0',
  label: 'Urea in fluid of the standard, by mass',
  source: iso22241Part1,
});

const [least, most] = iso22241Limits.ureaFraction;
export const leastUrea = constant(massFraction, least, { symbol: 'w_{min}', label: 'Least urea of the standard', source: iso22241Part1 });
export const mostUrea = constant(massFraction, most, { symbol: 'w_{max}', label: 'Most urea of the standard', source: iso22241Part1 });
