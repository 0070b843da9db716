import * as wf from '@wallflow/calculation';
import { fraction, length, massPerDistance, volume, volumePerDistance } from '@wallflow/units';
import { dioxideShare, fuelCarbonInput, fuelDensityInput } from '../fuel-inputs.js';
import { dieselFuel, fuelPerDistance } from '../sources.js';
import { regenerationFuelPerDistance } from './kernel.js';

export const regenerationFuelPenaltyCalculation = wf.defineCalculation({
  id: 'regeneration-fuel-penalty',
  subject: 'regeneration',
  title: 'Fuel and carbon dioxide of regenerations on the road',
  purpose: 'How much do regenerations add to the fuel consumption and to the carbon dioxide, per distance?',
  keywords: 'fuel penalty, L/100 km, mpg, CO2, consumption, regen, DPF, burn-off',
  method: 'fuel of one regeneration over the distance between two',
  inputs: {
    fuelPerEvent: wf.quantity(volume, {
      symbol: 'V_f',
      label: 'Extra fuel of one regeneration',
      range: '0 <= x <= 20 L',
      example: '480 mL',
      units: ['L', 'mL'],
    }),
    distanceBetween: wf.quantity(length, {
      symbol: 'd',
      label: 'Distance between two regenerations',
      description: 'Count interrupted attempts too.',
      range: '0 < x <= 10000 km',
      usual: [
        '50 km',
        '1500 km',
        { below: 'regenerations this frequent are a fault: look for the cause', above: 'control units hardly ever wait this long' },
      ],
      example: '280 km',
      units: ['km', 'mi'],
    }),
    fuelConsumption: wf.quantity(volumePerDistance, {
      symbol: 'q',
      label: 'Fuel consumption',
      description: 'Without regenerations.',
      range: '0 < x <= 100 L/100km',
      usual: ['3 L/100km', '60 L/100km', 'a small car uses about 4 L/100 km, a truck up to 60 L/100 km'],
      example: '22 L/100km',
      units: ['L/100km', 'mpg_imp', 'mpg_US'],
    }),
    fuelDensity: fuelDensityInput,
    fuelCarbon: fuelCarbonInput,
  },
  outputs: {
    extraConsumption: wf.quantityOutput(volumePerDistance, {
      symbol: '\\Delta q',
      label: 'Extra consumption',
      digits: 3,
      units: ['L/100km'],
    }),
    penalty: wf.quantityOutput(fraction, { symbol: 'p', label: 'Extra consumption as a share', digits: 3, units: ['%'] }),
    extraCarbonDioxide: wf.quantityOutput(massPerDistance, {
      symbol: 'e_{CO_2}',
      label: 'Extra carbon dioxide',
      digits: 3,
      units: ['g/km'],
    }),
  },
  constants: { dioxideShare },
  answer: 'penalty',
  steps: [
    wf.formula('extraConsumption', 'fuelPerEvent / distanceBetween', fuelPerDistance),
    wf.formula('extraCarbonDioxide', 'extraConsumption * fuelDensity * fuelCarbon * dioxideShare', dieselFuel),
    wf.formula('penalty', 'extraConsumption / fuelConsumption', fuelPerDistance),
  ],
  assumptions: { mean_interval: 'The distance between regenerations is the mean of many, interrupted ones included.' },
  limits: { back_pressure: 'The extra fuel that a loaded filter costs through its back-pressure is not counted.' },
  compute(input, { constants }) {
    const extraConsumption = regenerationFuelPerDistance(input.fuelPerEvent, input.distanceBetween);
    return {
      extraConsumption,
      penalty: extraConsumption / input.fuelConsumption,
      extraCarbonDioxide: extraConsumption * input.fuelDensity * input.fuelCarbon * constants.dioxideShare,
    };
  },
});
