import { commonPractice, constant, defineCalculation, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { density, energy, fraction, mass, power, specificEnergy, specificHeatCapacity, temperature, time, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { eutectic, iceHeatCapacity, thermalProperties } from '../solution/sources.js';
import { freezingTemperature, frozenHeatCapacity, heatOfFusion, liquidHeatCapacity } from '../solution/thermal.js';
import { thawHeat } from './kernel.js';

export const reductantThawCalculation = defineCalculation({
  id: 'reductant-thaw',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Thawing frozen reductant',
  purpose: 'How much heat and how long does the frozen fluid need before it can be dosed?',
  usedBy: ['technician', 'trainer'],
  keywords: ['frozen', 'thaw', 'heater', 'winter'],
  method: 'heat of warming and melting over the power that reaches the fluid',
  inputs: z.strictObject({
    fluidVolume: quantity(volume, {
      symbol: 'V',
      label: 'Fluid to thaw',
      description: 'What the heater must melt first, often a pot of one to three litres, not the whole tank.',
      above: '0 L',
      max: '500 L',
      example: '3 L',
      units: ['L'],
    }),
    fluidDensity: quantityWithDefault(density, {
      symbol: '\\rho',
      label: 'Density of the liquid fluid',
      min: '1000 kg/m3',
      max: '1160 kg/m3',
      example: '1090 kg/m3',
      units: ['kg/m3'],
      default: '1090 kg/m3',
      defaultReason: 'middle of the range of ISO 22241-1',
    }),
    startTemperature: quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature now',
      min: '-45 °C',
      max: '20 °C',
      example: '-20 °C',
      units: ['degC'],
    }),
    endTemperature: quantityWithDefault(temperature, {
      symbol: 'T_2',
      label: 'Temperature wanted',
      min: '-11 °C',
      max: '60 °C',
      example: '0 °C',
      units: ['degC'],
      default: '0 °C',
      defaultReason: 'clear of freezing; common practice, no source',
    }),
    heaterPower: quantity(power, { symbol: 'P', label: 'Heater power', above: '1 W', max: '5000 W', example: '150 W', units: ['W', 'kW'] }),
    heaterEfficiency: quantityWithDefault(fraction, {
      symbol: '\\eta',
      label: 'Share of it that reaches this fluid',
      above: '1 %',
      max: '100 %',
      example: '60 %',
      units: ['%'],
      default: '60 %',
      defaultReason: 'common practice, no source; the rest warms tank, lines and air',
    }),
  }),
  intermediates: {
    fluidMass: quantityOutput(mass, { symbol: 'm', label: 'Mass', digits: 4, units: ['kg'] }),
    solidHeat: quantityOutput(energy, { symbol: 'Q_s', label: 'Warming the solid', digits: 4, units: ['kJ'] }),
    meltingHeat: quantityOutput(energy, { symbol: 'Q_m', label: 'Melting', digits: 4, units: ['kJ'] }),
    liquidHeat: quantityOutput(energy, { symbol: 'Q_l', label: 'Warming the liquid', digits: 4, units: ['kJ'] }),
  },
  outputs: {
    heat: quantityOutput(energy, { symbol: 'Q', label: 'Heat that the fluid takes up', digits: 4, units: ['kJ', 'Wh'] }),
    thawTime: quantityOutput(time, { symbol: 't', label: 'Time with this heater', digits: 3, units: ['min', 'h'] }),
  },
  constants: {
    freezingTemperature: constant(temperature, freezingTemperature, {
      symbol: 'T_f',
      label: 'Freezing temperature',
      source: 'thermalProperties',
    }),
    heatOfFusion: constant(specificEnergy, heatOfFusion, { symbol: 'L', label: 'Heat of fusion', source: 'thermalProperties' }),
    liquidHeatCapacity: constant(specificHeatCapacity, liquidHeatCapacity, {
      symbol: 'c_l',
      label: 'Heat capacity of the liquid',
      source: 'thermalProperties',
    }),
    frozenHeatCapacity: constant(specificHeatCapacity, frozenHeatCapacity, {
      symbol: 'c_s',
      label: 'Heat capacity of the solid',
      source: 'iceHeatCapacity',
    }),
  },
  steps: [
    { gives: 'fluidMass', tex: '[[fluidMass]] = [[fluidDensity]]\\,[[fluidVolume]]' },
    {
      gives: 'solidHeat',
      tex: '[[solidHeat]] = [[fluidMass]]\\,[[frozenHeatCapacity]]\\,\\max(0,\\,\\min([[endTemperature]],[[freezingTemperature]])-[[startTemperature]])',
      source: 'iceHeatCapacity',
    },
    {
      gives: 'meltingHeat',
      tex: '[[meltingHeat]] = [[fluidMass]]\\,[[heatOfFusion]]\\quad\\text{if it passes }[[freezingTemperature]]',
      source: 'thermalProperties',
    },
    {
      gives: 'liquidHeat',
      tex: '[[liquidHeat]] = [[fluidMass]]\\,[[liquidHeatCapacity]]\\,\\max(0,\\,[[endTemperature]]-\\max([[startTemperature]],[[freezingTemperature]]))',
      source: 'thermalProperties',
    },
    { gives: 'heat', tex: '[[heat]] = [[solidHeat]]+[[meltingHeat]]+[[liquidHeat]]' },
    { gives: 'thawTime', tex: '[[thawTime]] = \\frac{[[heat]]}{[[heaterEfficiency]]\\,[[heaterPower]]}' },
  ],
  assumptions: [
    {
      code: 'eutectic',
      text: 'Fluid of 32.5 % melts at one temperature, its eutectic. Diluted fluid starts to freeze earlier and melts over a range.',
    },
  ],
  limits: [{ code: 'stirred', text: 'The fluid is taken as evenly warm. Ice far from the heater melts much later.' }],
  cautions: [cautions.makerFirst],
  sources: {
    thermalProperties,
    iceHeatCapacity,
    eutectic,
    practice: commonPractice('Reductant expands by about 7 % when it freezes: leave room in containers, never fill to the brim'),
  },
  compute(input, { constants, warn }) {
    if (input.endTemperature <= input.startTemperature)
      warn('warm_enough', 'The fluid is already as warm as wanted.', ['startTemperature']);
    const fluidMass = input.fluidDensity * input.fluidVolume;
    const { solid, melting, liquid } = thawHeat(
      { mass: fluidMass, startTemperature: input.startTemperature, endTemperature: input.endTemperature },
      constants,
    );
    warn(
      'second_hand_properties',
      'Heat of fusion and heat capacities are second-hand values; expect the heat to be right within about 10 %.',
    );
    const heat = solid + melting + liquid;
    return {
      fluidMass,
      solidHeat: solid,
      meltingHeat: melting,
      liquidHeat: liquid,
      heat,
      thawTime: heat / (input.heaterEfficiency * input.heaterPower),
    };
  },
  advise: () => [
    { tone: 'do', text: 'Thaw with the vehicle’s own heater or in a warm room.' },
    { tone: 'do-not', text: 'No flame, no hot air gun, no hot water into the tank: plastics melt, and above 40 °C the fluid ages fast.' },
  ],
});
