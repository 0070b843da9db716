import { log, type Row, truth, usualCells, usualTitles } from '../drive.js';
import type { CorpusFile, Expectation } from './shape.js';

const titled = (index: number, title: string) => usualTitles.map((usual, place) => (place === index ? title : usual));
/** The truth without one channel: 1 is the air, 2 the temperature, 3 the drop. */
const without = (...channels: readonly number[]) =>
  truth.map((window) => window.map((value, place) => (channels.includes(place) ? undefined : value)));
const none: Expectation['windows'] = [];
const asks = (name: string, content: () => string, expect: Expectation): CorpusFile => ({ name, content, expect });
const speedAs = (write: (speed: number) => string) => (row: Row) => [row.time, write(row.speed), row.air, row.temperature, row.drop];
const thousands = (sign: string) => (speed: number) =>
  speed > 999 ? `${String(speed)[0]}${sign}${String(speed).slice(1)}` : String(speed);

/** Logs that can be read in more than one way. The column in question is not used until somebody answers. */
export const asked: readonly CorpusFile[] = [
  asks('a temperature without a unit', () => log({ titles: titled(3, 'EGT before DPF') }), {
    asks: [['unit', 'EGT before DPF']],
    windows: without(2),
  }),
  asks('a pressure drop without a unit', () => log({ titles: titled(4, 'DPF pressure drop') }), {
    asks: [['unit', 'DPF pressure drop']],
    windows: without(3),
  }),
  asks('an air mass without a unit', () => log({ titles: titled(2, 'MAF') }), { asks: [['channel', 'MAF']], windows: without(1) }),
  asks('a unit that does not exist', () => log({ titles: titled(4, 'DPF pressure drop [mbr]') }), {
    asks: [['unit', 'DPF pressure drop [mbr]']],
    windows: without(3),
  }),
  asks('a unit of another kind', () => log({ titles: titled(4, 'DPF pressure drop [kg]') }), {
    asks: [['unit', 'DPF pressure drop [kg]']],
    windows: without(3),
  }),
  asks('a time without a unit', () => log({ titles: titled(0, 'Time') }), {
    asks: [['unit', 'Time']],
    windows: none,
    leftOut: [['no-time', 135, 2]],
  }),
  asks(
    'a time of two parts',
    () => log({ titles: titled(0, 'Clock'), cells: (row) => [`14:0${Math.floor(row.time / 60)}`, ...usualCells(row).slice(1)] }),
    {
      asks: [['clock', 'Clock']],
      windows: none,
      leftOut: [['no-time', 135, 2]],
    },
  ),
  asks('no time at all', () => log({ titles: usualTitles.slice(1), cells: (row) => usualCells(row).slice(1) }), {
    asks: [['time']],
    windows: none,
    leftOut: [['no-time', 135, 2]],
  }),
  asks('no titles at all', () => log({ titles: [] }), { asks: [['time']], windows: none, leftOut: [['no-time', 135, 1]] }),
  asks('titles of another trade', () => log({ titles: ['alpha', 'beta', 'gamma', 'zeta', 'epsilon'] }), {
    asks: [['time']],
    windows: none,
    leftOut: [['no-time', 135, 2]],
  }),
  asks('a temperature that does not say where', () => log({ titles: titled(3, 'EGT [°C]') }), {
    asks: [['channel', 'EGT [°C]']],
    windows: without(2),
  }),
  asks('a temperature that says a number only', () => log({ titles: titled(3, 'Exhaust gas temperature 1 [°C]') }), {
    asks: [['channel', 'Exhaust gas temperature 1 [°C]']],
    windows: without(2),
  }),
  asks('a temperature of nothing', () => log({ titles: titled(3, 'Temperature [°C]') }), {
    asks: [['channel', 'Temperature [°C]']],
    windows: without(2),
  }),
  asks(
    'a pressure before the filter, absolute or above ambient',
    () => log({ titles: [...usualTitles, 'Pressure before DPF [kPa]'], cells: (row) => [...usualCells(row), 104 + (row.time % 3)] }),
    {
      asks: [['channel', 'Pressure before DPF [kPa]']],
    },
  ),
  asks(
    'boost, absolute or above ambient',
    () => log({ titles: [...usualTitles, 'Boost pressure [mbar]'], cells: (row) => [...usualCells(row), 1000 + (row.time % 3)] }),
    {
      asks: [['channel', 'Boost pressure [mbar]']],
    },
  ),
  asks(
    'NOx that does not say where',
    () => log({ titles: [...usualTitles, 'NOx [ppm]'], cells: (row) => [...usualCells(row), 500 + (row.time % 7)] }),
    {
      asks: [['channel', 'NOx [ppm]']],
    },
  ),
  asks(
    'the same channel twice',
    () => log({ titles: [...usualTitles, 'DPF pressure drop bank 2 [mbar]'], cells: (row) => [...usualCells(row), row.drop + 1] }),
    {
      asks: [['which column']],
      windows: without(3),
    },
  ),
  asks(
    'the same title twice',
    () => log({ titles: [...usualTitles, usualTitles[3] ?? ''], cells: (row) => [...usualCells(row), row.temperature + 1] }),
    {
      asks: [['which column']],
      windows: without(2),
    },
  ),
  asks(
    'the columns of speed and temperature under each other’s title',
    () => log({ cells: ({ time, speed, air, temperature, drop }) => [time, speed, air, drop * 300, temperature] }),
    {
      asks: [['wrong values', usualTitles[3]!]],
      windows: [
        [0, 0, undefined, 90],
        [700, 80, undefined, 118],
        [2200, 300, undefined, 206],
      ],
    },
  ),
  asks(
    'Pascal under the title of millibar',
    () => log({ cells: (row) => [row.time, row.speed, row.air, row.temperature, row.drop * 100] }),
    {
      asks: [['wrong values', usualTitles[4]!]],
      windows: without(3),
    },
  ),
  asks(
    'kelvin under the title of °C, from a hot filter',
    () => log({ cells: (row) => [row.time, row.speed, row.air, row.temperature + 973, row.drop] }),
    {
      asks: [['wrong values', usualTitles[3]!]],
      windows: without(2),
    },
  ),
  asks('thousand points beside decimal commas', () => log({ separator: ';', decimal: ',', cells: speedAs(thousands('.')) }), {
    asks: [['decimal sign', usualTitles[1]!]],
    windows: none,
    leftOut: [['thousand-or-decimal', 135, 2, 'engineSpeed']],
  }),
  asks(
    'an air mass of 1.206 beside decimal commas',
    () => log({ separator: ';', decimal: ',', cells: (row) => [row.time, row.speed, `1.20${row.time % 7}`, row.temperature, row.drop] }),
    {
      asks: [['decimal sign', usualTitles[2]!]],
      windows: without(1),
      leftOut: [['thousand-or-decimal', 135, 2, 'airMassFlow']],
    },
  ),
  asks(
    'thousand commas in quotation marks',
    () => log({ cells: speedAs((speed) => (speed > 999 ? `"${thousands(',')(speed)}"` : String(speed))) }),
    {
      asks: [['decimal sign', usualTitles[1]!]],
      windows: none,
      leftOut: [['thousand-or-decimal', 135, 2, 'engineSpeed']],
    },
  ),
  asks('thousand commas beside decimal points, between semicolons', () => log({ separator: ';', cells: speedAs(thousands(',')) }), {
    asks: [['decimal sign', usualTitles[1]!]],
    windows: none,
    leftOut: [['thousand-or-decimal', 135, 2, 'engineSpeed']],
  }),
  asks(
    'a column with both decimal signs',
    () =>
      log({
        separator: ';',
        cells: (row, index) => [
          row.time,
          row.speed,
          row.air,
          row.temperature,
          index % 2 === 0 ? `${row.drop.toFixed(1)}`.replace('.', ',') : row.drop.toFixed(1),
        ],
      }),
    {
      asks: [['decimal sign', usualTitles[4]!]],
      windows: without(3),
      leftOut: [['mixed-signs', 135, 2, 'pressureDrop']],
    },
  ),
  asks(
    'one value a line, two names for one channel',
    () =>
      log({
        titles: ['Time [s]', 'Name', 'Value', 'Unit'],
        line: ([time = '', speed, , , drop]) => [
          `${time},Engine speed,${speed},rpm`,
          `${time},DPF pressure drop,${drop},mbar`,
          `${time},Differential pressure,${drop},mbar`,
        ],
      }),
    {
      asks: [['which column']],
      windows: truth.map(([speed, , , drop]) => [speed, undefined, undefined, drop]),
    },
  ),
  asks(
    'one value a line, a name that says too little',
    () =>
      log({
        titles: ['Time [s]', 'Name', 'Value', 'Unit'],
        line: ([time = '', speed, , temperature]) => [`${time},Engine speed,${speed},rpm`, `${time},EGT,${temperature},°C`],
      }),
    {
      asks: [['channel', 'EGT']],
      windows: truth.map(([speed]) => [speed, undefined, undefined, undefined]),
    },
  ),
];
