import * as wf from '@wallflow/calculation';
import { area, density, fraction, heatTransferCoefficient, mass, temperature, time, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { freezingTemperature, heatOfFusion, liquidHeatCapacity } from '../solution/named-constants.js';
import { thermalProperties } from '../solution/sources.js';
import { frozenHeatCapacity } from '../solution/thermal.js';
import { timeToFirstIce, timeToFreezeThrough } from './kernel.js';

const cooling: wf.Source = {
  type: 'derivation',
  title: "Newton's law of cooling for a stirred body, and its heat balance while it freezes",
  mark: 'read',
};
const practice = wf.commonPractice('Reductant expands by about 7 % when it freezes');

export const reductantFreezingCalculation = wf.defineCalculation({
  id: 'reductant-freezing',
  subject: 'reductant',
  title: 'When the reductant freezes',
  purpose: 'How long does a tank or a can of reductant stay liquid in the cold?',
  keywords: 'freezing, winter, storage, expansion, DEF, AUS 32, SCR',
  method: "Newton's law of cooling, then latent heat",
  inputs: {
    fluidVolume: wf.quantity(volume, { symbol: 'V', label: 'Fluid in the tank', range: '0 < x <= 2000 L', example: '12 L', units: ['L'] }),
    containerVolume: wf.optional(
      wf.quantity(volume, {
        symbol: 'V_c',
        label: 'Container when full to the brim',
        range: '0 < x <= 2500 L',
        example: '17 L',
        units: ['L'],
      }),
    ),
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
      range: '-11 <= x <= 60 °C',
      example: '15 °C',
      units: ['degC'],
    }),
    ambientTemperature: wf.quantity(temperature, {
      symbol: 'T_a',
      label: 'Ambient temperature',
      range: '-50 <= x <= 40 °C',
      example: '-18 °C',
      units: ['degC'],
    }),
    surface: wf.quantity(area, { symbol: 'A', label: 'Outer surface', range: '0 < x <= 20 m2', example: '0.4 m2', units: ['m2'] }),
    heatTransfer: wf.quantity(heatTransferCoefficient, {
      symbol: 'h',
      label: 'Heat transfer to the air',
      range: '0.5 <= x <= 50 W/(m2.K)',
      default: ['8 W/(m2.K)', 'a plastic wall in still air; wind can make it 20, insulation 2; common practice, no source'],
    }),
    expansion: wf.quantity(fraction, {
      symbol: 'e',
      label: 'Expansion on freezing',
      range: '0 <= x <= 12 %',
      units: ['%'],
      default: ['7 %', 'common practice, no source'],
    }),
  },
  example: { containerVolume: '17 L' },
  intermediates: {
    fluidMass: wf.quantityOutput(mass, { symbol: 'm', label: 'Mass of the fluid', digits: 4, units: ['kg'] }),
    frozenVolume: wf.quantityOutput(volume, { symbol: 'V_f', label: 'Volume when frozen', digits: 3, units: ['L'] }),
    freezingThrough: wf.optional(
      wf.quantityOutput(time, {
        symbol: 't_f',
        label: 'From the first ice until frozen through, at least',
        digits: 2,
        units: ['h', 'min'],
      }),
    ),
  },
  outputs: {
    timeToFirstIce: wf.optional(
      wf.quantityOutput(time, { symbol: 't_1', label: 'Time until the first ice', digits: 2, units: ['h', 'min'] }),
    ),
    timeToFrozen: wf.optional(
      wf.quantityOutput(time, { symbol: 't_2', label: 'Time until frozen through, at least', digits: 2, units: ['h', 'min'] }),
    ),
    room: wf.choiceOutput({
      label: 'Room for the ice',
      options: {
        enough: 'enough room',
        'too-little': 'too little room: the container may burst',
        unknown: 'size of the container not entered',
      },
    }),
    freezes: wf.choiceOutput({ label: 'Does it freeze', options: { yes: 'it freezes', no: 'it stays liquid' } }),
  },
  constants: { freezingTemperature, heatOfFusion, liquidHeatCapacity },
  answer: 'freezes',
  steps: [
    wf.formula('fluidMass', 'fluidDensity * fluidVolume'),
    wf.verdict('freezes', { yes: 'ambientTemperature < freezingTemperature', no: 'otherwise' }, thermalProperties),
    wf.formula(
      'timeToFirstIce',
      'fluidMass * liquidHeatCapacity / (heatTransfer * surface) * ln((startTemperature - ambientTemperature) / (freezingTemperature - ambientTemperature))',
      cooling,
    ),
    wf.formula(
      'freezingThrough',
      'fluidMass * heatOfFusion / (heatTransfer * surface * (freezingTemperature - ambientTemperature))',
      cooling,
    ),
    wf.formula('timeToFrozen', 'timeToFirstIce + freezingThrough'),
    wf.formula('frozenVolume', 'fluidVolume * (1 + expansion)', practice),
    wf.verdict(
      'room',
      { unknown: 'not known(containerVolume)', enough: 'containerVolume >= frozenVolume', 'too-little': 'otherwise' },
      practice,
    ),
  ],
  assumptions: { even: 'The fluid is evenly warm, and the wall and the ice do not slow the loss of heat.' },
  limits: { at_least: 'Frozen through is the earliest time; a block of ice takes longer.' },
  cautions: [cautions.makerFirst],
  compute(input, { constants }) {
    if (input.containerVolume !== undefined && input.containerVolume < input.fluidVolume)
      return wf.inconsistentInputs('the container holds less than what is in it', ['containerVolume'], ['fluidVolume']);
    const fluidMass = input.fluidDensity * input.fluidVolume;
    const cooling = {
      mass: fluidMass,
      heatLoss: input.heatTransfer * input.surface,
      startTemperature: input.startTemperature,
      ambientTemperature: input.ambientTemperature,
    };
    const freezes = input.ambientTemperature < constants.freezingTemperature;
    const properties = { ...constants, frozenHeatCapacity };
    const first = freezes ? timeToFirstIce(cooling, properties) : undefined;
    const through = freezes ? timeToFreezeThrough(cooling, properties) : undefined;
    const frozenVolume = input.fluidVolume * (1 + input.expansion);
    return {
      fluidMass,
      timeToFirstIce: first,
      freezingThrough: through,
      timeToFrozen: first === undefined || through === undefined ? undefined : first + through,
      frozenVolume,
      room: input.containerVolume === undefined ? 'unknown' : input.containerVolume >= frozenVolume ? 'enough' : 'too-little',
      freezes: freezes ? 'yes' : 'no',
    };
  },
});
