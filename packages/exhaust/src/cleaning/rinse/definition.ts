import { count, countOutput, defineCalculation, noSolution, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { fraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { rinsePractice, stagedRinse } from '../sources.js';
import { rinsesToReach, shareAfterRinse, shareAfterRinses } from './kernel.js';

const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 3, units: ['mL', 'L', 'floz_US'] });
const shareOutput = (symbol: string, label: string) => quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });
const mostRinses = 1000;

export const rinseDilutionCalculation = defineCalculation({
  id: 'rinse-dilution',
  version: '1.0.0',
  subject: 'cleaning',
  title: 'Cleaner left after rinsing',
  purpose: 'How much cleaner is still in the filter after these rinses, and how many rinses does it take?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['rinse', 'residue', 'held liquid', 'demineralised water'],
  method: 'each rinse mixes with the liquid that stayed behind and drains to the same held volume',
  inputs: z.strictObject({
    heldVolume: quantity(volume, {
      symbol: 'V_h',
      label: 'Liquid that stays in the filter after draining',
      description: 'What went in less what ran out; or the weight gained, one gram for one millilitre.',
      above: '0 mL',
      max: '100 L',
      example: '400 mL',
      units: ['mL', 'L', 'floz_US'],
    }),
    startStrength: quantity(fraction, {
      symbol: 'c_0',
      label: 'Strength of the cleaner that was used',
      above: '0 %',
      max: '100 %',
      example: '20 %',
    }),
    rinseVolume: quantity(volume, {
      symbol: 'V_r',
      label: 'Water of one rinse',
      above: '0 mL',
      max: '200 L',
      example: '1 L',
      units: ['L', 'mL', 'gal_US'],
    }),
    rinses: count({ symbol: 'n', label: 'Rinses', min: 1, max: 100, example: 2 }),
    strengthLimit: quantity(fraction, {
      symbol: 'c_l',
      label: 'Strength that may stay',
      description: 'From the data sheet of the cleaner, or stricter on a coated filter.',
      above: '0 %',
      max: '100 %',
      example: '1 %',
    }).optional(),
  }),
  intermediates: {
    shareOfOneRinse: shareOutput('q', 'Share left by one rinse'),
    shareLeft: shareOutput('q_n', 'Share left by all rinses'),
    shareByOneLargeRinse: shareOutput('q_1', 'Share left if all the water went in as one rinse'),
  },
  outputs: {
    cleanerLeft: volumeOutput('V_c', 'Concentrate still in the filter'),
    waterUsed: volumeOutput('V_w', 'Water used, to be caught'),
    rinsesNeeded: optional(countOutput({ symbol: 'n_l', label: 'Rinses needed for the limit' })),
    strengthLeft: shareOutput('c_n', 'Strength of the liquid that stays'),
  },
  constants: {},
  steps: [
    {
      gives: 'shareOfOneRinse',
      tex: '[[shareOfOneRinse]] = \\frac{[[heldVolume]]}{[[heldVolume]]+[[rinseVolume]]}',
      source: 'stagedRinse',
    },
    { gives: 'shareLeft', tex: '[[shareLeft]] = \\left([[shareOfOneRinse]]\\right)^{[[rinses]]}', source: 'stagedRinse' },
    {
      gives: 'shareByOneLargeRinse',
      tex: '[[shareByOneLargeRinse]] = \\frac{[[heldVolume]]}{[[heldVolume]]+[[rinses]]\\,[[rinseVolume]]}',
      source: 'stagedRinse',
    },
    { gives: 'cleanerLeft', tex: '[[cleanerLeft]] = [[startStrength]]\\,[[shareLeft]]\\,[[heldVolume]]', source: 'stagedRinse' },
    { gives: 'waterUsed', tex: '[[waterUsed]] = [[rinses]]\\,[[rinseVolume]]', source: 'rinsePractice' },
    { gives: 'rinsesNeeded', text: 'Fewest rinses that bring the strength to the limit: [[rinsesNeeded]].', source: 'stagedRinse' },
    { gives: 'strengthLeft', tex: '[[strengthLeft]] = [[startStrength]]\\,[[shareLeft]]', source: 'stagedRinse' },
  ],
  assumptions: [
    {
      code: 'full_mixing',
      text: 'Each rinse reaches every channel and mixes with what is there. Water that runs past blocked channels rinses less.',
    },
  ],
  limits: [
    {
      code: 'not_what_sticks',
      text: 'What has dried on or is bound to the coating does not follow this; a pH strip on the last rinse shows it.',
    },
  ],
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.waste, cautions.makerFirst],
  sources: { stagedRinse, rinsePractice },
  compute(input) {
    const { heldVolume, startStrength, rinses, rinseVolume, strengthLimit } = input;
    const shareLeft = shareAfterRinses(input, rinses);
    const needed = strengthLimit === undefined ? undefined : rinsesToReach(input, strengthLimit / startStrength);
    if (needed !== undefined && needed > mostRinses) {
      return noSolution('rinses of this size never get there: take more water per rinse or let the filter drain better', ['rinseVolume']);
    }
    return {
      shareOfOneRinse: shareAfterRinse(input),
      shareLeft,
      shareByOneLargeRinse: heldVolume / (heldVolume + rinses * rinseVolume),
      cleanerLeft: startStrength * shareLeft * heldVolume,
      waterUsed: rinses * rinseVolume,
      rinsesNeeded: needed,
      strengthLeft: startStrength * shareLeft,
    };
  },
  advise: ({ rinsesNeeded }, { rinses, strengthLimit }) => [
    { tone: 'do', text: 'Drain well between rinses: several small rinses leave less than one large one with the same water.' },
    ...(rinsesNeeded !== undefined && rinsesNeeded > rinses
      ? ([{ tone: 'do', text: `Rinse ${rinsesNeeded} times in all before the filter is heated.` }] as const)
      : []),
    ...(strengthLimit === undefined ? ([{ tone: 'note', text: 'No limit was given: ask the data sheet what may stay.' }] as const) : []),
  ],
});
