import * as wf from '@wallflow/calculation';
import { differentialPressure, fraction, gaugePressure, ratio } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { dropOutput } from '../drop-outputs.js';
import { budgetPractice } from '../sources.js';
import { dropShares, furthestDropAbove, isAbove, type SharesVerdict, sharesVerdict } from './kernel.js';

const drop = (symbol: string, label: string, description: string, example: string) =>
  wf.quantity(differentialPressure, {
    symbol,
    label,
    description,
    range: '0 < x <= 1000 mbar',
    usual: [
      '0.1 mbar',
      '300 mbar',
      { below: 'so small a drop is mostly sensor zero', above: 'so large a drop points to a misread unit or a closed exhaust' },
    ],
    example,
  });

const part = {
  name: wf.text({ label: 'Part', example: 'particulate filter', maxLength: 60 }),
  pressureDrop: drop('\\Delta p', 'Drop over the part', 'Between a tap before it and one after it.', '95 mbar'),
  cleanDrop: wf.optional(drop('\\Delta p_n', 'What it should be, if known', 'At this flow and temperature, clean or new.', '11 mbar')),
};

const verdicts = {
  contradict: 'the readings contradict each other',
  rest: 'more of it lies in no measured part than in any of them',
  'part-above': 'a part is above what it should be',
  'none-above': 'no part is above what it should be',
  'normal-unknown': 'not decided: what the parts should be is not known',
} as const satisfies Record<SharesVerdict, string>;

const timesNormal = (symbol: string, label: string) => wf.quantityOutput(ratio, { symbol, label, digits: 3 });

