import * as wf from '@wallflow/calculation';
import { length, volume, volumePerDistance } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { unR83Inducement } from '../fault-countdown/sources.js';
import { reductantRange } from './kernel.js';

const practice = wf.commonPractice('Most level sensors need 3 L to 5 L to notice a refill');

export const reductantRangeCalculation = wf.defineCalculation({
  id: 'reductant-range',
  subject: 'reductant',
  title: 'Range on the reductant in the tank',
  purpose: 'How far does the fluid last, when does the warning come, and how much must be filled?',
  keywords: 'range, tank, refill, AUS 32, DEF, SCR',
  method: 'fluid that can be drawn over the consumption',
  inputs: {
    fluidVolume: wf.quantity(volume, { symbol: 'V', label: 'Fluid in the tank', range: '0 <= x <= 500 L', example: '30 L', units: ['L'] }),
    tankVolume: wf.optional(
      wf.quantity(volume, { symbol: 'V_{full}', label: 'Tank when full', range: '0 < x <= 500 L', example: '40 L', units: ['L'] }),
    ),
    unusableVolume: wf.quantity(volume, {
      symbol: 'V_0',
      label: 'Fluid that cannot be drawn',
      range: '0 <= x <= 50 L',
      units: ['L'],
      default: ['1 L', 'common practice, no source; see the vehicle data'],
    }),
    consumption: wf.quantity(volumePerDistance, {
      symbol: 'c',
      label: 'Consumption',
      description: 'Cars and vans mostly 0.5 to 5 L per 1000 km, heavy vehicles much more.',
      range: '0.05 <= x <= 100 L/1000km',
      usual: ['0.5 L/1000km', '40 L/1000km', 'outside of it the consumption is probably wrong or there is a leak; common practice'],
      example: '11 L/1000km',
      units: ['L/1000km', 'L/100km'],
    }),
    minimumRefill: wf.quantity(volume, {
      symbol: 'V_{min}',
      label: 'Least refill that the level sensor notices',
      range: '0 <= x <= 50 L',
      units: ['L'],
      default: ['5 L', 'common practice, no source; see the vehicle handbook'],
    }),
  },
  example: { tankVolume: '40 L' },
  outputs: {
    distanceToWarning: wf.quantityOutput(length, {
      symbol: 's_w',
      label: 'Distance until the first warning that the light-duty rule asks for',
      digits: 3,
      units: ['km', 'mi'],
    }),
    fillToFull: wf.optional(wf.quantityOutput(volume, { symbol: 'V_f', label: 'Fluid to fill', digits: 3, units: ['L'] })),
    tankRefill: wf.choiceOutput({
      label: 'Refill',
      options: {
        enough: 'a full refill is enough to be noticed',
        'too-small': 'a full refill is less than the level sensor may notice: wait',
        unknown: 'size of the tank not entered',
      },
    }),
    range: wf.quantityOutput(length, { symbol: 's', label: 'Range', digits: 3, units: ['km', 'mi'] }),
  },
  constants: {
    warningDistance: wf.constant(length, '2400 km', {
      symbol: 's_{2400}',
      label: 'Range at which the warning must come, from memory',
      source: unR83Inducement,
    }),
  },
  answer: 'range',
  steps: [
    wf.formula('range', 'max(0, fluidVolume - unusableVolume) / consumption'),
    wf.formula('distanceToWarning', 'max(0, range - warningDistance)', unR83Inducement),
    wf.formula('fillToFull', 'tankVolume - fluidVolume'),
    wf.verdict(
      'tankRefill',
      { unknown: 'not known(fillToFull)', enough: 'fillToFull >= minimumRefill', 'too-small': 'otherwise' },
      practice,
    ),
  ],
  assumptions: { same_use: 'The vehicle is used as it was when the consumption was found. Heavy load, towing and heat need more.' },
  limits: { light_duty_warning: 'The warning distance is that of cars and vans in the EU. Heavy vehicles warn by tank level.' },
  cautions: [cautions.makerFirst, cautions.noDefeat],
  compute(input, { constants, warn }) {
    if (input.tankVolume !== undefined && input.tankVolume < input.fluidVolume)
      return wf.inconsistentInputs('the tank holds less than what is in it', ['tankVolume'], ['fluidVolume']);
    const range = reductantRange(input);
    const fillToFull = input.tankVolume === undefined ? undefined : input.tankVolume - input.fluidVolume;
    warn('from_memory', 'The warning distance of 2400 km is from memory of UN Regulation No. 83; the vehicle may warn earlier.');
    return {
      range,
      distanceToWarning: Math.max(0, range - constants.warningDistance),
      fillToFull,
      tankRefill: fillToFull === undefined ? 'unknown' : fillToFull >= input.minimumRefill ? 'enough' : 'too-small',
    };
  },
});
