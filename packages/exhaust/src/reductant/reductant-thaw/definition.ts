import * as wf from '@wallflow/calculation';
import { density, energy, fraction, mass, power, temperature, time, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { freezingTemperature, frozenHeatCapacity, heatOfFusion, liquidHeatCapacity } from '../solution/named-constants.js';
import { eutectic, iceHeatCapacity, thermalProperties } from '../solution/sources.js';
import { thawHeat } from './kernel.js';

const practice = wf.commonPractice('Reductant expands by about 7 % when it freezes: leave room in containers, never fill to the brim');

const heat = (symbol: string, label: string) => wf.quantityOutput(energy, { symbol, label, digits: 4, units: ['kJ', 'Wh'] });

export const reductantThawCalculation = wf.defineCalculation({
  id: 'reductant-thaw',
  subject: 'reductant',
  title: 'Thawing frozen reductant',
  purpose: 'How much heat and how long does the frozen fluid need before it can be dosed?',
  keywords: 'frozen, thaw, heater, winter, DEF, AUS 32, SCR',
  method: 'heat of warming and melting over the power that reaches the fluid',
  inputs: {
    fluidVolume: wf.quantity(volume, {
      symbol: 'V',
      label: 'Fluid to thaw',
      description: 'What the heater must melt first, often a pot of one to three litres, not the whole tank.',
      range: '0 < x <= 500 L',
      example: '3 L',
      units: ['L'],
    }),
    fluidDensity: wf.quantity(density, {
      symbol: '\\rho',
      label: 'Density of the fluid',
      range: '1000 <= x <= 1160 kg/m3',
      units: ['kg/m3'],
      default: ['1090 kg/m3', 'middle of the range of ISO 22241-1'],
    }),
    startTemperature: wf.quantity(temperature, {
      symbol: 'T_1',
      label: 'Temperature now',
      range: '-45 <= x <= 20 °C',
      example: '-20 °C',
      units: ['degC'],
    }),
    endTemperature: wf.quantity(temperature, {
      symbol: 'T_2',
      label: 'Temperature wanted',
      range: '-11 <= x <= 60 °C',
      units: ['degC'],
      default: ['0 °C', 'clear of freezing; common practice, no source'],
    }),
    heaterPower: wf.quantity(power, { symbol: 'P', label: 'Heater power', range: '1 < x <= 5000 W', example: '150 W', units: ['W', 'kW'] }),
    heaterEfficiency: wf.quantity(fraction, {
      symbol: '\\eta',
      label: 'Share of the heater power that reaches this fluid',
      range: '1 < x <= 100 %',
      units: ['%'],
      default: ['60 %', 'common practice, no source; the rest warms tank, lines and air'],
    }),
  },
  intermediates: {
    fluidMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Mass of the fluid', digits: 4, units: ['kg'] }),
    solidHeat: heat('Q_s', 'Heat that warms the solid'),
    meltingHeat: heat('Q_m', 'Heat that melts it'),
    liquidHeat: heat('Q_l', 'Heat that warms the liquid'),
  },
  outputs: {
    thawHeat: heat('Q', 'Heat that the fluid takes up'),
    thawTime: wf.quantityOutput(time, { symbol: 't', label: 'Time with this heater', digits: 3, units: ['min', 'h'] }),
  },
  constants: { freezingTemperature, heatOfFusion, liquidHeatCapacity, frozenHeatCapacity },
  answer: 'thawTime',
  steps: [
    wf.formula('fluidMass', 'fluidDensity * fluidVolume'),
    wf.formula(
      'solidHeat',
      'fluidMass * frozenHeatCapacity * max(0, min(endTemperature, freezingTemperature) - startTemperature)',
      iceHeatCapacity,
    ),
    wf.cases(
      'meltingHeat',
      {
        'startTemperature < freezingTemperature and endTemperature > freezingTemperature': 'fluidMass * heatOfFusion',
        otherwise: '0',
      },
      thermalProperties,
    ),
    wf.formula(
      'liquidHeat',
      'fluidMass * liquidHeatCapacity * max(0, endTemperature - max(startTemperature, freezingTemperature))',
      thermalProperties,
    ),
    wf.formula('thawHeat', 'solidHeat + meltingHeat + liquidHeat'),
    wf.formula('thawTime', 'thawHeat / (heaterEfficiency * heaterPower)'),
  ],
  assumptions: {
    eutectic: 'Fluid of 32.5 % melts at one temperature, its eutectic. Diluted fluid starts to freeze earlier and melts over a range.',
  },
  limits: { stirred: 'The fluid is taken as evenly warm. Ice far from the heater melts much later.' },
  cautions: [cautions.makerFirst],
  sources: [eutectic, practice],
  compute(input, { constants, warn }) {
    if (input.endTemperature <= input.startTemperature)
      warn('warm_enough', 'The fluid is already as warm as it needs to be.', ['startTemperature']);
    const fluidMass = input.fluidDensity * input.fluidVolume;
    const { solid, melting, liquid } = thawHeat({ ...input, mass: fluidMass }, constants);
    warn(
      'second_hand_properties',
      'Heat of fusion and heat capacities are second-hand values; expect the heat to be right within about 10 %.',
    );
    const taken = solid + melting + liquid;
    return {
      fluidMass,
      solidHeat: solid,
      meltingHeat: melting,
      liquidHeat: liquid,
      thawHeat: taken,
      thawTime: taken / (input.heaterEfficiency * input.heaterPower),
    };
  },
  advise: () => [
    { tone: 'do', text: 'Thaw with the vehicle’s own heater or in a warm room.' },
    { tone: 'do-not', text: 'No flame, no hot air gun, no hot water into the tank: plastics melt, and above 40 °C the fluid ages fast.' },
  ],
});
