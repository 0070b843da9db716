import { choice, choiceOutput, choiceWithDefault, defineCalculation, quantity, quantityOutput, tableOutput } from '@wallflow/calculation';
import { temperature, temperatureDifference, time } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { type DepositKindId, depositKinds } from '../deposits/kinds.js';
import { depositAgeing2020, depositAnalysis2015, depositFormation2014, depositPractice, tischer2019 } from '../deposits/sources.js';

const names = Object.fromEntries(Object.entries(depositKinds).map(([id, kind]) => [id, kind.name])) as Record<DepositKindId, string>;
const waters = { dissolves: 'dissolves', 'does-not-dissolve': 'does not dissolve' } as const;
const heats = {
  gone: 'hot enough to burn off',
  partly: 'loses weight, will not go entirely',
  stays: 'too cold: it stays, and may harden',
} as const;

export const depositClearingCalculation = defineCalculation({
  id: 'deposit-clearing',
  version: '1.0.0',
  subject: 'reductant',
  title: 'What clears a urea deposit',
  purpose: 'Will heat or warm water remove this deposit, and how hot must it get?',
  usedBy: ['technician', 'trainer'],
  keywords: ['deposit', 'crystals', 'burn-off', 'cyanuric acid', 'biuret'],
  method: 'published decomposition temperatures of deposits, held as data',
  inputs: z.strictObject({
    deposit: choice({ label: 'Deposit', options: names, example: 'cyanuric-acid' }),
    depositTemperature: quantity(temperature, {
      symbol: 'T',
      label: 'Temperature that the deposit itself reaches',
      description: 'Behind a filter that regenerates this is well below the gas before the filter; measure at the mixer.',
      min: '0 °C',
      max: '800 °C',
      example: '350 °C',
      units: ['degC'],
    }),
    holdTime: quantity(time, { symbol: 't', label: 'How long', min: '0 min', max: '5 h', example: '20 min', units: ['min'] }),
    method: choiceWithDefault({
      label: 'Means',
      options: { heat: 'heat', water: 'warm demineralised water, part removed and cold' },
      example: 'heat',
      default: 'heat',
      defaultReason: 'no other means was named',
    }),
  }),
  intermediates: {
    goneAbove: quantityOutput(temperature, { symbol: 'T_e', label: 'Samples of this kind were gone above', digits: 3, units: ['degC'] }),
    losesFrom: quantityOutput(temperature, { symbol: 'T_0', label: 'It begins to lose weight from', digits: 3, units: ['degC'] }),
  },
  outputs: {
    margin: quantityOutput(temperatureDifference, {
      symbol: '\\Delta T',
      label: 'Temperature above what is needed',
      description: 'Negative when it is too cold.',
      digits: 3,
      units: ['K'],
    }),
    byHeat: choiceOutput({ label: 'By this heat', options: heats }),
    byWater: choiceOutput({ label: 'By warm water of 50 °C to 70 °C', options: waters }),
    kinds: tableOutput({
      label: 'Kinds of deposit',
      columns: {
        kind: choiceOutput({ label: 'Kind', options: names }),
        losesFrom: quantityOutput(temperature, { symbol: 'T_0', label: 'Loses weight from', digits: 3, units: ['degC'] }),
        goneAbove: quantityOutput(temperature, { symbol: 'T_e', label: 'Gone above', digits: 3, units: ['degC'] }),
        warmWater: choiceOutput({ label: 'Warm water', options: waters }),
      },
    }),
    verdict: choiceOutput({
      label: 'Verdict',
      options: { clears: 'this should clear it', partly: 'this clears part of it', 'does-not-clear': 'this does not clear it' },
    }),
  },
  constants: {},
  steps: [
    { gives: 'losesFrom', text: 'First published loss of weight of this kind.', source: 'depositFormation2014' },
    { gives: 'goneAbove', text: 'Temperature above which published samples were gone.', source: 'depositFormation2014' },
    { gives: 'margin', tex: '[[margin]] = [[depositTemperature]]-[[goneAbove]]' },
    { gives: 'byHeat', text: 'Temperature of the deposit against these two.', source: 'depositFormation2014' },
    { gives: 'byWater', text: 'Urea and biuret dissolve in warm water, cyanuric acid and fused rings do not.', source: 'depositPractice' },
    { gives: 'verdict', text: 'Means: [[method]].' },
  ],
  assumptions: [
    {
      code: 'time_not_published',
      text: 'The papers heat small samples. How long a thick crust takes is not published; a quarter of an hour to half an hour at temperature is common practice.',
    },
  ],
  limits: [{ code: 'slow_heat_hardens', text: 'Heat that is too low for long turns soft deposits into hard ones that need 430 °C.' }],
  cautions: [cautions.hotExhaust, cautions.fumes, cautions.neverUnattended, cautions.makerFirst],
  sources: { tischer2019, depositAnalysis2015, depositFormation2014, depositAgeing2020, depositPractice },
  dimensional: 'temperatures of the papers held as data',
  compute(input, { warn }) {
    const kind = depositKinds[input.deposit];
    const byHeat = input.depositTemperature >= kind.goneAbove ? 'gone' : input.depositTemperature >= kind.losesFrom ? 'partly' : 'stays';
    const short = input.holdTime < 15 * 60;
    if (input.method === 'heat' && byHeat !== 'stays' && short)
      warn('short', 'Less than a quarter of an hour at temperature; a crust needs longer (common practice).', ['holdTime']);
    if (input.deposit === 'unknown') warn('kind_unknown', 'The kind is not known; the most stubborn was taken.', ['deposit']);
    const heated = byHeat === 'gone' && !short ? 'clears' : byHeat === 'stays' ? 'does-not-clear' : 'partly';
    return {
      losesFrom: kind.losesFrom,
      goneAbove: kind.goneAbove,
      margin: input.depositTemperature - kind.goneAbove,
      byHeat,
      byWater: kind.warmWater,
      kinds: (Object.keys(depositKinds) as DepositKindId[])
        .filter((id) => id !== 'unknown')
        .map((id) => ({
          kind: id,
          losesFrom: depositKinds[id].losesFrom,
          goneAbove: depositKinds[id].goneAbove,
          warmWater: depositKinds[id].warmWater,
        })),
      verdict: input.method === 'heat' ? heated : kind.warmWater === 'dissolves' ? 'clears' : 'does-not-clear',
    };
  },
  advise: () => [
    { tone: 'do', text: 'Let the fumes of a burn-off out of doors: they hold ammonia and isocyanic acid.' },
    { tone: 'do-not', text: 'Do not chip at the injector tip or the mixer, and do not pour water into a hot exhaust.' },
  ],
});
