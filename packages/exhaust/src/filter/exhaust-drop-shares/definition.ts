import {
  type Advice,
  choiceOutput,
  defineCalculation,
  list,
  optional,
  quantity,
  quantityOutput,
  quantityWithDefault,
  tableOutput,
  text,
  textOutput,
} from '@wallflow/calculation';
import { differentialPressure, fraction, gaugePressure, ratio } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { budgetPractice } from '../sources.js';
import { dropShares, furthestAbove, type SharesVerdict, sharesVerdict } from './kernel.js';

const drop = (symbol: string, label: string, description: string, example: string) =>
  quantity(differentialPressure, {
    symbol,
    label,
    description,
    above: '0 mbar',
    max: '1000 mbar',
    usual: ['0.1 mbar', '300 mbar'],
    usualReason: { below: 'so small a drop is mostly sensor zero', above: 'so large a drop points to a misread unit or a closed exhaust' },
    example,
  });

const part = z.strictObject({
  name: text({ label: 'Part', example: 'particulate filter', maxLength: 60 }),
  pressureDrop: drop('\\Delta p', 'Drop over the part', 'Between a tap before it and one behind it.', '120 mbar'),
  cleanDrop: drop('\\Delta p_n', 'What it should be, if known', 'At this flow and temperature, clean or new.', '25 mbar').optional(),
});

const verdicts = {
  contradict: 'the readings contradict each other',
  rest: 'more of it lies in no measured part than in any of them',
  'part-above': 'a part is above what it should be',
  'none-above': 'no part is above what it should be',
  'normal-unknown': 'not decided: what the parts should be is not known',
} as const satisfies Record<SharesVerdict, string>;

export const exhaustDropSharesCalculation = defineCalculation({
  id: 'exhaust-drop-shares',
  version: '2.0.0',
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
      usualReason: { below: 'so small a back-pressure is mostly sensor zero', above: 'an engine hardly runs against more' },
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
    uncertainty: quantityWithDefault(differentialPressure, {
      symbol: 'u',
      label: 'Uncertainty of each reading',
      min: '0 mbar',
      max: '50 mbar',
      example: '2 mbar',
      units: ['mbar', 'kPa', 'psi'],
      default: '2 mbar',
      defaultReason: 'sensor zero, common practice, no source',
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
    largestPart: textOutput({ label: 'Largest measured part' }),
    largestShare: quantityOutput(fraction, { symbol: 'x', label: 'Its share of the back pressure', digits: 3, units: ['%'] }),
    furthestAboveNormal: optional(textOutput({ label: 'Part furthest above what it should be' })),
    verdict: choiceOutput({ label: 'Verdict', options: verdicts }),
    lookAt: textOutput({ label: 'Look at' }),
  },
  constants: {},
  steps: [
    { gives: 'shares', tex: 'x_i = \\frac{\\Delta p_i}{[[backPressure]]}', source: 'budgetPractice' },
    { gives: 'rest', tex: '[[rest]] = [[backPressure]]-\\sum_i \\Delta p_i' },
    { gives: 'largestPart', text: 'Largest drop: [[largestPart]].' },
    { gives: 'largestShare', text: 'Share of it: [[largestShare]].' },
    {
      gives: 'furthestAboveNormal',
      text: 'Furthest above what it should be, beyond twice the uncertainty: [[furthestAboveNormal]].',
    },
    {
      gives: 'verdict',
      text: 'The parts may exceed the whole by twice the uncertainty of the sum, u√(n+1) with n parts, and no more. A rest larger than every part comes first.',
      source: 'budgetPractice',
    },
    { gives: 'lookAt', text: 'What follows from that: [[lookAt]].' },
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
    const found = dropShares(input.backPressure, drops);
    const { shares, rest, largest } = found;
    const normals = input.parts.map((entry) => entry.cleanDrop);
    const worst = furthestAbove(drops, normals, input.uncertainty);
    const verdict = sharesVerdict(found, drops, normals, input.uncertainty);
    if (rest > 0.3 * input.backPressure && verdict !== 'rest')
      warn(
        'large_rest',
        'Much of the back pressure is in no measured part: look at pipes, flaps and the tail pipe, or measure the missing part.',
      );
    const named = (index: number) => ({
      name: input.parts[index]?.name ?? '',
      share: Math.round(100 * (shares[index] ?? 0)),
      times: Number(((drops[index] ?? 0) / (normals[index] ?? 1)).toPrecision(2)),
    });
    return {
      shares: input.parts.map((entry, index) => ({
        part: entry.name,
        pressureDrop: entry.pressureDrop,
        share: shares[index] ?? 0,
        timesNormal: entry.cleanDrop === undefined ? undefined : entry.pressureDrop / entry.cleanDrop,
      })),
      rest,
      largestPart: input.parts[largest]?.name ?? '',
      largestShare: shares[largest] ?? 0,
      furthestAboveNormal: worst === undefined ? undefined : input.parts[worst]?.name,
      verdict,
      lookAt: lookAtText(verdict, named(worst ?? largest), Math.round((100 * rest) / input.backPressure)),
    };
  },
  advise({ verdict, furthestAboveNormal, largestPart }) {
    const advice: Advice[] = [];
    if (verdict === 'contradict') {
      return [
        { tone: 'do', text: 'Read zero and taps again, and take all readings at one engine state.' },
        { tone: 'do-not', text: 'Do not replace or clean a part on these readings.' },
      ];
    }
    if (verdict === 'rest')
      advice.push({ tone: 'do', text: 'Look at pipes, flaps, mixer and tail pipe, and measure the parts that are missing.' });
    if (verdict === 'rest' && furthestAboveNormal !== undefined)
      advice.push({ tone: 'do', text: `Look at this part as well, it is above its normal drop: ${furthestAboveNormal}.` });
    if (verdict === 'part-above' && furthestAboveNormal !== largestPart)
      advice.push({ tone: 'note', text: 'Another part drops more; that alone is no fault.' });
    if (verdict === 'normal-unknown')
      advice.push({ tone: 'do', text: 'Get the normal drop of the parts at this flow: the largest part need not be the faulty one.' });
    if (verdict === 'none-above')
      advice.push({
        tone: 'do',
        text: 'Look at the whole: more flow than assumed, or a back pressure that is normal at this engine state.',
      });
    return advice;
  },
});

interface Named {
  readonly name: string;
  readonly share: number;
  readonly times: number;
}

/** One sentence that names the part. */
function lookAtText(verdict: SharesVerdict, { name, share, times }: Named, rest: number): string {
  switch (verdict) {
    case 'contradict':
      return 'the readings first: the parts add up to more than the whole';
    case 'rest':
      return `pipes, flaps, tail pipe and what was not measured: ${rest} % of the back pressure is in no measured part`;
    case 'part-above':
      return `${name}: ${times} times what it should be, ${share} % of the back pressure`;
    case 'none-above':
      return `no part: none is above what it should be; the largest is ${name} with ${share} % of the back pressure`;
    case 'normal-unknown':
      return `${name}: the largest measured part with ${share} % of the back pressure; whether that is too much is not known`;
  }
}
