import { constant, quantity } from '@wallflow/calculation';
import { density, massFraction, massRatio, specificEnergy, specificHeatCapacity } from '@wallflow/units';
import { dioxidePerCarbon } from './heat/kernel.js';
import { dieselFuel } from './sources.js';

/** Properties of diesel fuel with usual defaults, shared by the calculations on the fuel of a regeneration. */
export const heatingValueInput = quantity(specificEnergy, {
  symbol: 'H_u',
  label: 'Lower heating value of the fuel',
  range: '30 <= x <= 50 MJ/kg',
  default: ['42.6 MJ/kg', 'usual diesel fuel, from memory; with 7 % biodiesel about 42.2'],
  units: ['MJ/kg', 'kJ/kg'],
});

export const fuelDensityInput = quantity(density, {
  symbol: '\\rho_f',
  label: 'Density of the fuel',
  range: '0.7 <= x <= 1 kg/L',
  usual: ['0.8 kg/L', '0.88 kg/L', 'diesel fuel lies between 0.80 and 0.88 kg/L'],
  default: ['0.835 kg/L', 'usual diesel fuel at 15 °C, from memory'],
  units: ['kg/L', 'kg/m3'],
});

export const fuelCarbonInput = quantity(massFraction, {
  symbol: 'w_C',
  label: 'Carbon content of the fuel',
  range: '70 <= x <= 95 %',
  default: ['86.2 %', 'usual diesel fuel, from memory'],
  units: ['%'],
});

export const exhaustHeatInput = quantity(specificHeatCapacity, {
  symbol: 'c_g',
  label: 'Specific heat of the exhaust',
  range: '950 <= x <= 1300 J/(kg.K)',
  default: ['1080 J/(kg.K)', 'air at 730 K, the mean of 300 °C before and 600 °C after the catalyst; from memory'],
});

export const dioxideShare = constant(massRatio, dioxidePerCarbon, {
  symbol: 'r_{CO_2}',
  label: 'Carbon dioxide per carbon, by mass',
  source: dieselFuel,
});