export const exhaustDropSharesCalculation = wf.defineCalculation({
  id: 'exhaust-drop-shares',
  subject: 'filter',
  title: 'Share of each part in the back-pressure',
  purpose: 'Which part of the exhaust makes the back-pressure: catalyst, filter, reduction catalyst, silencer or something in between?',
  keywords: 'back pressure, backpressure, which part is blocked, catalyst, silencer, budget, delta p, restriction',
  method: 'drops in series',
  inputs: {
    backPressure: wf.quantity(gaugePressure, {
      symbol: 'p_b',
      label: 'Back-pressure before the first part',
      description: 'Gauge pressure, with all parts and the tailpipe after it, at the same engine state as the drops.',
      range: '0.1 <= x <= 2000 mbar',
      usual: [
        '5 mbar',
        '500 mbar',
        { below: 'so small a back-pressure is mostly sensor zero', above: 'an engine hardly runs against more' },
      ],
      example: '139 mbar',
      units: ['mbar', 'kPa', 'bar', 'psi'],
    }),
    exhaustParts: wf.list(part, {
      label: 'Parts',
      min: 1,
      max: 20,
      example: [
        { name: 'oxidation catalyst', pressureDrop: '12 mbar', cleanDrop: '11 mbar' },
        { name: 'particulate filter', pressureDrop: '95 mbar', cleanDrop: '11 mbar' },
        { name: 'reduction catalyst', pressureDrop: '16 mbar' },
        { name: 'silencer', pressureDrop: '10 mbar' },
      ],
    }),
    readingUncertainty: wf.quantity(differentialPressure, {
      symbol: 'u',
      label: 'Uncertainty of each reading',
      range: '0 <= x <= 50 mbar',
      units: ['mbar', 'kPa', 'psi'],
      default: ['2 mbar', 'sensor zero, common practice, no source'],
    }),
  },
  intermediates: {
    shares: wf.tableOutput({
      label: 'Parts',
      columns: {
        part: wf.textOutput({ label: 'Part' }),
        pressureDrop: dropOutput('\\Delta p', 'Drop'),
        share: wf.quantityOutput(fraction, { symbol: 'x', label: 'Of the back-pressure', digits: 3, units: ['%'] }),
        timesNormal: wf.optional(timesNormal('\\Delta p/\\Delta p_n', 'Times what it should be')),
        clearlyAbove: wf.optional(timesNormal('\\Delta p/\\Delta p_n', 'Times what it should be, where clearly above')),
      },
    }),
  },
  outputs: {
    rest: dropOutput('\\Delta p_r', 'Not explained by the parts: pipes, bends, tailpipe'),
    largestPart: wf.textOutput({ label: 'Largest measured part' }),
    largestShare: wf.quantityOutput(fraction, { symbol: 'x', label: 'Its share of the back-pressure', digits: 3, units: ['%'] }),
    furthestAboveNormal: wf.optional(wf.textOutput({ label: 'Part furthest above what it should be' })),
    verdict: wf.choiceOutput({ label: 'Verdict', options: verdicts }),
    lookAt: wf.textOutput({ label: 'Look at' }),
  },
  answer: 'lookAt',
  steps: [
    wf.rows(
      'shares',
      {
        pressureDrop: 'exhaustParts.pressureDrop',
        share: 'exhaustParts.pressureDrop / backPressure',
        timesNormal: { 'known(exhaustParts.cleanDrop)': 'exhaustParts.pressureDrop / exhaustParts.cleanDrop' },
        clearlyAbove: {
          'exhaustParts.pressureDrop > exhaustParts.cleanDrop + 2 * readingUncertainty':
            'exhaustParts.pressureDrop / exhaustParts.cleanDrop',
        },
      },
      budgetPractice,
    ),
    wf.formula('rest', 'backPressure - sum(exhaustParts.pressureDrop)'),
    wf.statement('largestPart', 'Largest drop: [[largestPart]].'),
    wf.formula('largestShare', 'max(shares.share)'),
    wf.statement('furthestAboveNormal', 'Of the parts above what they should be, the most times: [[furthestAboveNormal]].'),
    wf.verdict(
      'verdict',
      {
        contradict: 'rest < -2 * readingUncertainty * sqrt(count(exhaustParts) + 1)',
        rest: 'rest > max(exhaustParts.pressureDrop)',
        'part-above': 'count(shares.clearlyAbove) > 0',
        'none-above': 'count(exhaustParts.cleanDrop) == count(exhaustParts)',
        'normal-unknown': 'otherwise',
      },
      budgetPractice,
    ),
    wf.statement('lookAt', 'What follows from that: [[lookAt]].'),
  ],
  assumptions: { same_state: 'All readings belong to one steady engine state; the tailpipe ends at ambient pressure.' },
  limits: {
    largest_is_not_guilty:
      'The largest part need not be the faulty one: a filter normally makes most of the drop. Compare with what is normal.',
    steady: 'Readings taken one after another only add up when flow and temperature stay the same.',
  },
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.sensorFirst],
  compute(input, { warn }) {
    const drops = input.exhaustParts.map((entry) => entry.pressureDrop);
    const found = dropShares(input.backPressure, drops);
    const { shares, rest, largest } = found;
    const normals = input.exhaustParts.map((entry) => entry.cleanDrop);
    const worst = furthestDropAbove(drops, normals, input.readingUncertainty);
    const decided = sharesVerdict(found, drops, normals, input.readingUncertainty);
    if (rest > 0.3 * input.backPressure && decided !== 'rest')
      warn(
        'large_rest',
        'Much of the back-pressure is in no measured part: look at pipes, flaps and the tailpipe, or measure the missing part.',
      );
    const named = (index: number) => ({
      name: input.exhaustParts[index]?.name ?? '',
      share: Math.round(100 * (shares[index] ?? 0)),
      times: Number(((drops[index] ?? 0) / (normals[index] ?? 1)).toPrecision(2)),
    });
    return {
      shares: input.exhaustParts.map((entry, index) => ({
        part: entry.name,
        pressureDrop: entry.pressureDrop,
        share: shares[index] ?? 0,
        timesNormal: entry.cleanDrop === undefined ? undefined : entry.pressureDrop / entry.cleanDrop,
        clearlyAbove: isAbove(entry.pressureDrop, entry.cleanDrop, input.readingUncertainty)
          ? entry.pressureDrop / entry.cleanDrop
          : undefined,
      })),
      rest,
      largestPart: input.exhaustParts[largest]?.name ?? '',
      largestShare: shares[largest] ?? 0,
      furthestAboveNormal: worst === undefined ? undefined : input.exhaustParts[worst]?.name,
      verdict: decided,
      lookAt: lookAtText(decided, named(worst ?? largest), Math.round((100 * rest) / input.backPressure)),
    };
  },
  advise({ verdict, furthestAboveNormal, largestPart }) {
    const advice: wf.Advice[] = [];
    if (verdict === 'contradict') {
      return [
        { tone: 'do', text: 'Read zero and taps again, and take all readings at one engine state.' },
        { tone: 'do-not', text: 'Do not replace or clean a part on these readings.' },
      ];
    }
    if (verdict === 'rest')
      advice.push({ tone: 'do', text: 'Look at pipes, flaps, mixer and tailpipe, and measure the parts that are missing.' });
    if (verdict === 'rest' && furthestAboveNormal !== undefined)
      advice.push({ tone: 'do', text: wf.say`Look at this part as well, it is above its normal drop: ${furthestAboveNormal}.` });
    if (verdict === 'part-above' && furthestAboveNormal !== largestPart)
      advice.push({ tone: 'note', text: 'Another part drops more; that alone is no fault.' });
    if (verdict === 'normal-unknown')
      advice.push({ tone: 'do', text: 'Get the normal drop of the parts at this flow: the largest part need not be the faulty one.' });
    if (verdict === 'none-above')
      advice.push({
        tone: 'do',
        text: 'Look at the whole: more flow than assumed, or a back-pressure that is normal at this engine state.',
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
      return wf.say`pipes, flaps, tailpipe and what was not measured: ${rest} % of the back-pressure is in no measured part`;
    case 'part-above':
      return wf.say`${name}: ${times} times what it should be, ${share} % of the back-pressure`;
    case 'none-above':
      return wf.say`no part: none is above what it should be; the largest is ${name} with ${share} % of the back-pressure`;
    case 'normal-unknown':
      return wf.say`${name}: the largest measured part with ${share} % of the back-pressure; whether that is too much is not known`;
  }
}
