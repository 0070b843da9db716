import { constant, defineCalculation, quantity, quantityOutput } from '@wallflow/calculation';
import { fraction, length, massPerDistance, massRatio, volume, volumePerDistance } from '@wallflow/units';
import * as z from 'zod';
import { fuelCarbonInput, fuelDensityInput } from '../fuel-inputs.js';
import { dioxidePerCarbon } from '../heat/kernel.js';
import { dieselFuel, fuelPerDistance } from '../sources.js';
import { regenerationFuelPerDistance } from './kernel.js';

export const regenerationFuelPenaltyCalculation = defineCalculation({
  id: 'regeneration-fuel-penalty',
  version: '1.0.0',
  subject: 'regeneration',
  title: 'Fuel and carbon dioxide of regenerations on the road',
  purpose: 'How much do regenerations add to the fuel consumption and to the carbon dioxide, per distance?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['fuel penalty', 'L/100 km', 'CO2', 'consumption'],
  method: 'fuel of one regeneration over the distance between two',
  inputs: z.strictObject({
    fuelPerEvent: quantity(volume, {
      symbol: 'V_f',
      label: 'Extra fuel of one regeneration',
      min: '0 L',
      max: '20 L',
      example: '0.3 L',
      units: ['L', 'mL'],
    }),
    distanceBetween: quantity(length, {
      symbol: 'd',
      label: 'Distance between two regenerations',
      description: 'Attempts that were interrupted count too.',
      above: '0 km',
      max: '10000 km',
      usual: ['50 km', '1500 km'],
      usualReason: { below: 'so often is a fault: look for its cause', above: 'control units hardly ever wait so long' },
      example: '400 km',
      units: ['km', 'mi'],
    }),
    consumption: quantity(volumePerDistance, {
      symbol: 'q',
      label: 'Consumption without regenerations',
      above: '0 L/100km',
      max: '100 L/100km',
      usual: ['3 L/100km', '60 L/100km'],
      usualReason: 'a small car uses some 4 L/100km, a truck up to 60 L/100km',
      example: '6 L/100km',
      units: ['L/100km', 'mpg_imp', 'mpg_US'],
    }),
    fuelDensity: fuelDensityInput,
    fuelCarbon: fuelCarbonInput,
  }),
  intermediates: {},
  outputs: {
    extraConsumption: quantityOutput(volumePerDistance, { symbol: '\\Delta q', label: 'Extra consumption', digits: 3, units: ['L/100km'] }),
    penalty: quantityOutput(fraction, { symbol: 'p', label: 'Extra consumption, share', digits: 3, units: ['%'] }),
    extraCarbonDioxide: quantityOutput(massPerDistance, { symbol: 'e_{CO_2}', label: 'Extra carbon dioxide', digits: 3, units: ['g/km'] }),
  },
  constants: {
    dioxideShare: constant(massRatio, dioxidePerCarbon, {
      symbol: 'r_{CO_2}',
      label: 'Carbon dioxide per carbon, by mass',
      source: 'dieselFuel',
    }),
  },
  steps: [
    { gives: 'extraConsumption', tex: '[[extraConsumption]] = \\frac{[[fuelPerEvent]]}{[[distanceBetween]]}', source: 'fuelPerDistance' },
    {
      gives: 'extraCarbonDioxide',
      tex: '[[extraCarbonDioxide]] = [[extraConsumption]]\\,[[fuelDensity]]\\,[[fuelCarbon]]\\,[[dioxideShare]]',
      source: 'dieselFuel',
    },
    { gives: 'penalty', tex: '[[penalty]] = \\frac{[[extraConsumption]]}{[[consumption]]}', source: 'fuelPerDistance' },
  ],
  assumptions: [{ code: 'mean_interval', text: 'The distance between regenerations is a mean over many, interrupted ones included.' }],
  limits: [{ code: 'back_pressure', text: 'The fuel that a loaded filter costs by its back pressure is not part of it.' }],
  cautions: [],
  sources: { fuelPerDistance, dieselFuel },
  compute(input, { constants }) {
    const extraConsumption = regenerationFuelPerDistance(input.fuelPerEvent, input.distanceBetween);
    return {
      extraConsumption,
      penalty: extraConsumption / input.consumption,
      extraCarbonDioxide: extraConsumption * input.fuelDensity * input.fuelCarbon * constants.dioxideShare,
    };
  },
});
