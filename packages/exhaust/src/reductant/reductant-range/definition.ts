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
import { length, volume, volumePerDistance } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { unR83Inducement } from '../fault-countdown/sources.js';
import { reductantRange } from './kernel.js';

export const reductantRangeCalculation = defineCalculation({
  id: 'reductant-range',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Range on the reductant in the tank',
  purpose: 'How far does the fluid last, when does the warning come, and how much must be filled?',
  usedBy: ['technician'],
  keywords: ['range', 'tank', 'refill', 'AUS 32'],
  method: 'fluid that can be drawn over the consumption',
  inputs: z.strictObject({
    fluidVolume: quantity(volume, { symbol: 'V', label: 'Fluid in the tank', min: '0 L', max: '500 L', example: '9 L', units: ['L'] }),
    tankVolume: quantity(volume, {
      symbol: 'V_{full}',
      label: 'Tank when full',
      above: '0 L',
      max: '500 L',
      example: '17 L',
      units: ['L'],
    }).optional(),
    unusableVolume: quantityWithDefault(volume, {
      symbol: 'V_0',
      label: 'Fluid that cannot be drawn',
      min: '0 L',
      max: '50 L',
      example: '1 L',
      units: ['L'],
      default: '1 L',
      defaultReason: 'common practice, no source; see the vehicle data',
    }),
    consumption: quantity(volumePerDistance, {
      symbol: 'c',
      label: 'Consumption',
      description: 'Cars and vans mostly 0.5 to 5 L per 1000 km, heavy vehicles much more.',
      min: '0.05 L/1000km',
      max: '100 L/1000km',
      usual: ['0.5 L/1000km', '40 L/1000km'],
      usualReason: 'outside of it the consumption is probably wrong or there is a leak; common practice',
      example: '1.3 L/1000km',
      units: ['L/1000km', 'L/100km'],
    }),
    minimumRefill: quantityWithDefault(volume, {
      symbol: 'V_{min}',
      label: 'Least refill that the level sensor notices',
      min: '0 L',
      max: '50 L',
      example: '5 L',
      units: ['L'],
      default: '5 L',
      defaultReason: 'common practice, no source; see the vehicle handbook',
    }),
  }),
  example: { tankVolume: '17 L' },
  intermediates: {},
  outputs: {
    distanceToWarning: quantityOutput(length, {
      symbol: 's_w',
      label: 'Distance until the first warning that the light-duty rule asks for',
      digits: 3,
      units: ['km', 'mi'],
    }),
    fillToFull: optional(quantityOutput(volume, { symbol: 'V_f', label: 'Fluid to fill', digits: 3, units: ['L'] })),
    refill: choiceOutput({
      label: 'Refill',
      options: {
        enough: 'a full refill is enough to be noticed',
        'too-small': 'a full refill is less than the level sensor may notice: wait',
        unknown: 'size of the tank not given',
      },
    }),
    range: quantityOutput(length, { symbol: 's', label: 'Range', digits: 3, units: ['km', 'mi'] }),
  },
  constants: {
    warningDistance: constant(length, 2_400_000, {
      symbol: 's_{2400}',
      label: 'Range at which the warning must come, from memory',
      source: 'unR83Inducement',
    }),
  },
  steps: [
    { gives: 'fillToFull', tex: '[[fillToFull]] = [[tankVolume]]-[[fluidVolume]]' },
    { gives: 'refill', text: 'Fluid to fill against the least refill of the level sensor.', source: 'practice' },
    { gives: 'distanceToWarning', tex: '[[distanceToWarning]] = \\max(0,\\ s-[[warningDistance]])', source: 'unR83Inducement' },
    { gives: 'range', tex: '[[range]] = \\frac{[[fluidVolume]]-[[unusableVolume]]}{[[consumption]]}' },
  ],
  assumptions: [
    { code: 'same_use', text: 'The vehicle is used as it was when the consumption was found. Heavy load, towing and heat need more.' },
  ],
  limits: [
    { code: 'light_duty_warning', text: 'The warning distance is that of cars and vans in the EU. Heavy vehicles warn by tank level.' },
  ],
  cautions: [cautions.makerFirst, cautions.noDefeat],
  sources: { unR83Inducement, practice: commonPractice('Most level sensors need 3 L to 5 L to notice a refill') },
  compute(input, { constants, warn }) {
    if (input.tankVolume !== undefined && input.tankVolume < input.fluidVolume)
      return inconsistentInputs('the tank holds less than what is in it', ['tankVolume'], ['fluidVolume']);
    const range = reductantRange(input);
    const fillToFull = input.tankVolume === undefined ? undefined : input.tankVolume - input.fluidVolume;
    warn('from_memory', 'The warning distance of 2400 km is from memory of UN Regulation No. 83; the vehicle may warn earlier.');
    return {
      range,
      distanceToWarning: Math.max(0, range - constants.warningDistance),
      fillToFull,
      refill: fillToFull === undefined ? 'unknown' : fillToFull >= input.minimumRefill ? 'enough' : 'too-small',
    };
  },
});
