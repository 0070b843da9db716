import { jobIssueText, readJobLog } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';

const titles = [
  'time [s]',
  'engineSpeed [rpm]',
  'airMassFlow [kg/h]',
  'gasTemperature [°C]',
  'pressureDrop [mbar]',
  'coolantTemperature [°C]',
];

/** A minute of one state at a row a second, the cells as they are written; `change` puts other cells into a row. */
function log(
  change: (second: number) => Readonly<Record<number, string>> = () => ({}),
  sign = ',',
  header: readonly string[] = titles,
): string {
  const row = (second: number) => {
    const cells = [String(second), '3000', '206', String(250 + (second % 3)), String(362 + (second % 5)), '88'];
    for (const [index, cell] of Object.entries(change(second))) cells[Number(index)] = cell;
    return cells.join(sign);
  };
  return [header.join(sign), ...Array.from({ length: 61 }, (_, second) => row(second))].join('\n');
}

function readingOf(text: string) {
  const result = readJobLog(text, 'log.csv');
  if (!result.ok) throw new Error(result.issues.map(jobIssueText).join(' '));
  const [steady] = result.log.steady;
  if (steady === undefined) throw new Error('no steady stretch');
  return { ...result.log, mean: steady.mean, steady };
}

function issuesOf(content: unknown) {
  const result = readJobLog(content as string, 'log.csv');
  return result.ok ? [] : result.issues;
}

const textOf = (content: unknown) => issuesOf(content).map(jobIssueText).join('\n');

describe('a log of a job', () => {
  it('gives SI values whatever the separator, the decimal sign and the unit', () => {
    const plain = readingOf(log());
    const other = readingOf(
      `\ufeff${log((second) => ({ 0: `${second},0`, 3: `${482 + 1.8 * (second % 3)}`.replace('.', ','), 4: `${(362 + (second % 5)) / 10}`.replace('.', ',') }), ';', ['time [s]', 'engineSpeed [r/min]', 'airMassFlow [kg/h]', 'gasTemperature [°F]', 'pressureDrop [kPa]', 'coolantTemperature [°C]']).replaceAll('\n', '\r\n')}`,
    );
    for (const { mean } of [plain, other]) {
      expect(mean.engineSpeed).toBeCloseTo(50, 12);
      // Of the 51 s that are kept, 0, 1 and 2 come 17 times each, and 0 to 4 ten times each but for one 0 more.
      expect(mean.gasTemperature).toBeCloseTo(273.15 + 251, 6);
      expect(mean.pressureDrop).toBeCloseTo(36_200 + (100 * 100) / 51, 6);
      expect(mean.airMassFlow).toBeCloseTo(206 / 3600, 12);
    }
  });

  it('keeps a cell without a value unknown, never zero', () => {
    for (const cell of ['', '-', '--', '---', '–', 'n/a', 'N/A', '#N/A', 'NaN', 'null']) {
      const { mean, notes } = readingOf(log((second) => (second % 2 === 0 ? { 4: cell } : {})));
      expect(mean.pressureDrop).toBeGreaterThan(36_200);
      expect(notes).toEqual([]);
      const empty = log(() => ({ 4: cell }));
      if (cell === '') expect(readingOf(empty).steady.lost).toEqual(['pressureDrop']);
      else expect(textOf(empty)).toMatch(/Found: .*pressureDrop \[mbar\] \(without numbers\)/);
      expect(readingOf(log(() => ({ 5: cell }))).mean).not.toHaveProperty('coolantTemperature');
    }
  });

  it.each([
    [
      'a missing column',
      log(undefined, ',', titles.with(3, 'note')),
      /no column that is understood as the gas temperature before the filter/,
    ],
    ['a column without unit', log(undefined, ',', titles.with(3, 'gasTemperature')), /Which unit has “gasTemperature”/],
    ['an unknown unit', log(undefined, ',', titles.with(4, 'pressureDrop [mbr]')), /“mbr” is not a unit of it/],
    ['a unit of something else', log(undefined, ',', titles.with(4, 'pressureDrop [psig]')), /Which unit has “pressureDrop \[psig\]”/],
    ['two columns of one channel', log(undefined, ',', titles.with(5, 'pressureDrop [kPa]')), /Several columns give the pressure drop/],
    ['nothing', '', /cannot be read as a log: The file is empty\./],
    ['a spreadsheet file', 'PK\u0003\u0004xx', /spreadsheet program and save the sheet as CSV/],
  ])('is refused with what to do: %s', (_, text, expected) => {
    expect(textOf(text)).toMatch(expected);
  });

  it('is asked about, not read without its air mass, where a title leaves the unit of that open', () => {
    expect(textOf(log(undefined, ',', titles.with(2, 'airMassFlow')))).toMatch(/Which unit has “airMassFlow”/);
  });

  it('reads with the answers that were given for its titles', () => {
    const header = titles.with(3, 'EGT [°C]');
    const mapping = {
      format: 'wallflow-log-mapping',
      version: 1,
      titles: header,
      columns: { 'EGT [°C]': { channel: 'gasTemperature', unit: 'degC' } },
    } as const;
    const text = log(undefined, ',', header);
    expect(issuesOf(text)).not.toEqual([]);
    const answered = readJobLog(text, 'log.csv', [mapping]);
    expect(answered.ok && answered.log.steady[0]?.mean.gasTemperature).toBeCloseTo(273.15 + 251, 6);
    expect(readJobLog(text, 'log.csv', [{ ...mapping, titles: ['others'] }]).ok).toBe(false);
  });

  it('reads bytes in another encoding, and signals of a measurement file', () => {
    const latin = Uint8Array.from(log(), (sign) => sign.charCodeAt(0));
    expect(readingOf(latin as never).mean).toEqual(readingOf(log()).mean);
    const time = Array.from({ length: 61 }, (_, second) => second);
    const signals = [
      { name: 'engineSpeed', unit: 'rpm', values: time.map(() => 3000) },
      { name: 'gasTemperature', unit: 'degC', values: time.map((second) => 250 + (second % 3)) },
      { name: 'pressureDrop', unit: 'mbar', values: time.map((second) => 362 + (second % 5)) },
    ];
    expect(readingOf([{ time, signals }] as never).mean.pressureDrop).toBeCloseTo(readingOf(log()).mean.pressureDrop ?? 0, 9);
  });

  it.each([undefined, null, 7, {}])('is an issue when it is no log at all: %s', (content) => {
    expect(issuesOf(content)).toMatchObject([{ code: 'log_unreadable' }]);
  });

  it('is not repeated at length, whatever it is', () => {
    expect(JSON.stringify(issuesOf(`${'x'.repeat(5000)},${'y,'.repeat(500)}\n1`)).length).toBeLessThan(3000);
  });
});

