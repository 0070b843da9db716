import { defineCalculation, noSolution, quantity, quantityOutput, quantityWithDefault } from '@wallflow/calculation';
import { fraction, volume } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { amountToAdd, blend } from '../blend/kernel.js';
import { massBalance } from '../sources.js';

const volumeOutput = (symbol: string, label: string) => quantityOutput(volume, { symbol, label, digits: 4, units: ['mL', 'L', 'floz_US'] });

export const dilutionAdjustCalculation = defineCalculation({
  id: 'dilution-adjust',
  version: '1.0.0',
  subject: 'cleaning',
  title: 'Weaken, strengthen or top up a mix',
  purpose: 'What must be added to the mix that is left, so that it has the strength that is needed?',
  usedBy: ['technician', 'developer', 'trainer'],
  keywords: ['C1V1', 'top up', 're-dilute', 'strengthen', 'half used'],
  method: 'C1 V1 = C2 V2 with the stock that is added',
  inputs: z.strictObject({
    volumeLeft: quantity(volume, {
      symbol: 'V_1',
      label: 'Mix that is left',
      above: '0 mL',
      max: '1000 L',
      example: '600 mL',
      units: ['mL', 'L', 'gal_US'],
    }),
    strengthLeft: quantity(fraction, {
      symbol: 'c_1',
      label: 'Strength of what is left, by volume',
      min: '0 %',
      max: '100 %',
      example: '50 %',
    }),
    wantedStrength: quantity(fraction, {
      symbol: 'c_2',
      label: 'Strength that is needed, by volume',
      min: '0 %',
      max: '100 %',
      example: '20 %',
    }),
    wantedVolume: quantity(volume, {
      symbol: 'V_2',
      label: 'Mix that is needed in the end',
      description: 'Left out, only as much is added as the strength asks for.',
      above: '0 mL',
      max: '1000 L',
      example: '2 L',
      units: ['mL', 'L', 'gal_US'],
    }).optional(),
    concentrateStrength: quantityWithDefault(fraction, {
      symbol: 'c_c',
      label: 'Strength of the concentrate',
      above: '0 %',
      max: '100 %',
      example: '100 %',
      default: '100 %',
      defaultReason: 'concentrate as bought counts as 100 %',
    }),
  }),
  intermediates: {
    activeNeeded: volumeOutput('A_2', 'Concentrate in the mix as needed'),
    activeLeft: volumeOutput('A_1', 'Concentrate in what is left'),
  },
  outputs: {
    waterToAdd: volumeOutput('V_w', 'Water to add'),
    concentrateToAdd: volumeOutput('V_c', 'Concentrate to add'),
    strength: quantityOutput(fraction, { symbol: 'c', label: 'Strength in the end, worked back', digits: 4, units: ['%'] }),
    volumeInTheEnd: volumeOutput('V', 'Mix in the end'),
  },
  constants: {},
  steps: [
    { gives: 'activeLeft', tex: '[[activeLeft]] = [[strengthLeft]]\\,[[volumeLeft]]', source: 'massBalance' },
    { gives: 'activeNeeded', tex: '[[activeNeeded]] = [[wantedStrength]]\\,[[volumeInTheEnd]]', source: 'massBalance' },
    {
      gives: 'concentrateToAdd',
      tex: '[[concentrateToAdd]] = \\frac{[[activeNeeded]]-[[activeLeft]]}{[[concentrateStrength]]}',
      source: 'massBalance',
    },
    { gives: 'waterToAdd', text: 'The rest of the volume is water: [[waterToAdd]].', source: 'massBalance' },
    { gives: 'strength', text: 'Check: concentrate over the whole: [[strength]].', source: 'massBalance' },
    { gives: 'volumeInTheEnd', tex: '[[volumeInTheEnd]] = [[volumeLeft]]+[[waterToAdd]]+[[concentrateToAdd]]', source: 'massBalance' },
  ],
  assumptions: [
    {
      code: 'additive_volumes',
      text: 'Volumes add up and the strength of what is left is as it was mixed: nothing evaporated or was used up.',
    },
  ],
  limits: [{ code: 'used_mix', text: 'A mix that has been through a filter is used up in part: do not strengthen it, dispose of it.' }],
  cautions: [cautions.caustic, cautions.waste, cautions.makerFirst],
  sources: { massBalance },
  compute(input) {
    const left = { amount: input.volumeLeft, strength: input.strengthLeft };
    const { wantedStrength, concentrateStrength } = input;
    const weaken = amountToAdd(left, 0, wantedStrength);
    const strengthen = amountToAdd(left, concentrateStrength, wantedStrength);
    let waterToAdd = wantedStrength <= left.strength ? weaken : 0;
    let concentrateToAdd = wantedStrength > left.strength ? strengthen : 0;
    if (input.wantedVolume !== undefined) {
      concentrateToAdd = (wantedStrength * input.wantedVolume - left.amount * left.strength) / concentrateStrength;
      waterToAdd = input.wantedVolume - left.amount - concentrateToAdd;
      if (concentrateToAdd < 0 || waterToAdd < 0) {
        return noSolution('what is left is too much or too strong for that volume: use less of it, or make more mix', ['wantedVolume']);
      }
    }
    if (waterToAdd === undefined || concentrateToAdd === undefined) {
      return noSolution('neither water nor this concentrate brings the mix to that strength', ['wantedStrength']);
    }
    const whole = blend([left, { amount: waterToAdd, strength: 0 }, { amount: concentrateToAdd, strength: concentrateStrength }]);
    return {
      activeLeft: left.amount * left.strength,
      activeNeeded: wantedStrength * whole.amount,
      waterToAdd,
      concentrateToAdd,
      strength: whole.strength,
      volumeInTheEnd: whole.amount,
    };
  },
});
