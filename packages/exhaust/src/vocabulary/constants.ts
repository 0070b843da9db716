import { constant } from '@wallflow/calculation';
import { molarHeatCapacity, molarMass } from '@wallflow/units';
import { molarGasConstant, molarMassOfDryAir } from '../gas/constants.js';
import { cfr1065, siBrochure } from '../sources.js';

// Constants that several definitions name. Each carries its kind, symbol, label and source.

export const gasConstant = constant(molarHeatCapacity, molarGasConstant, { symbol: 'R', label: 'Molar gas constant', source: siBrochure });

export const airMolarMass = constant(molarMass, molarMassOfDryAir, {
  symbol: 'M_{air}',
  label: 'Molar mass of dry air',
  source: cfr1065,
});
