import * as wf from '@wallflow/calculation';
import { temperature, temperatureDifference, time } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { type DepositKind, type DepositKindId, depositKinds } from '../deposits/kinds.js';
import { depositAgeing2020, depositAnalysis2015, depositFormation2014, depositPractice, tischer2019 } from '../deposits/sources.js';

const names = Object.fromEntries(Object.entries(depositKinds).map(([id, kind]) => [id, kind.name])) as Record<DepositKindId, string>;
const waters = { dissolves: 'dissolves', 'does-not-dissolve': 'does not dissolve' } as const;
const heats = {
  gone: 'hot enough to burn off',
  partly: 'loses weight, will not go entirely',
  stays: 'too cold: it stays, and may harden',
} as const;
const crust = wf.commonPractice('A crust needs a quarter of an hour to half an hour at temperature');
const at = (symbol: string, label: string) => wf.quantityOutput(temperature, { symbol, label, digits: 3, units: ['degC'] });

export const depositClearingCalculation = wf.defineCalculation({
  id: 'deposit-clearing',
  subject: 'reductant',
  title: 'What clears a urea deposit',
  purpose: 'Will heat or warm water remove this deposit, and how hot must it get?',
  keywords: 'deposit, crystals, burn-off, cyanuric acid, biuret, DEF, AUS 32, SCR',
  method: 'published decomposition temperatures of deposits, from a table',
  inputs: {
    deposit: wf.choice({ label: 'Deposit', options: names, example: 'cyanuric-acid' }),
    clearingMethod: wf.choice({
      label: 'How it is to be cleared',
      options: { heat: 'heat', water: 'warm demineralised water, part removed and cold' },
      default: ['heat', 'no other way was named'],
    }),
    ...wf.relevantWhen('clearingMethod', 'heat', {
      depositTemperature: wf.quantity(temperature, {
        symbol: 'T',
        label: 'Temperature that the deposit itself reaches',
        description: 'After a filter that regenerates, the deposit stays far cooler than the gas before the filter; measure at the mixer.',
        range: '0 <= x <= 800 °C',
        example: '350 °C',
        units: ['degC'],
      }),
      holdTime: wf.quantity(time, {
        symbol: 't',
        label: 'Time at this temperature',
        range: '0 min <= x <= 5 h',
        example: '20 min',
        units: ['min'],
      }),
    }),
  },
  intermediates: {
    losesFrom: at('T_0', 'It begins to lose weight from'),
    goneAbove: at('T_e', 'Samples of this kind were gone above'),
  },
  outputs: {
    temperatureMargin: wf.optional(
      wf.quantityOutput(temperatureDifference, {
        symbol: '\\Delta T',
        label: 'Temperature above what is needed',
        description: 'Negative when it is too cold.',
        digits: 3,
        units: ['K'],
      }),
    ),
    byHeat: wf.optional(wf.choiceOutput({ label: 'By this heat', options: heats })),
    byWater: wf.choiceOutput({ label: 'By warm water of 50 °C to 70 °C', options: waters }),
    kinds: wf.tableOutput({
      label: 'Kinds of deposit',
      columns: {
        kind: wf.choiceOutput({ label: 'Kind', options: names }),
        losesFrom: at('T_0', 'Loses weight from'),
        goneAbove: at('T_e', 'Gone above'),
        warmWater: wf.choiceOutput({ label: 'Warm water', options: waters }),
      },
    }),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: { clears: 'this should clear it', partly: 'this clears part of it', 'does-not-clear': 'this does not clear it' },
    }),
  },
  constants: { leastHold: wf.constant(time, '15 min', { symbol: 't_{min}', label: 'Least time that a crust needs', source: crust }) },
  answer: 'verdict',
  steps: [
    wf.statement('kinds', 'Temperatures of published samples of each kind.', depositFormation2014),
    wf.fromTable('losesFrom', ['deposit'], depositFormation2014, undefined, 'First published loss of weight of this kind.'),
    wf.fromTable('goneAbove', ['deposit'], depositFormation2014, undefined, 'Above this, published samples of this kind were gone.'),
    wf.formula('temperatureMargin', 'depositTemperature - goneAbove'),
    wf.verdict(
      'byHeat',
      { gone: 'depositTemperature >= goneAbove', partly: 'depositTemperature >= losesFrom', stays: 'otherwise' },
      depositFormation2014,
    ),
    wf.verdict('byWater', { dissolves: "deposit == 'urea-biuret'", 'does-not-dissolve': 'otherwise' }, depositPractice),
    wf.verdict('verdict', {
      clears:
        "clearingMethod == 'heat' and byHeat == 'gone' and holdTime >= leastHold or clearingMethod == 'water' and byWater == 'dissolves'",
      partly: "clearingMethod == 'heat' and byHeat != 'stays'",
      'does-not-clear': 'otherwise',
    }),
  ],
  assumptions: {
    time_not_published:
      'The papers heat small samples. How long a thick crust takes is not published; a quarter of an hour to half an hour at temperature is common practice.',
  },
  limits: { slow_heat_hardens: 'Too little heat for too long turns soft deposits into hard ones that need 430 °C.' },
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.neverUnattended, cautions.makerFirst],
  dimensional: 'temperatures of the papers held as data',
  sources: [tischer2019, depositAnalysis2015, depositAgeing2020],
  compute(input, { constants, warn }) {
    const kind = depositKinds[input.deposit];
    const { depositTemperature, holdTime = 0 } = input;
    const byHeat =
      depositTemperature === undefined
        ? undefined
        : depositTemperature >= kind.goneAbove
          ? 'gone'
          : depositTemperature >= kind.losesFrom
            ? 'partly'
            : 'stays';
    const short = holdTime < constants.leastHold;
    if (byHeat !== undefined && byHeat !== 'stays' && short)
      warn('short', 'Less than a quarter of an hour at temperature; a crust needs longer (common practice).', ['holdTime']);
    if (input.deposit === 'unknown') warn('kind_unknown', 'The kind is not known; the most stubborn was taken.', ['deposit']);
    const heated = byHeat === 'gone' && !short ? 'clears' : byHeat === 'stays' ? 'does-not-clear' : 'partly';
    return {
      losesFrom: kind.losesFrom,
      goneAbove: kind.goneAbove,
      temperatureMargin: depositTemperature === undefined ? undefined : depositTemperature - kind.goneAbove,
      byHeat,
      byWater: kind.warmWater,
      kinds: (Object.keys(depositKinds) as DepositKindId[])
        .filter((id) => id !== 'unknown')
        .map((id) => ({ kind: id, ...rowOf(depositKinds[id]) })),
      verdict: input.clearingMethod === 'heat' ? heated : kind.warmWater === 'dissolves' ? 'clears' : 'does-not-clear',
    };
  },
  advise: () => [
    { tone: 'do', text: 'Burn off outdoors or with extraction: the fumes hold ammonia and isocyanic acid.' },
    { tone: 'do-not', text: 'Do not chip at the injector tip or the mixer, and do not pour water into a hot exhaust.' },
  ],
});

/** A row of the table without the name, which the kind itself shows. */
function rowOf({ losesFrom, goneAbove, warmWater }: DepositKind) {
  return { losesFrom, goneAbove, warmWater };
}