describe('what cannot be used of a log', () => {
  it.each([
    ['a cell that is no number', { 3: 'hot' }, 'gas temperature before the filter, line 32: not a number'],
    [
      'a cell with another unit',
      { 3: '250 K' },
      'gas temperature before the filter, line 32: another unit in the cell than the column has',
    ],
    ['a number that is too large', { 3: '1e999' }, 'gas temperature before the filter, line 32: number too large'],
    ['less than absolute zero', { 3: '-400' }, 'gas temperature before the filter, line 32: outside what a working sensor shows'],
    ['time that runs backwards', { 0: '4' }, 'line 32: time ran back'],
    ['the all-ones of a lost air mass', { 2: '6553.5' }, 'air mass flow, line 32: the value that stands for a lost signal'],
    ['the all-ones of a lost drop', { 4: '655.35' }, 'pressure drop across the filter, line 32: the value that stands for a lost signal'],
    ['all ones as a temperature', { 3: '6513.5' }, 'gas temperature before the filter, line 32: the value that stands for a lost signal'],
    ['a sensor without signal', { 3: '-40' }, 'gas temperature before the filter, line 32: the value that an open sensor circuit gives'],
    ['all ones of the coolant', { 5: '215' }, 'coolant temperature, line 32: outside what a working sensor shows'],
    [
      'a drop beyond the limit of a typed one',
      { 4: '30000' },
      'pressure drop across the filter, line 32: outside what a working sensor shows',
    ],
    ['more air than a typed reading may have', { 2: '5001' }, 'air mass flow, line 32: outside what a working sensor shows'],
    [
      'one value far from the others',
      { 4: '720' },
      'pressure drop across the filter, line 32: far from the other values of a steady stretch',
    ],
  ])('is left out with its line: %s', (_, cells, note) => {
    const { mean, notes } = readingOf(log((second) => (second === 30 ? cells : {})));
    expect(notes).toEqual([note]);
    const sound = readingOf(log((second) => (second === 30 ? { 0: '' } : {})));
    expect(Math.abs((mean.pressureDrop ?? 0) - (sound.mean.pressureDrop ?? 0))).toBeLessThan(5);
    expect(mean.gasTemperature).toBeCloseTo(sound.mean.gasTemperature ?? 0, 1);
    expect(mean.airMassFlow).toBeCloseTo(sound.mean.airMassFlow ?? 0, 12);
  });

  it('does not take an ordinary reading with it', () => {
    const { mean, notes } = readingOf(log(() => ({ 3: '215' })));
    expect(notes).toEqual([]);
    expect(mean.gasTemperature).toBeCloseTo(488.15, 9);
  });

  // Parted at every comma, 36,5 mbar would be 36 mbar and the coolant 5 °C.
  it.each([
    ['in a row with all its cells', { 4: '36,5' }],
    ['in a row that ends without a value', { 4: '36,5', 5: '' }],
  ])('is a decimal comma where commas part the cells, %s', (_, cells) => {
    const { steady, mean, notes } = readingOf(log((second) => (second % 10 === 5 ? cells : {})));
    expect(notes).toEqual(['6 times, first in line 7: more cells than columns']);
    expect(mean.pressureDrop).toBeGreaterThan(36_200);
    expect(mean.coolantTemperature).toBeCloseTo(361.15, 9);
    expect(steady.restless).toEqual([]);
  });

  it('is every row where all have decimal commas, and then nothing is read', () => {
    const result = readJobLog(
      log(() => ({ 4: '36,5' })),
      'log.csv',
    );
    expect(result.ok && result.log).toMatchObject({ steady: [], notes: ['61 times, first in line 2: more cells than columns'] });
  });

  it.each([
    ['in a log with decimal commas', { 1: '3.000' }, ';'],
    ['in its own column of decimal commas', { 4: '2.25' }, ';'],
    ['in quotes between commas', { 1: '"3,000"' }, ','],
  ])('is a point or comma before three digits that can be read in two ways %s', (_, cells, sign) => {
    const text = log((second) => ({ ...(sign === ';' ? { 4: '36,5' } : {}), ...(second % 4 === 0 ? cells : {}) }), sign);
    expect(textOf(text)).toMatch(/Is the comma or the point the decimal sign in/);
  });

  it('may be an empty cell beyond the titles where commas part none', () => {
    expect(readingOf(log((second) => (second % 2 === 0 ? { 6: '', 7: '' } : {}), ';')).notes).toEqual([]);
    expect(readingOf(log((second) => (second === 30 ? { 6: '', 7: '7' } : {}), ';')).notes).toEqual(['line 32: more cells than columns']);
  });

  it('is one line of two that say the same, and the mark that opens a cell and never closes', () => {
    expect(readingOf(log((second) => (second === 31 ? { 0: '30', 3: '250', 4: '362' } : {}))).notes).toEqual([
      'line 33: line repeats the one before it',
    ]);
    const { mean, notes } = readingOf(log((second) => (second === 30 ? { 1: '"3000' } : {})));
    expect(notes.join()).toMatch(/line 32/);
    expect(mean.engineSpeed).toBeCloseTo(50, 9);
  });
});

