import * as wf from '@wallflow/calculation';
import { energy, fraction, mass, massFlow, power, temperature, time, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { dioxideShare, exhaustHeatInput, fuelCarbonInput, fuelDensityInput, heatingValueInput } from '../fuel-inputs.js';
import { honeycombConstants, honeycombInputs, honeycombIntermediates, honeycombOf, honeycombSteps } from '../honeycomb.js';
import { airTable, catalystPractice, dieselFuel, gasHeatBalance } from '../sources.js';
import { fuelForHeat, gasHeatingPower, storedHeat } from './kernel.js';

const range = { range: '0 <= T <= 900 °C', units: ['degC', 'K', 'degF'] } as const;

export const regenerationHeatCalculation = wf.defineCalculation({
  id: 'regeneration-heat',
  subject: 'regeneration',
  title: 'Heat and fuel of a regeneration',
  purpose: 'How much heat and how much fuel does it take to keep the gas before the filter at regeneration temperature?',
  keywords: 'post-injection, late injection, fuel per regeneration, heat, CO2, DPF, regen, DOC, burn-off',
  method: 'heat balance of the gas stream',
  inputs: {
    exhaustMassFlow: wf.quantity(massFlow, {
      symbol: '\\dot m',
      label: 'Exhaust mass flow',
      range: '0 < x <= 5000 kg/h',
      example: '190 kg/h',
      units: ['kg/h', 'g/s'],
    }),
    temperatureBefore: wf.quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature before the catalyst',
      description: 'Of the gas before the oxidation catalyst.',
      ...range,
      example: '300 °C',
    }),
    temperatureWanted: wf.quantity(temperature, {
      symbol: 'T_2',
      label: 'Temperature wanted',
      description: 'Of the gas before the filter.',
      ...range,
      usual: ['400 °C', '700 °C', { below: 'with oxygen soot burns only from about 550 °C', above: 'the filter is at risk' }],
      example: '600 °C',
    }),
    duration: wf.quantity(time, {
      symbol: 't',
      label: 'Duration',
      description: 'At that temperature, warming up included.',
      range: '0 s < x <= 2 h',
      example: '15 min',
      units: ['min', 's'],
    }),
    efficiency: wf.quantity(fraction, {
      symbol: '\\eta',
      label: 'Share of the fuel heat that arrives in the gas',
      range: '20 <= x <= 100 %',
      default: ['90 %', 'a healthy oxidation catalyst with some heat loss; common practice, no source'],
    }),
    ...honeycombInputs,
    filterVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Filter volume',
      range: '0 < x <= 200 L',
      example: '5.79 L',
      units: ['L', 'm3'],
    }),
    startTemperature: wf.quantity(temperature, { symbol: 'T_0', label: 'Filter temperature at the start', ...range, example: '250 °C' }),
    heatingValue: heatingValueInput,
    fuelDensity: fuelDensityInput,
    fuelCarbon: fuelCarbonInput,
    gasHeatCapacity: exhaustHeatInput,
  },
  intermediates: {
    ...honeycombIntermediates,
    heatingPower: wf.quantityOutput(power, { symbol: 'P', label: 'Heating power', digits: 4, units: ['kW', 'W'] }),
    filterHeat: wf.quantityOutput(energy, { symbol: 'Q_f', label: 'Heat stored in the filter', digits: 4, units: ['kJ', 'MJ'] }),
    warmingTime: wf.quantityOutput(time, {
      symbol: 't_w',
      label: 'Shortest time to warm the filter through',
      digits: 3,
      units: ['s', 'min'],
    }),
  },
  outputs: {
    heat: wf.quantityOutput(energy, { symbol: 'Q', label: 'Heat to the gas', digits: 4, units: ['kJ', 'MJ'] }),
    fuelFlow: wf.quantityOutput(massFlow, { symbol: '\\dot m_f', label: 'Fuel injected for heating', digits: 4, units: ['kg/h', 'g/s'] }),
    fuelMass: wf.quantityOutput(mass, { symbol: 'm_f', label: 'Fuel for the regeneration', digits: 3, units: ['g', 'kg'] }),
    fuelVolume: wf.quantityOutput(volume, { symbol: 'V_f', label: 'Fuel for the regeneration, by volume', digits: 3, units: ['L', 'mL'] }),
    carbonDioxideMass: wf.quantityOutput(mass, {
      symbol: 'm_{CO_2}',
      label: 'Carbon dioxide from that fuel',
      digits: 3,
      units: ['kg', 'g'],
    }),
  },
  constants: { ...honeycombConstants, dioxideShare },
  answer: 'fuelMass',
  steps: [
    ...honeycombSteps,
    wf.formula('heatingPower', 'exhaustMassFlow * gasHeatCapacity * (temperatureWanted - temperatureBefore)', gasHeatBalance),
    wf.formula('heat', 'heatingPower * duration', gasHeatBalance),
    wf.formula(
      'filterHeat',
      'max(0, filterVolume * honeycombDensity * honeycombHeatCapacity * (temperatureWanted - startTemperature))',
      gasHeatBalance,
      undefined,
      'Nothing where the filter is already as hot.',
    ),
    wf.cases(
      'warmingTime',
      {
        'temperatureWanted > startTemperature':
          'filterVolume * honeycombDensity * honeycombHeatCapacity / (exhaustMassFlow * gasHeatCapacity)',
        otherwise: '0',
      },
      gasHeatBalance,
    ),
    wf.formula('fuelFlow', 'heatingPower / (heatingValue * efficiency)', dieselFuel),
    wf.formula('fuelMass', 'fuelFlow * duration'),
    wf.formula('fuelVolume', 'fuelMass / fuelDensity'),
    wf.formula('carbonDioxideMass', 'fuelMass * fuelCarbon * dioxideShare', dieselFuel),
  ],
  assumptions: {
    steady_flow: 'Flow and temperature before the catalyst stay the same; the heat of the burning soot is left out.',
    filter_in_gas_heat: 'The heat stored in the filter comes out of the heat of the gas; it is not an addition to it.',
  },
  limits: {
    no_heat_loss: 'Heat lost from pipe and can is not counted: a real regeneration takes a little more fuel.',
    engine_work: 'Fuel burnt in the cylinder by throttling or later injection is not counted.',
  },
  cautions: [cautions.makerFirst, cautions.hotExhaust, cautions.fumes],
  sources: [airTable, catalystPractice],
  compute(input, { constants, assume }) {
    const { exhaustMassFlow, temperatureBefore, temperatureWanted, startTemperature, duration, gasHeatCapacity } = input;
    if (temperatureWanted <= temperatureBefore) {
      return wf.inconsistentInputs('the gas before the catalyst is already as hot as wanted', ['temperatureWanted'], ['temperatureBefore']);
    }
    const honeycomb = honeycombOf(input, constants, assume);
    const { honeycombDensity, honeycombHeatCapacity } = honeycomb;
    const heatingPower = gasHeatingPower(exhaustMassFlow, gasHeatCapacity, temperatureWanted - temperatureBefore);
    const fuelFlow = fuelForHeat(heatingPower, input.heatingValue, input.efficiency);
    const fuelMass = fuelFlow * duration;
    const perKelvin = storedHeat(input.filterVolume, honeycombDensity, honeycombHeatCapacity, 1);
    return {
      ...honeycomb,
      heatingPower,
      heat: heatingPower * duration,
      filterHeat: Math.max(0, perKelvin * (temperatureWanted - startTemperature)),
      warmingTime: temperatureWanted > startTemperature ? perKelvin / (exhaustMassFlow * gasHeatCapacity) : 0,
      fuelFlow,
      fuelMass,
      fuelVolume: fuelMass / input.fuelDensity,
      carbonDioxideMass: fuelMass * input.fuelCarbon * constants.dioxideShare,
    };
  },
});
