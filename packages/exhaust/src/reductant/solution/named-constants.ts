import { constant } from '@wallflow/calculation';
import * as units from '@wallflow/units';
import { iceHeatCapacity, thermalProperties } from './sources.js';
import * as thermal from './thermal.js';

// Thermal constants of standard reductant that several definitions name.

const source = thermalProperties;
export const freezingTemperature = constant(units.temperature, thermal.freezingTemperature, {
  symbol: 'T_f',
  label: 'Freezing temperature',
  source,
});
export const heatOfFusion = constant(units.specificEnergy, thermal.heatOfFusion, { symbol: 'L', label: 'Heat of fusion', source });
export const liquidHeatCapacity = constant(units.specificHeatCapacity, thermal.liquidHeatCapacity, {
  symbol: 'c_l',
  label: 'Heat capacity of the liquid',
  source,
});
export const frozenHeatCapacity = constant(units.specificHeatCapacity, thermal.frozenHeatCapacity, {
  symbol: 'c_s',
  label: 'Heat capacity of the solid',
  source: iceHeatCapacity,
});
