import * as wf from '@wallflow/calculation';
import { fraction, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { amountToAdd, blendedLiquid } from '../blend/kernel.js';
import { massBalance } from '../sources.js';

const volumeOutput = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 4, units: ['mL', 'L', 'floz_US'] });

export const dilutionAdjustCalculation = wf.defineCalculation({
  id: 'dilution-adjust',
  subject: 'cleaning',
  title: 'Weaken, strengthen or top up a mix',
  purpose: 'What must be added to the mix that is left to bring it to the strength that is needed?',
  keywords: 'C1V1, top up, re-dilute, strengthen, half used',
  method: 'C1 V1 = C2 V2 with what is added',
  inputs: {
    volumeLeft: wf.quantity(volume, {
      symbol: 'V_1',
      label: 'Mix that is left',
      range: '0 mL < x <= 1000 L',
      example: '600 mL',
      units: ['mL', 'L', 'gal_US'],
    }),
    strengthLeft: wf.quantity(fraction, {
      symbol: 'c_1',
      label: 'Strength of what is left, by volume',
      range: '0 <= x <= 100 %',
      example: '16.7 %',
    }),
    wantedStrength: wf.quantity(fraction, {
      symbol: 'c_2',
      label: 'Strength that is needed',
      range: '0 <= x <= 100 %',
      example: '20 %',
    }),
    wantedVolume: wf.optional(
      wf.quantity(volume, {
        symbol: 'V_2',
        label: 'Finished mix that is needed',
        description: 'Leave blank to add only what the strength needs.',
        range: '0 mL < x <= 1000 L',
        example: '2 L',
        units: ['mL', 'L', 'gal_US'],
      }),
    ),
    concentrateStrength: wf.quantity(fraction, {
      symbol: 'c_c',
      label: 'Strength of the concentrate',
      range: '0 < x <= 100 %',
      default: ['100 %', 'concentrate as bought counts as 100 %'],
    }),
  },
  intermediates: {
    activeNeeded: volumeOutput('A_2', 'Concentrate in the finished mix'),
    activeLeft: volumeOutput('A_1', 'Concentrate in what is left'),
  },
  outputs: {
    waterToAdd: volumeOutput('V_w', 'Water to add'),
    concentrateToAdd: volumeOutput('V_c', 'Concentrate to add'),
    strength: wf.quantityOutput(fraction, { symbol: 'c', label: 'Strength of the finished mix, checked', digits: 4, units: ['%'] }),
    volumeInTheEnd: volumeOutput('V', 'Finished mix'),
  },
  answer: 'waterToAdd',
  steps: [
    wf.formula('activeLeft', 'strengthLeft * volumeLeft', massBalance),
    wf.cases(
      'concentrateToAdd',
      {
        'known(wantedVolume)': '(wantedStrength * wantedVolume - activeLeft) / concentrateStrength',
        'wantedStrength <= strengthLeft': '0',
        otherwise: 'volumeLeft * (wantedStrength - strengthLeft) / (concentrateStrength - wantedStrength)',
      },
      massBalance,
    ),
    wf.cases(
      'waterToAdd',
      {
        'known(wantedVolume)': 'wantedVolume - volumeLeft - concentrateToAdd',
        'wantedStrength >= strengthLeft': '0',
        otherwise: 'volumeLeft * (strengthLeft / wantedStrength - 1)',
      },
      massBalance,
    ),
    wf.formula('volumeInTheEnd', 'volumeLeft + waterToAdd + concentrateToAdd', massBalance),
    wf.formula('activeNeeded', 'wantedStrength * volumeInTheEnd', massBalance),
    wf.formula(
      'strength',
      '(activeLeft + concentrateStrength * concentrateToAdd) / volumeInTheEnd',
      massBalance,
      undefined,
      'The check: concentrate over the whole.',
    ),
  ],
  assumptions: {
    additive_volumes: 'Volumes add up and the strength of what is left is as it was mixed: nothing evaporated or was used up.',
  },
  limits: { used_mix: 'A mix that has been through a filter is partly used up: do not strengthen it, dispose of it.' },
  cautions: [cautions.caustic, cautions.waste, cautions.makerFirst],
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
        return wf.noSolution(
          'there is too much of the mix that is left, or it is too strong, for that volume: use less of it, or make more mix',
          ['wantedVolume'],
        );
      }
    }
    if (waterToAdd === undefined || concentrateToAdd === undefined) {
      return wf.noSolution('neither water nor this concentrate brings the mix to that strength', ['wantedStrength']);
    }
    const whole = blendedLiquid([left, { amount: waterToAdd, strength: 0 }, { amount: concentrateToAdd, strength: concentrateStrength }]);
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
