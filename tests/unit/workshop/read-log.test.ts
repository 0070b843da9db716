import { readLog, steadyReadings, usualRule } from '@wallflow/workshop';
import { describe, expect, it } from 'vitest';

const header = 'time [s],engineSpeed [rpm],gasTemperature [°C],pressureDrop [mbar]';

function rowsOf(text: string) {
  const result = readLog(text, 'log.csv');
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.log;
}

function issuesOf(text: string) {
  const result = readLog(text, 'log.csv');
  return result.ok ? [] : result.issues;
}

describe('a log', () => {
  it('gives SI values whatever the separator and the decimal sign', () => {
    const comma = rowsOf(`${header}\n0,600,100,12.5\n1,600,100,12.5`);
    const semicolon = rowsOf(
      '\ufefftime [s];engineSpeed [r/min];gasTemperature [°F];pressureDrop [kPa]\r\n0;600;212;1,25\r\n1;600;212;1,25\r\n',
    );
    expect(comma.rows).toHaveLength(2);
    for (const log of [comma, semicolon]) {
      expect(log.rows[0]?.engineSpeed).toBeCloseTo(10, 12);
      expect(log.rows[0]?.gasTemperature).toBeCloseTo(373.15, 9);
      expect(log.rows[0]?.pressureDrop).toBeCloseTo(1250, 9);
    }
  });

  it('keeps a cell without a value unknown, never zero', () => {
    const { rows } = rowsOf(`${header}\n0,600,100,\n1,600,n/a,3`);
    expect(rows[0]).not.toHaveProperty('pressureDrop');
    expect(rows[1]).not.toHaveProperty('gasTemperature');
  });

  it('names columns that it does not use', () => {
    expect(rowsOf(`${header},note\n0,600,100,1,ok`).unused).toEqual(['note']);
  });

  it.each([
    ['a missing column', 'time [s],engineSpeed [rpm],pressureDrop [mbar]\n0,1,2', { code: 'log_column_missing', column: 'gasTemperature' }],
    ['a column without unit', 'time [s],engineSpeed [rpm],gasTemperature,pressureDrop [mbar]\n0,1,2,3', { code: 'log_column_missing' }],
    [
      'an unknown unit',
      `${header.replace('mbar', 'mbr')}\n0,1,2,3`,
      { code: 'log_unit', given: 'mbr', candidates: expect.arrayContaining(['mbar']) },
    ],
    ['an ambiguous unit', `${header.replace('mbar', 'inH2O')}\n0,1,2,3`, { code: 'log_unit', given: 'inH2O' }],
    ['a cell that is no number', `${header}\n0,600,hot,3`, { code: 'log_cell', line: 2, column: 'gasTemperature', given: 'hot' }],
    ['time that runs backwards', `${header}\n5,600,100,3\n4,600,100,3`, { code: 'log_time_order', line: 3 }],
    ['nothing', '', { code: 'log_unreadable' }],
  ])('%s is named with its place', (_, text, expected) => {
    expect(issuesOf(text)[0]).toMatchObject(expected);
  });
});

describe('steady stretches', () => {
  const row = (time: number, rpm: number, pressureDrop?: number) => ({
    time,
    engineSpeed: rpm / 60,
    ...(pressureDrop === undefined ? {} : { pressureDrop }),
  });
  const stretch = (from: number, seconds: number, rpm: number, drop?: number) =>
    Array.from({ length: seconds }, (_, index) => row(from + index, rpm, drop));

  it('are cut where the engine speed changes and leave the settling time out', () => {
    const readings = steadyReadings([...stretch(0, 60, 800, 5), ...stretch(60, 60, 3000, 50)]);
    expect(readings.map(({ from, to, mean }) => [from, to, mean.pressureDrop])).toEqual([
      [10, 59, 5],
      [70, 119, 50],
    ]);
  });

  it('are dropped when too short', () => {
    expect(steadyReadings(stretch(0, usualRule.settling + usualRule.shortest, 800, 5))).toEqual([]);
    expect(steadyReadings(stretch(0, usualRule.settling + usualRule.shortest + 1, 800, 5))).toHaveLength(1);
  });

  it('quote no mean of a channel that is mostly missing', () => {
    const rows = [...stretch(0, 40, 800), ...stretch(40, 10, 800, 5)];
    expect(steadyReadings(rows)[0]?.mean).not.toHaveProperty('pressureDrop');
  });

  it('give the mean and the scatter of what was logged', () => {
    const rows = stretch(0, 50, 800, 5).map((entry, index) => ({ ...entry, pressureDrop: index % 2 === 0 ? 4 : 6 }));
    const [reading] = steadyReadings(rows);
    expect(reading?.mean.pressureDrop).toBeCloseTo(5, 12);
    expect(reading?.deviation.pressureDrop).toBeCloseTo(Math.sqrt(40 / 39), 12);
  });
});