describe('steady stretches of a job', () => {
  const cut = (log: string) => {
    const result = readJobLog(log, 'log.csv');
    return result.ok ? result.log.steady : [];
  };
  const rows = (times: readonly number[], cells: (index: number) => string) =>
    [titles.join(','), ...times.map((time, index) => `${time},${cells(index)}`)].join('\n');
  const fast = (index: number) => `3000,206,250,${362 + (index % 2)},88`;
  const seconds = (from: number, count: number) => Array.from({ length: count }, (_, index) => from + index);

  it('are cut where the engine speed changes and leave the settling time out', () => {
    const found = cut(rows(seconds(0, 120), (index) => (index < 60 ? '800,60,120,18,88' : fast(index))));
    expect(found.map(({ from, to }) => [from, to])).toEqual([
      [10, 59],
      [70, 119],
    ]);
  });

  it('are none where the samples are few or far apart, or where a gap or a new start lies between them', () => {
    expect(cut(rows([0, 3600], fast))).toEqual([]);
    expect(cut(rows([0, 40], fast))).toEqual([]);
    expect(cut(rows([...seconds(0, 20), ...seconds(320, 20)], fast))).toEqual([]);
    expect(cut(rows([0, 9, 18, 27], fast))).toEqual([]);
    expect(cut(rows([...seconds(0, 25), ...seconds(5, 25)], fast))).toEqual([]);
    expect(cut(rows(seconds(0, 31), fast))).toHaveLength(1);
  });

  it('call a channel restless that does not stand still, and quote the scatter of one that does', () => {
    const [jumping] = cut(rows(seconds(0, 60), (index) => `3000,206,250,${index % 2 === 0 ? 10 : 362},88`));
    expect(jumping?.restless).toEqual(['pressureDrop']);
    const [sound] = cut(rows(seconds(0, 60), (index) => `3000,206,250,${index % 2 === 0 ? 360 : 364},88`));
    expect(sound?.restless).toEqual([]);
    // Deviation 2 mbar of 50 samples, in 49 s / 5 s that count; the step of 4 mbar is uniform and does not shrink.
    const deviation = 200 * Math.sqrt(50 / 49);
    expect(sound?.uncertainty.pressureDrop).toBeCloseTo(Math.hypot(deviation / Math.sqrt(49 / 5), 400 / Math.sqrt(12)), 6);
  });
});
