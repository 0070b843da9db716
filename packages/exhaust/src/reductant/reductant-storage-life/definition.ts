import * as wf from '@wallflow/calculation';
import { fraction, temperature, time } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { iso22241Part3 } from '../solution/sources.js';
import { iso22241Part1 } from '../sources.js';
import { storageLife, storageLifeAt, usedStorageLife } from './kernel.js';

const lifeRows = 'Life by the table: 36 months up to 10 °C, 18 up to 25 °C, 12 up to 30 °C, 6 up to 35 °C.';
const linear: wf.Source = {
  type: 'derivation',
  title: 'Ageing adds up linearly over periods of different temperature',
  mark: 'common practice, no source',
};

const warmestRow = Math.max(...storageLife.map(({ upTo }) => upTo));
const place = { range: '-40 <= x <= 70 °C', units: ['degC'] } as const;
const life = { digits: 3, units: ['month', 'd'] } as const;

export const reductantStorageLifeCalculation = wf.defineCalculation({
  id: 'reductant-storage-life',
  subject: 'reductant',
  title: 'Storage life of reductant',
  purpose: 'Is stored fluid still fit for use, and how long will it keep?',
  keywords: 'storage, shelf life, temperature, age, DEF, AUS 32, SCR',
  method: 'share of the storage life used in each period, added up',
  inputs: {
    periods: wf.list(
      {
        storageTemperature: wf.quantity(temperature, { symbol: 'T_i', label: 'Highest usual temperature', ...place, example: '22 °C' }),
        duration: wf.quantity(time, {
          symbol: 't_i',
          label: 'How long',
          range: '0 <= x <= 3650 d',
          example: '120 d',
          units: ['month', 'd', 'year'],
        }),
      },
      {
        label: 'Where it has been',
        min: 1,
        max: 24,
        example: [
          { storageTemperature: '15 °C', duration: '6 month' },
          { storageTemperature: '28 °C', duration: '2 month' },
        ],
      },
    ),
    storedAt: wf.quantity(temperature, { symbol: 'T', label: 'Temperature it will be kept at', ...place, example: '20 °C' }),
  },
  intermediates: {
    periodsUsed: wf.tableOutput({
      label: 'Periods',
      columns: {
        life: wf.optional(wf.quantityOutput(time, { symbol: 'L_i', label: 'Life of fresh fluid there', ...life })),
        share: wf.optional(wf.quantityOutput(fraction, { symbol: 'u_i', label: 'Share of it used', digits: 3, units: ['%'] })),
      },
    }),
    lifeAtStorage: wf.optional(
      wf.quantityOutput(time, { symbol: 'L', label: 'Life of fresh fluid at the temperature it will be kept at', ...life }),
    ),
  },
  outputs: {
    used: wf.optional(wf.quantityOutput(fraction, { symbol: 'u', label: 'Share of the life used', digits: 3, units: ['%'] })),
    remaining: wf.optional(wf.quantityOutput(time, { symbol: 't', label: 'Keeps for', ...life })),
    verdict: wf.choiceOutput({
      label: 'Verdict',
      options: {
        fit: 'within its storage life',
        expired: 'past its storage life: test before use',
        test: 'was or will be above 35 °C: test before use',
      },
    }),
  },
  constants: {
    warmestStorage: wf.constant(temperature, warmestRow, { symbol: 'T_{35}', label: 'Warmest row of the table', source: iso22241Part3 }),
  },
  answer: 'verdict',
  steps: [
    wf.rows('periodsUsed', { share: 'periods.duration / life' }, iso22241Part3, undefined, lifeRows),
    wf.formula('used', 'sum(periodsUsed.share)', linear),
    wf.fromTable('lifeAtStorage', ['storedAt'], iso22241Part3, undefined, lifeRows),
    wf.formula('remaining', 'max(0, 1 - used) * lifeAtStorage'),
    wf.verdict(
      'verdict',
      {
        expired: 'known(used) and used >= 1',
        test: 'not known(used) or storedAt > warmestStorage',
        fit: 'otherwise',
      },
      iso22241Part3,
    ),
  ],
  assumptions: {
    closed: 'The container was closed, clean and of a suitable material.',
    adds_up: 'The shares of the periods add up. The standard speaks of constant temperature only.',
  },
  limits: { urea_only: 'Age shows as ammonia smell and lost urea. It says nothing about dirt.' },
  cautions: [cautions.waste],
  dimensional: 'looks up a table of temperatures and months',
  sources: [iso22241Part1],
  compute(input, { warn }) {
    warn('from_memory', 'The table of storage life is from memory of ISO 22241-3; the date on the container comes first.');
    const used = usedStorageLife(input.periods.map(({ storageTemperature, duration }) => ({ temperature: storageTemperature, duration })));
    const life = storageLifeAt(input.storedAt);
    const remaining = used === undefined || life === undefined ? undefined : Math.max(0, 1 - used) * life;
    const verdict = used === undefined || (life === undefined && used < 1) ? 'test' : used >= 1 ? 'expired' : 'fit';
    const periodsUsed = input.periods.map(({ storageTemperature, duration }) => {
      const life = storageLifeAt(storageTemperature);
      return { life, share: life === undefined ? undefined : duration / life };
    });
    return { periodsUsed, lifeAtStorage: life, used, remaining, verdict };
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
