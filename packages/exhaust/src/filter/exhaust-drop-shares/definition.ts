import { defineCalculation, list, optional, quantity, quantityOutput, tableOutput, text, textOutput } from '@wallflow/calculation';
import { differentialPressure, fraction, gaugePressure, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { budgetPractice } from '../sources.js';
import { dropShares } from './kernel.js';

const drop = (symbol: string, label: string, description: string, example: string) =>
  quantity(differentialPressure, {
    symbol,
    label,
    description,
    above: '0 mbar',
    max: '1000 mbar',
    usual: ['0.1 mbar', '300 mbar'],
    usualReason: 'larger drops point to a misread unit or a closed exhaust',
    example,
  });

const part = z.strictObject({
  name: text({ label: 'Part', example: 'particulate filter', maxLength: 60 }),
  pressureDrop: drop('\\Delta p', 'Drop over the part', 'Between a tap before it and one behind it.', '120 mbar'),
  cleanDrop: drop('\\Delta p_n', 'What it should be, if known', 'At this flow and temperature, clean or new.', '25 mbar').optional(),
});

export const exhaustDropSharesCalculation = defineCalculation({
  id: 'exhaust-drop-shares',
  version: '1.0.0',
  subject: 'filter',
  title: 'Share of each part in the back pressure',
  purpose: 'Which part of the exhaust makes the back pressure: catalyst, filter, reduction catalyst, silencer or something in between?',
  usedBy: ['technician', 'trainer'],
  keywords: ['back pressure', 'which part is blocked', 'catalyst', 'silencer', 'budget'],
  method: 'drops in series',
  inputs: z.strictObject({
    backPressure: quantity(gaugePressure, {
      symbol: 'p_b',
      label: 'Back pressure before the first part',
      description: 'Gauge pressure, all parts and the tail pipe behind it, at the same engine state as the drops.',
      min: '0.1 mbar',
      max: '2000 mbar',
      usual: ['5 mbar', '500 mbar'],
      usualReason: 'an engine hardly runs against more',
      example: '180 mbar',
      units: ['mbar', 'kPa', 'bar', 'psi'],
    }),
    parts: list(part, {
      label: 'Parts',
      min: 1,
      max: 20,
      example: [
        { name: 'oxidation catalyst', pressureDrop: '15 mbar', cleanDrop: '12 mbar' },
        { name: 'particulate filter', pressureDrop: '120 mbar', cleanDrop: '25 mbar' },
        { name: 'reduction catalyst', pressureDrop: '18 mbar' },
        { name: 'silencer', pressureDrop: '14 mbar' },
      ],
    }),
  }),
  intermediates: {
    shares: tableOutput({
      label: 'Parts',
      columns: {
        part: textOutput({ label: 'Part' }),
        pressureDrop: dropOutput('\\Delta p', 'Drop'),
        share: quantityOutput(fraction, { symbol: 'x', label: 'Of the back pressure', digits: 3, units: ['%'] }),
        timesNormal: optional(quantityOutput(ratio, { symbol: '\\Delta p/\\Delta p_n', label: 'Times what it should be', digits: 3 })),
      },
    }),
  },
  outputs: {
    rest: dropOutput('\\Delta p_r', 'Not explained by the parts: pipes, bends, tail pipe'),
    largestPart: textOutput({ label: 'Largest part' }),
    furthestAboveNormal: optional(textOutput({ label: 'Part furthest above what it should be' })),
    largestShare: quantityOutput(fraction, { symbol: 'x', label: 'Its share of the back pressure', digits: 3, units: ['%'] }),
  },
  constants: {},
  steps: [
    { gives: 'shares', tex: 'x_i = \\frac{\\Delta p_i}{[[backPressure]]}', source: 'budgetPractice' },
    { gives: 'rest', tex: '[[rest]] = [[backPressure]]-\\sum_i \\Delta p_i' },
    { gives: 'largestPart', text: 'Largest drop: [[largestPart]].' },
    { gives: 'furthestAboveNormal', text: 'Furthest above what it should be: [[furthestAboveNormal]].' },
    { gives: 'largestShare', text: 'Share of the largest part: [[largestShare]].' },
  ],
  assumptions: [{ code: 'same_state', text: 'All readings belong to one steady engine state; the tail pipe ends at ambient pressure.' }],
  limits: [
    {
      code: 'largest_is_not_guilty',
      text: 'The largest part need not be the faulty one: a filter normally makes most of the drop. Compare with what is normal.',
    },
    { code: 'steady', text: 'Readings taken one after another only add up when flow and temperature stay the same.' },
  ],
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.sensorFirst],
  sources: { budgetPractice },
  compute(input, { warn }) {
    const drops = input.parts.map((entry) => entry.pressureDrop);
    const { shares, rest, largest } = dropShares(input.backPressure, drops);
    const timesNormal = input.parts.map((entry) => (entry.cleanDrop === undefined ? undefined : entry.pressureDrop / entry.cleanDrop));
    let worst = -1;
    for (const [index, value] of timesNormal.entries()) {
      if (value !== undefined && value > Math.max(1, timesNormal[worst] ?? 0)) worst = index;
    }
    if (rest < 0)
      warn(
        'parts_exceed_whole',
        'The parts add up to more than the back pressure: they were not read at one engine state, or a tap or zero is wrong.',
      );
    if (rest > 0.3 * input.backPressure)
      warn(
        'large_rest',
        'Much of the back pressure is in no measured part: look at pipes, flaps and the tail pipe, or measure the missing part.',
      );
    return {
      shares: input.parts.map((entry, index) => ({
        part: entry.name,
        pressureDrop: entry.pressureDrop,
        share: shares[index] ?? 0,
        timesNormal: timesNormal[index],
      })),
      rest,
      largestPart: input.parts[largest]?.name ?? '',
      furthestAboveNormal: input.parts[worst]?.name,
      largestShare: shares[largest] ?? 0,
    };
  },
  advise({ largestPart, furthestAboveNormal }) {
    if (furthestAboveNormal === undefined)
      return [{ tone: 'do', text: 'Get the normal drop of the parts at this flow: the largest part need not be the faulty one.' }];
    if (furthestAboveNormal === largestPart)
      return [
        { tone: 'do', text: `Look at: ${furthestAboveNormal}. It makes most of the back pressure and is furthest above its normal drop.` },
      ];
    return [
      { tone: 'do', text: `Look at: ${furthestAboveNormal}. It is furthest above its normal drop, although another part drops more.` },
    ];
  },
});
