import { log, type Row, truth, usualCells, usualTitles } from '../drive.js';
import type { CorpusFile, Expectation } from './shape.js';

const without = (...channels: readonly number[]) =>
  truth.map((window) => window.map((value, place) => (channels.includes(place) ? undefined : value)));
const left = (name: string, content: () => string | Uint8Array, expect: Expectation): CorpusFile => ({ name, content, expect });
/** One column's cells written otherwise; the first row is line 2. */
const cell = (column: number, write: (row: Row, index: number) => string | number | undefined) =>
  log({ cells: (row, index) => usualCells(row).map((usual, place) => (place === column ? (write(row, index) ?? usual) : usual)) });
/** In every fifth row, 27 of 135, from line 4 on. */
const fifth = (index: number) => index % 5 === 2;

/** Logs with lines or values that cannot be used. What is left is read as if they were not there, and they are counted. */
export const leftOut: readonly CorpusFile[] = [
  left('cells without a value', () => cell(4, (_, index) => (fifth(index) ? '' : undefined)), {}),
  left(
    'dashes and n/a for no value',
    () => cell(4, (_, index) => (fifth(index) ? ['-', '---', 'n/a', 'NaN', '#N/A', 'null', 'nicht verfügbar'][index % 7] : undefined)),
    {},
  ),
  left('a word in a cell', () => cell(4, (_, index) => (fifth(index) ? 'hot' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('a number with letters in it', () => cell(4, (_, index) => (fifth(index) ? '1x8' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('a number in another base', () => cell(4, (_, index) => (fifth(index) ? '0x12' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('a formula in a cell', () => cell(4, (_, index) => (fifth(index) ? '=A1+18' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('two numbers in a cell', () => cell(4, (_, index) => (fifth(index) ? '18 19' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('a date in a cell', () => cell(4, (_, index) => (fifth(index) ? '12.03.2026' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('infinity', () => cell(4, (_, index) => (fifth(index) ? 'Infinity' : undefined)), {
    leftOut: [['not-a-number', 27, 4, 'pressureDrop']],
  }),
  left('a number too large for a double', () => cell(4, (_, index) => (fifth(index) ? '1e999' : undefined)), {
    leftOut: [['too-large', 27, 4, 'pressureDrop']],
  }),
  left('a number too small for a double', () => cell(4, (_, index) => (fifth(index) ? '1e-400' : undefined)), {
    leftOut: [['too-small', 27, 4, 'pressureDrop']],
  }),
  left('another unit in some cells', () => cell(4, (_, index) => (fifth(index) ? '1.8 kPa' : undefined)), {
    leftOut: [['unit-in-cell', 27, 4, 'pressureDrop']],
  }),
  left('the own unit in some cells', () => cell(4, (row, index) => (fifth(index) ? `${row.drop} mbar` : undefined)), {}),
  left('a lost air-mass signal, all bits set, in tenths', () => cell(2, (_, index) => (fifth(index) ? 6553.5 : undefined)), {
    leftOut: [['signal-lost', 27, 4, 'airMassFlow']],
  }),
  left('a lost air-mass signal in one of two rows', () => cell(2, (_, index) => (index % 2 === 1 ? 6553.5 : undefined)), {
    leftOut: [['signal-lost', 67, 3, 'airMassFlow']],
  }),
  left('a lost air-mass signal, all bits set, in hundredths', () => cell(2, (_, index) => (fifth(index) ? 655.35 : undefined)), {
    leftOut: [['signal-lost', 27, 4, 'airMassFlow']],
  }),
  left('a lost pressure signal within the limits', () => cell(4, (_, index) => (fifth(index) ? 655.35 : undefined)), {
    leftOut: [['signal-lost', 27, 4, 'pressureDrop']],
  }),
  left('a lost pressure signal, the largest signed value', () => cell(4, (_, index) => (fifth(index) ? 327.67 : undefined)), {
    leftOut: [['signal-lost', 27, 4, 'pressureDrop']],
  }),
  left('a lost temperature signal with its offset', () => cell(3, (_, index) => (fifth(index) ? 6513.5 : undefined)), {
    leftOut: [['signal-lost', 27, 4, 'gasTemperature']],
  }),
  left('an open temperature sensor in all rows', () => cell(3, () => -40), {
    windows: without(2),
    leftOut: [['open-circuit', 135, 2, 'gasTemperature']],
  }),
  left('an open temperature sensor in some rows', () => cell(3, (_, index) => (fifth(index) ? -40 : undefined)), {
    leftOut: [['open-circuit', 27, 4, 'gasTemperature']],
  }),
  left(
    'a coolant of 215 °C',
    () =>
      log({ titles: [...usualTitles, 'Coolant temperature [°C]'], cells: (row, index) => [...usualCells(row), index === 50 ? 215 : 84] }),
    {
      leftOut: [['outside-limits', 1, 52, 'coolantTemperature']],
    },
  ),
  left('one row with a pressure of 30 bar', () => cell(4, (_, index) => (index === 60 ? 30_000 : undefined)), {
    leftOut: [['outside-limits', 1, 62, 'pressureDrop']],
  }),
  left('a pressure far off within the limits', () => cell(4, (_, index) => (index === 120 ? 1500 : undefined)), {
    leftOut: [['outlier', 1, 122, 'pressureDrop']],
  }),
  left('a speed beyond any engine', () => cell(1, (_, index) => (index === 70 ? 9000 : undefined)), {
    leftOut: [['outside-limits', 1, 72, 'engineSpeed']],
  }),
  left('a negative air mass', () => cell(2, (_, index) => (index === 70 ? -80 : undefined)), {
    leftOut: [['outside-limits', 1, 72, 'airMassFlow']],
  }),
  left('a pressure signal that stands still', () => cell(4, () => 42), {
    windows: without(3),
    leftOut: [['stuck', 135, 2, 'pressureDrop']],
  }),
  left('an air-mass signal at the end of its range', () => cell(2, (row) => (row.speed === 0 ? undefined : 250)), {
    windows: [
      [0, 0, 90, 1],
      [700, undefined, 118, 18],
      [2200, undefined, 206, 95],
    ],
    leftOut: [['saturated', 90, 47, 'airMassFlow']],
  }),
  left(
    'a pressure signal of nothing but noise',
    () => cell(4, (row, index) => (row.speed > 1000 && index % 9 < 4 ? row.drop * (2 + (index % 9)) : undefined)),
    {
      windows: [
        [0, 0, 90, 1],
        [700, 80, 118, 18],
        [2200, 300, 206, undefined],
      ],
      leftOut: [['scattered', 35, 102, 'pressureDrop']],
    },
  ),
  left('rows twice', () => log({ line: (cells, index) => (fifth(index) ? [cells.join(','), cells.join(',')] : cells.join(',')) }), {
    leftOut: [['same-line-again', 27, 5]],
  }),
  left('one row with an earlier time', () => cell(0, (row, index) => (index === 70 ? row.time - 30 : undefined)), {
    leftOut: [['time-back', 1, 72]],
  }),
  left('one row with a time far ahead', () => cell(0, (row, index) => (index === 134 ? 65_535 : row.time)), {}),
  left('a recording that was begun again twice', () => cell(0, (row) => row.time % 45), { leftOut: [['time-back', 2, 47]], rows: 133 }),
  left('rows without a time', () => cell(0, (row, index) => (fifth(index) ? '' : row.time)), { leftOut: [['no-time', 27, 4]] }),
  left(
    'titles again and again',
    () => log({ line: (cells, index) => (index % 50 === 49 ? [usualTitles.join(','), cells.join(',')] : cells.join(',')) }),
    { leftOut: [['header-again', 2, 51]] },
  ),
  left(
    'titles and units again',
    () =>
      log({
        titles: ['Time', 'Engine speed', 'Air mass flow', 'EGT before DPF', 'DPF dp'],
        units: ['s', 'rpm', 'kg/h', '°C', 'mbar'],
        line: (cells, index) =>
          index === 80 ? ['Time,Engine speed,Air mass flow,EGT before DPF,DPF dp', 's,rpm,kg/h,°C,mbar', cells.join(',')] : cells.join(','),
      }),
    { leftOut: [['header-again', 2, 83]] },
  ),
  left(
    'comments among the rows',
    () => log({ line: (cells, index) => (index === 50 ? ['# second try, more warm', cells.join(',')] : cells.join(',')) }),
    { leftOut: [['comment', 1, 52]] },
  ),
  left('lines at the foot', () => log({ below: ['', 'End of recording', 'Rows: 135'] }), { leftOut: [['no-row', 2, 138]] }),
  left('means at the foot', () => log({ below: ['Mean,966,126,138,38'] }), { leftOut: [['no-time', 1, 137]] }),
  left('a last line that is cut off', () => log().slice(0, -9), { leftOut: [['cut-off', 1, 136]] }),
  left('rows that are too long', () => log({ line: (cells, index) => (index === 50 ? `${cells.join(',')},7,8` : cells.join(',')) }), {
    leftOut: [['too-many-cells', 1, 52]],
  }),
  left(
    'rows that are too short',
    () => log({ line: (cells, index) => (fifth(index) ? cells.slice(0, 4).join(',') : cells.join(',')) }),
    {},
  ),
  left(
    'decimal commas where commas part the cells',
    () =>
      log({
        decimal: ',',
        cells: (row) =>
          [row.time, row.speed, row.air.toFixed(1), row.temperature.toFixed(1), row.drop.toFixed(1)].map((value) =>
            String(value).replace('.', ','),
          ),
      }),
    {
      windows: [],
      leftOut: [['too-many-cells', 135, 2]],
    },
  ),
  left('a quotation mark without a partner', () => cell(4, (row, index) => (index === 50 ? `"${row.drop}` : undefined)), {
    leftOut: [['not-a-number', 1, 52, 'pressureDrop']],
  }),
  left(
    'a quotation mark without a partner before quoted cells',
    () =>
      log({
        titles: [...usualTitles, 'Remark'],
        cells: (row, index) => [...usualCells(row).slice(0, 4), index === 50 ? `"${row.drop}` : row.drop, '"ok"'],
      }),
    {
      leftOut: [['not-a-number', 1, 52, 'pressureDrop']],
    },
  ),
  left(
    'a line of a megabyte',
    () => log({ line: (cells, index) => (index === 50 ? ['x'.repeat(1_000_000), cells.join(',')] : cells.join(',')) }),
    { leftOut: [['no-row', 1, 52]] },
  ),
  left(
    'a line of ten megabytes',
    () => log({ line: (cells, index) => (index === 50 ? ['x'.repeat(10_000_000), cells.join(',')] : cells.join(',')) }),
    { leftOut: [['too-long', 1, 52]] },
  ),
  left(
    'zero bytes in the rows',
    () =>
      log({
        line: (cells, index) => (index > 100 && index % 50 === 1 ? ['\u0000\u0000,\u0000', cells.join(',')] : cells.join(',')),
        above: ['x'.repeat(70_000)],
      }),
    {
      leftOut: [['no-row', 1, 104]],
    },
  ),
  left('two rows an hour apart', () => `${usualTitles.join(',')}\n0,3000,300,250,362\n3600,3000,300,250,362\n`, { windows: [], rows: 2 }),
  left(
    'two rows forty seconds apart with drops of 10 and 362 mbar',
    () => `${usualTitles.join(',')}\n0,3000,300,250,10\n40,3000,300,250,362\n`,
    { windows: [], rows: 2 },
  ),
  left('a gap of 300 s within a stretch', () => cell(0, (row) => (row.time >= 115 ? row.time + 300 : row.time)), {
    windows: truth.slice(0, 2),
  }),
];
