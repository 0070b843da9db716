import { choiceOutput, defineCalculation, list, optional, quantity, quantityOutput } from '@wallflow/calculation';
import { fraction, temperature, time } from '@wallflow/units';
import * as z from 'zod';
import { cautions } from '../../cautions.js';
import { iso22241Part3 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import { storageLifeAt, usedStorageLife } from './kernel.js';

export const reductantStorageLifeCalculation = defineCalculation({
  id: 'reductant-storage-life',
  version: '1.0.0',
  subject: 'reductant',
  title: 'Storage life of reductant',
  purpose: 'Is stored fluid still fit for use, and how long will it keep?',
  usedBy: ['technician'],
  keywords: ['storage', 'shelf life', 'temperature', 'age'],
  method: 'share of the storage life used in each period, added up',
  inputs: z.strictObject({
    periods: list(
      z.strictObject({
        temperature: quantity(temperature, {
          symbol: 'T_i',
          label: 'Highest usual temperature',
          min: '-40 °C',
          max: '70 °C',
          example: '22 °C',
          units: ['degC'],
        }),
        duration: quantity(time, {
          symbol: 't_i',
          label: 'How long',
          min: '0 d',
          max: '3650 d',
          example: '120 d',
          units: ['month', 'd', 'year'],
        }),
      }),
      {
        label: 'Where it has been',
        min: 1,
        max: 24,
        example: [
          { temperature: '15 °C', duration: '6 month' },
          { temperature: '28 °C', duration: '2 month' },
        ],
      },
    ),
    storedAt: quantity(temperature, {
      symbol: 'T',
      label: 'Temperature it will be kept at',
      min: '-40 °C',
      max: '70 °C',
      example: '20 °C',
      units: ['degC'],
    }),
  }),
  intermediates: {
    lifeAtStorage: optional(
      quantityOutput(time, { symbol: 'L', label: 'Life of fresh fluid at that temperature', digits: 3, units: ['month', 'd'] }),
    ),
  },
  outputs: {
    used: optional(quantityOutput(fraction, { symbol: 'u', label: 'Share of the life used', digits: 3, units: ['%'] })),
    remaining: optional(quantityOutput(time, { symbol: 't', label: 'Keeps for', digits: 3, units: ['month', 'd'] })),
    verdict: choiceOutput({
      label: 'Verdict',
      options: {
        fit: 'within its storage life',
        expired: 'past its storage life: test before use',
        test: 'was or will be above 35 °C: test before use',
      },
    }),
  },
  constants: {},
  steps: [
    {
      gives: 'lifeAtStorage',
      text: 'Row of the table for [[storedAt]]: 36 months up to 10 °C, 18 up to 25 °C, 12 up to 30 °C, 6 up to 35 °C.',
      source: 'iso22241Part3',
    },
    { gives: 'used', tex: '[[used]] = \\sum_i \\frac{t_i}{L(T_i)}', source: 'linear' },
    { gives: 'remaining', tex: '[[remaining]] = \\max(0,\\ 1-[[used]])\\,L([[storedAt]])' },
    { gives: 'verdict', text: 'Share used against the whole; above 35 °C the standard asks for a test.', source: 'iso22241Part3' },
  ],
  assumptions: [
    { code: 'closed', text: 'The container was closed, clean and of a suitable material.' },
    { code: 'adds_up', text: 'The shares of the periods add up. The standard speaks of constant temperature only.' },
  ],
  limits: [{ code: 'urea_only', text: 'Age shows as ammonia smell and lost urea. It says nothing about dirt.' }],
  cautions: [cautions.waste],
  sources: {
    iso22241Part3,
    iso22241Part1,
    linear: {
      type: 'derivation',
      title: 'Ageing adds up linearly over periods of different temperature',
      mark: 'common practice, no source',
    },
  },
  dimensional: 'looks up a table of temperatures and months',
  compute(input, { warn }) {
    warn('from_memory', 'The table of storage life is from memory of ISO 22241-3; the date on the container comes first.');
    const used = usedStorageLife(input.periods);
    const life = storageLifeAt(input.storedAt);
    const remaining = used === undefined || life === undefined ? undefined : Math.max(0, 1 - used) * life;
    const verdict = used === undefined || (life === undefined && used < 1) ? 'test' : used >= 1 ? 'expired' : 'fit';
    return { lifeAtStorage: life, used, remaining, verdict };
  },
  advise: ({ verdict }) =>
    verdict === 'fit'
      ? []
      : [
          {
            tone: 'do',
            text: 'Measure the urea content and look for a smell of ammonia before it goes into a tank; if in doubt, do not use it.',
          },
        ],
});
