import {
  choice,
  constant,
  defineCalculation,
  inconsistentInputs,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  density,
  energy,
  fraction,
  mass,
  massFlow,
  massRatio,
  power,
  specificHeatCapacity,
  temperature,
  time,
  volume,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { exhaustHeatInput, fuelCarbonInput, fuelDensityInput, heatingValueInput } from '../fuel-inputs.js';
import { honeycombConstants } from '../simulation/inputs.js';
import { honeycombOf } from '../simulation/prepare.js';
import { airTable, catalystPractice, dieselFuel, gasHeatBalance, honeycombData } from '../sources.js';
import { dioxidePerCarbon, fuelForHeat, gasHeatingPower, storedHeat } from './kernel.js';

const range = { min: '0 °C', max: '900 °C', units: ['degC', 'K', 'degF'] } as const;

export const regenerationHeatCalculation = defineCalculation({
  id: 'regeneration-heat',
  version: '1.0.0',
  subject: 'regeneration',
  title: 'Heat and fuel of a regeneration',
  purpose: 'How much heat and how much fuel does it take to hold the gas before the filter at regeneration temperature?',
  usedBy: ['technician', 'trainer', 'developer'],
  keywords: ['post-injection', 'fuel per regeneration', 'heat', 'CO2'],
  method: 'heat balance of the gas stream',
  inputs: z.strictObject({
    massFlow: quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust mass flow',
      above: '0 kg/h',
      max: '5000 kg/h',
      example: '190 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    temperatureBefore: quantity(temperature, {
      symbol: 'T_1',
      label: 'Gas temperature before the oxidation catalyst',
      ...range,
      example: '300 °C',
    }),
    temperatureWanted: quantity(temperature, {
      symbol: 'T_2',
      label: 'Gas temperature wanted before the filter',
      ...range,
      usual: ['400 °C', '700 °C'],
      usualReason: { below: 'soot burns with oxygen from about 550 °C only', above: 'the filter is at risk' },
      example: '600 °C',
    }),
    duration: quantity(time, {
      symbol: 't',
      label: 'Duration at that temperature, warming up included',
      above: '0 s',
      max: '2 h',
      example: '15 min',
      units: ['min', 's'],
    }),
    efficiency: quantityWithDefault(fraction, {
      symbol: '\\eta',
      label: 'Share of the fuel heat that arrives in the gas',
      min: '20 %',
      max: '100 %',
      example: '90 %',
      default: '90 %',
      defaultReason: 'a healthy oxidation catalyst with some loss; common practice',
    }),
    substrate: choice({
      label: 'Filter material',
      options: { 'silicon-carbide': 'silicon carbide', cordierite: 'cordierite' },
      example: 'cordierite',
    }),
    filterVolume: quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      above: '0 L',
      max: '200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    filterTemperature: quantity(temperature, { symbol: 'T_0', label: 'Filter temperature at the start', ...range, example: '250 °C' }),
    bulkDensity: quantity(density, {
      symbol: '\\rho_b',
      label: 'Mass of the honeycomb per filter volume',
      min: '0.2 kg/L',
      max: '2 kg/L',
      example: '0.45 kg/L',
      units: ['kg/L', 'kg/m3'],
    }).optional(),
    specificHeat: quantity(specificHeatCapacity, {
      symbol: 'c_b',
      label: 'Specific heat of the honeycomb',
      min: '500 J/(kg.K)',
      max: '2000 J/(kg.K)',
      example: '1100 J/(kg.K)',
    }).optional(),
    heatingValue: heatingValueInput,
    fuelDensity: fuelDensityInput,
    fuelCarbon: fuelCarbonInput,
    gasSpecificHeat: exhaustHeatInput,
  }),
  example: { bulkDensity: '0.45 kg/L', specificHeat: '1100 J/(kg.K)' },
  intermediates: {
    heatingPower: quantityOutput(power, { symbol: 'P', label: 'Heating power', digits: 4, units: ['kW', 'W'] }),
    filterHeat: quantityOutput(energy, { symbol: 'Q_f', label: 'Of it, heat stored in the filter', digits: 4, units: ['kJ', 'MJ'] }),
    warmingTime: quantityOutput(time, { symbol: 't_w', label: 'Least time to warm the filter through', digits: 3, units: ['s', 'min'] }),
  },
  outputs: {
    heat: quantityOutput(energy, { symbol: 'Q', label: 'Heat to the gas', digits: 4, units: ['kJ', 'MJ'] }),
    fuelFlow: quantityOutput(massFlow, { symbol: '\\dot m_f', label: 'Fuel flow for it', digits: 4, units: ['kg/h', 'g/s'] }),
    fuelMass: quantityOutput(mass, { symbol: 'm_f', label: 'Fuel for the regeneration', digits: 3, units: ['g', 'kg'] }),
    fuelVolume: quantityOutput(volume, { symbol: 'V_f', label: 'Fuel for the regeneration, volume', digits: 3, units: ['L', 'mL'] }),
    carbonDioxide: quantityOutput(mass, { symbol: 'm_{CO_2}', label: 'Carbon dioxide from that fuel', digits: 3, units: ['kg', 'g'] }),
  },
  constants: {
    ...honeycombConstants,
    dioxideShare: constant(massRatio, dioxidePerCarbon, {
      symbol: 'r_{CO_2}',
      label: 'Carbon dioxide per carbon, by mass',
      source: 'dieselFuel',
    }),
  },
  steps: [
    {
      gives: 'heatingPower',
      tex: '[[heatingPower]] = [[massFlow]]\\,[[gasSpecificHeat]]\\left([[temperatureWanted]]-[[temperatureBefore]]\\right)',
      source: 'gasHeatBalance',
    },
    { gives: 'heat', tex: '[[heat]] = [[heatingPower]]\\,[[duration]]', source: 'gasHeatBalance' },
    {
      gives: 'filterHeat',
      tex: '[[filterHeat]] = [[filterVolume]]\\,\\rho_b\\,c_b\\left([[temperatureWanted]]-[[filterTemperature]]\\right)',
      source: 'honeycombData',
    },
    {
      gives: 'warmingTime',
      tex: '[[warmingTime]] = \\frac{[[filterHeat]]}{[[massFlow]]\\,[[gasSpecificHeat]]\\left([[temperatureWanted]]-[[filterTemperature]]\\right)}',
      source: 'gasHeatBalance',
    },
    { gives: 'fuelFlow', tex: '[[fuelFlow]] = \\frac{[[heatingPower]]}{[[heatingValue]]\\,[[efficiency]]}', source: 'dieselFuel' },
    { gives: 'fuelVolume', tex: '[[fuelVolume]] = \\frac{[[fuelMass]]}{[[fuelDensity]]}' },
    { gives: 'carbonDioxide', tex: '[[carbonDioxide]] = [[fuelMass]]\\,[[fuelCarbon]]\\,[[dioxideShare]]', source: 'dieselFuel' },
    { gives: 'fuelMass', tex: '[[fuelMass]] = [[fuelFlow]]\\,[[duration]]' },
  ],
  assumptions: [
    { code: 'steady_flow', text: 'Flow and temperature before the catalyst stay the same; the heat of the soot itself is left out.' },
    { code: 'filter_in_gas_heat', text: 'The heat that the filter stores comes out of the heat of the gas; it is no addition to it.' },
  ],
  limits: [
    { code: 'no_heat_loss', text: 'Heat lost from pipe and can is not counted: a real regeneration takes some more fuel.' },
    { code: 'engine_work', text: 'Fuel that throttling or a later injection burns in the cylinder is not counted.' },
  ],
  cautions: [cautions.makerFirst, cautions.hotExhaust, cautions.fumes],
  sources: { gasHeatBalance, dieselFuel, honeycombData, airTable, catalystPractice },
  compute(input, { constants, assume }) {
    const { massFlow, temperatureBefore, temperatureWanted, filterTemperature, duration, gasSpecificHeat } = input;
    if (temperatureWanted <= temperatureBefore) {
      return inconsistentInputs('the gas is already as hot as wanted before the catalyst', ['temperatureWanted'], ['temperatureBefore']);
    }
    const { bulkDensity, specificHeat } = honeycombOf(input, constants, assume);
    const heatingPower = gasHeatingPower(massFlow, gasSpecificHeat, temperatureWanted - temperatureBefore);
    const fuelFlow = fuelForHeat(heatingPower, input.heatingValue, input.efficiency);
    const fuelMass = fuelFlow * duration;
    return {
      heatingPower,
      heat: heatingPower * duration,
      filterHeat: Math.max(0, storedHeat(input.filterVolume, bulkDensity, specificHeat, temperatureWanted - filterTemperature)),
      warmingTime:
        temperatureWanted > filterTemperature
          ? storedHeat(input.filterVolume, bulkDensity, specificHeat, 1) / (massFlow * gasSpecificHeat)
          : 0,
      fuelFlow,
      fuelMass,
      fuelVolume: fuelMass / input.fuelDensity,
      carbonDioxide: fuelMass * input.fuelCarbon * constants.dioxideShare,
    };
  },
});
