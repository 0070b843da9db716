import * as wf from '@wallflow/calculation';
import { fraction, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { rinsePractice, stagedRinse } from '../sources.js';
import { rinsesToReach, shareAfterRinse, shareAfterRinses } from './kernel.js';

const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 3, units: ['mL', 'L', 'floz_US'] });
const shareOutput = (symbol: string, label: string) => wf.quantityOutput(fraction, { symbol, label, digits: 3, units: ['%'] });
const mostRinses = 1000;

export const rinseDilutionCalculation = wf.defineCalculation({
  id: 'rinse-dilution',
  subject: 'cleaning',
  title: 'Cleaner left after rinsing',
  purpose: 'How much cleaner is still in the filter after these rinses, and how many rinses does it take?',
  keywords: 'rinse, residue, held liquid, demineralised water',
  method: 'each rinse mixes with the liquid left in the filter and drains to the same held volume',
  inputs: {
    heldVolume: wf.quantity(volume, {
      symbol: 'V_h',
      label: 'Liquid that stays in the filter after draining',
      description: 'What went in minus what ran out; or the weight gained, one gram for one millilitre.',
      range: '0 mL < x <= 100 L',
      example: '1.1 L',
      units: ['mL', 'L', 'floz_US'],
    }),
    startStrength: wf.quantity(fraction, {
      symbol: 'c_0',
      label: 'Strength of the cleaner that was used',
      range: '0 < x <= 100 %',
      example: '16.7 %',
    }),
    rinseVolume: wf.quantity(volume, {
      symbol: 'V_r',
      label: 'Water of one rinse',
      range: '0 mL < x <= 200 L',
      example: '1 L',
      units: ['L', 'mL', 'gal_US'],
    }),
    rinses: wf.count({ symbol: 'n', label: 'Rinses', min: 1, max: 100, example: 3 }),
    strengthLimit: wf.optional(
      wf.quantity(fraction, {
        symbol: 'c_l',
        label: 'Strength that may remain',
        description: 'From the data sheet of the cleaner, or stricter on a coated filter.',
        range: '0 < x <= 100 %',
        example: '1 %',
      }),
    ),
  },
  intermediates: {
    shareOfOneRinse: shareOutput('q', 'Share of the cleaner left by one rinse'),
    shareLeft: shareOutput('q_n', 'Share of the cleaner left by all rinses'),
    shareByOneLargeRinse: shareOutput('q_1', 'Share left if all the water were used in one rinse'),
  },
  outputs: {
    cleanerLeft: volumeOutput('V_c', 'Concentrate still in the filter'),
    waterUsed: volumeOutput('V_w', 'Water used, to be collected'),
    rinsesNeeded: wf.optional(wf.countOutput({ symbol: 'n_l', label: 'Rinses needed for the limit' })),
    strengthLeft: shareOutput('c_n', 'Strength of what is left, by volume'),
  },
  answer: 'strengthLeft',
  steps: [
    wf.formula('shareOfOneRinse', 'heldVolume / (heldVolume + rinseVolume)', stagedRinse),
    wf.formula('shareLeft', 'shareOfOneRinse ^ rinses', stagedRinse),
    wf.formula('shareByOneLargeRinse', 'heldVolume / (heldVolume + rinses * rinseVolume)', stagedRinse),
    wf.formula('strengthLeft', 'startStrength * shareLeft', stagedRinse),
    wf.formula('cleanerLeft', 'strengthLeft * heldVolume', stagedRinse),
    wf.formula('waterUsed', 'rinses * rinseVolume', rinsePractice),
    wf.formula(
      'rinsesNeeded',
      'max(0, ceil(round(10 ^ 9 * ln(strengthLimit / startStrength) / ln(shareOfOneRinse)) / 10 ^ 9))',
      stagedRinse,
      undefined,
      'The next whole number; the inner rounding keeps a number that is whole already.',
    ),
  ],
  assumptions: {
    full_mixing: 'Each rinse reaches every channel and mixes with what is there. Water that runs past blocked channels rinses less.',
  },
  limits: {
    not_what_sticks: 'What has dried on or is bound to the coating is not rinsed out like this; test the last rinse with a pH strip.',
  },
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.waste, cautions.makerFirst],
  compute(input) {
    const { heldVolume, startStrength, rinses, rinseVolume, strengthLimit } = input;
    const shareLeft = shareAfterRinses(input, rinses);
    const needed = strengthLimit === undefined ? undefined : rinsesToReach(input, strengthLimit / startStrength);
    if (needed !== undefined && needed > mostRinses) {
      return wf.noSolution('rinses this small never reach the limit: use more water per rinse, or let the filter drain better', [
        'rinseVolume',
      ]);
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
      ? ([{ tone: 'do', text: wf.say`Rinse ${rinsesNeeded} times in all before the filter is heated.` }] as const)
      : []),
    ...(strengthLimit === undefined
      ? ([{ tone: 'note', text: 'No limit was entered: look in the data sheet for what may remain.' }] as const)
      : []),
  ],
});
