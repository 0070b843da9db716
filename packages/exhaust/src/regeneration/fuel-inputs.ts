import { quantityWithDefault } from '@wallflow/calculation';
import { density, massFraction, specificEnergy, specificHeatCapacity } from '@wallflow/units';

/** Properties of diesel fuel with usual defaults, shared by the calculations on the fuel of a regeneration. */
export const heatingValueInput = quantityWithDefault(specificEnergy, {
  symbol: 'H_u',
  label: 'Lower heating value of the fuel',
  min: '30 MJ/kg',
  max: '50 MJ/kg',
  example: '42.6 MJ/kg',
  default: '42.6 MJ/kg',
  defaultReason: 'usual diesel fuel, from memory; with 7 % biodiesel about 42.2',
  units: ['MJ/kg', 'kJ/kg'],
});

export const fuelDensityInput = quantityWithDefault(density, {
  symbol: '\\rho_f',
  label: 'Density of the fuel',
  min: '0.7 kg/L',
  max: '1 kg/L',
  usual: ['0.8 kg/L', '0.88 kg/L'],
  usualReason: 'diesel fuel lies between 0.80 and 0.88 kg/L',
  example: '0.835 kg/L',
  default: '0.835 kg/L',
  defaultReason: 'usual diesel fuel at 15 °C, from memory',
  units: ['kg/L', 'kg/m3'],
});

export const fuelCarbonInput = quantityWithDefault(massFraction, {
  symbol: 'w_C',
  label: 'Carbon content of the fuel',
  min: '70 %',
  max: '95 %',
  example: '86.2 %',
  default: '86.2 %',
  defaultReason: 'usual diesel fuel, from memory',
  units: ['%'],
});

export const exhaustHeatInput = quantityWithDefault(specificHeatCapacity, {
  symbol: 'c_g',
  label: 'Specific heat of the exhaust',
  min: '950 J/(kg.K)',
  max: '1300 J/(kg.K)',
  example: '1080 J/(kg.K)',
  default: '1080 J/(kg.K)',
  defaultReason: 'air at 730 K, the mean of a catalyst that heats from 300 °C to 600 °C, from memory',
});
