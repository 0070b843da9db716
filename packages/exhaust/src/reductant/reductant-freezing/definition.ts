import {
  choiceOutput,
  commonPractice,
  constant,
  defineCalculation,
  inconsistentInputs,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
} from '@wallflow/calculation';
import {
  area,
  density,
  fraction,
  heatTransferCoefficient,
  mass,
  specificEnergy,
  specificHeatCapacity,
  temperature,
  time,
  volume,
} from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { thermalProperties } from '../solution/sources.js';
import { freezingTemperature, frozenHeatCapacity, heatOfFusion, liquidHeatCapacity } from '../solution/thermal.js';
import { timeToFirstIce, timeToFreezeThrough } from './kernel.js';

export const reductantFreezingCalculation = defineCalculation({
  id: 'reductant-freezing',
  version: '1.0.0',
  subject: 'reductant',
  title: 'When the reductant freezes',
  purpose: 'How long does a tank or a can of reductant stay liquid in the cold?',
  usedBy: ['technician', 'trainer'],
  keywords: ['freezing', 'winter', 'storage', 'expansion'],
  method: "Newton's law of cooling, then latent heat",
  inputs: z.strictObject({
    fluidVolume: quantity(volume, { symbol: 'V', label: 'Fluid', above: '0 L', max: '2000 L', example: '12 L', units: ['L'] }),
    containerVolume: quantity(volume, {
      symbol: 'V_c',
      label: 'Container when full to the brim',
      above: '0 L',
      max: '2500 L',
      example: '17 L',
      units: ['L'],
    }).optional(),
    fluidDensity: quantityWithDefault(density, {
      symbol: '\\rho',
      label: 'Density',
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
      min: '-11 °C',
      max: '60 °C',
      example: '15 °C',
      units: ['degC'],
    }),
    ambientTemperature: quantity(temperature, {
      symbol: 'T_a',
      label: 'Temperature outside',
      min: '-50 °C',
      max: '40 °C',
      example: '-18 °C',
      units: ['degC'],
    }),
    surface: quantity(area, { symbol: 'A', label: 'Outer surface', above: '0 m2', max: '20 m2', example: '0.4 m2', units: ['m2'] }),
    heatTransfer: quantityWithDefault(heatTransferCoefficient, {
      symbol: 'h',
      label: 'Heat transfer to the air',
      min: '0.5 W/(m2.K)',
      max: '50 W/(m2.K)',
      example: '8 W/(m2.K)',
      default: '8 W/(m2.K)',
      defaultReason: 'a plastic wall in still air; wind can make it 20, insulation 2; common practice, no source',
    }),
    expansion: quantityWithDefault(fraction, {
      symbol: 'e',
      label: 'Expansion on freezing',
      min: '0 %',
      max: '12 %',
      example: '7 %',
      units: ['%'],
      default: '7 %',
      defaultReason: 'common practice, no source',
    }),
  }),
  intermediates: { fluidMass: quantityOutput(mass, { symbol: 'm', label: 'Mass', digits: 4, units: ['kg'] }) },
  outputs: {
    timeToFirstIce: optional(quantityOutput(time, { symbol: 't_1', label: 'Time until the first ice', digits: 2, units: ['h', 'min'] })),
    timeToFrozen: optional(
      quantityOutput(time, { symbol: 't_2', label: 'Time until frozen through, at least', digits: 2, units: ['h', 'min'] }),
    ),
    room: choiceOutput({
      label: 'Room for the ice',
      options: {
        enough: 'enough room',
        'too-little': 'too little room: the container may burst',
        unknown: 'size of the container not given',
      },
    }),
    freezes: choiceOutput({ label: 'Does it freeze', options: { yes: 'it freezes', no: 'it stays liquid' } }),
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
  },
  steps: [
    { gives: 'fluidMass', tex: '[[fluidMass]] = [[fluidDensity]]\\,[[fluidVolume]]' },
    {
      gives: 'timeToFirstIce',
      tex: '[[timeToFirstIce]] = \\frac{[[fluidMass]]\\,[[liquidHeatCapacity]]}{[[heatTransfer]]\\,[[surface]]}\\,\\ln\\frac{[[startTemperature]]-[[ambientTemperature]]}{[[freezingTemperature]]-[[ambientTemperature]]}',
      source: 'cooling',
    },
    {
      gives: 'timeToFrozen',
      tex: '[[timeToFrozen]] = t_1 + \\frac{[[fluidMass]]\\,[[heatOfFusion]]}{[[heatTransfer]]\\,[[surface]]\\,([[freezingTemperature]]-[[ambientTemperature]])}',
      source: 'cooling',
    },
    { gives: 'room', text: 'Frozen volume against the container.', source: 'practice' },
    { gives: 'freezes', text: 'Outside temperature against the freezing temperature of −11.5 °C.', source: 'thermalProperties' },
  ],
  assumptions: [{ code: 'even', text: 'The fluid is evenly warm, and the wall and the ice do not slow the loss of heat.' }],
  limits: [{ code: 'at_least', text: 'Frozen through is the earliest time; a block of ice takes longer.' }],
  cautions: [cautions.makerFirst],
  sources: {
    thermalProperties,
    cooling: {
      type: 'derivation',
      title: "Newton's law of cooling for a stirred body, and its heat balance while it freezes",
      mark: 'read',
    },
    practice: commonPractice('Reductant expands by about 7 % when it freezes'),
  },
  compute(input, { constants }) {
    if (input.containerVolume !== undefined && input.containerVolume < input.fluidVolume)
      return inconsistentInputs('the container holds less than what is in it', ['containerVolume'], ['fluidVolume']);
    const fluidMass = input.fluidDensity * input.fluidVolume;
    const cooling = {
      mass: fluidMass,
      heatLoss: input.heatTransfer * input.surface,
      startTemperature: input.startTemperature,
      ambientTemperature: input.ambientTemperature,
    };
    const freezes = input.ambientTemperature < constants.freezingTemperature && input.startTemperature > constants.freezingTemperature;
    const properties = { ...constants, frozenHeatCapacity };
    const first = freezes ? timeToFirstIce(cooling, properties) : undefined;
    const frozenVolume = input.fluidVolume * (1 + input.expansion);
    return {
      fluidMass,
      timeToFirstIce: first,
      timeToFrozen: first === undefined ? undefined : first + timeToFreezeThrough(cooling, properties),
      room: input.containerVolume === undefined ? 'unknown' : input.containerVolume >= frozenVolume ? 'enough' : 'too-little',
      freezes: freezes ? 'yes' : 'no',
    };
  },
});
