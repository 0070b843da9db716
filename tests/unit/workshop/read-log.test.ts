import { jobIssueText, readLog, steadyReadings, usualRule } from '@wallflow/workshop';
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

describe('a log with decimal commas', () => {
  const semicolons = header.replaceAll(',', ';');

  it('is read where semicolons or tabs part the cells, three decimals included', () => {
    for (const sign of [';', '\t']) {
      const { rows } = rowsOf(`${header.replaceAll(',', sign)}\n${['0,5', '600', '100,125', '1,234'].join(sign)}`);
      expect(rows[0]?.pressureDrop).toBeCloseTo(123.4, 9);
      expect(rows[0]?.gasTemperature).toBeCloseTo(373.275, 9);
      expect(rows[0]?.time).toBeCloseTo(0.5, 12);
    }
    expect(rowsOf(`${semicolons}\n0;1.200,5;100;-1,5e1`).rows[0]?.pressureDrop).toBeCloseTo(-1500, 9);
  });

  // Parted at every comma, 12,5 mbar would be 12 mbar and the temperature 5 °C.
  it.each([
    ['one of them', '0,800,12,5,100'],
    ['all of them', '0,0,800,5,12,25,100,1'],
    ['one of them before an empty cell', '0,800,12,5,'],
  ])('is refused where commas part the cells: %s', (_, row) => {
    expect(issuesOf(`${header}\n0,800,100,12\n${row}`)).toMatchObject([{ code: 'log_row_too_long', line: 3, columns: 4, separator: ',' }]);
  });

  it('says what to do about it', () => {
    const [issue] = issuesOf(`${header}\n0,800,12,5,100`);
    expect(issue && jobIssueText(issue)).toMatch(/line 2: 5 cells under 4 columns\. .*decimal commas.*semicolons/);
  });

  it('may have empty cells beyond the header only where commas part none', () => {
    expect(rowsOf(`${semicolons}\n0;800;100;12;;`).rows).toHaveLength(1);
    expect(issuesOf(`${semicolons}\n0;800;100;12;;7`)).toMatchObject([{ code: 'log_row_too_long', cells: 6 }]);
  });

  it('is not guessed at where a quoted number can be read in two ways', () => {
    const [issue] = issuesOf(`${header}\n0,800,100,"1,234"`);
    expect(issue).toMatchObject({ code: 'log_cell', line: 2, column: 'pressureDrop', reason: 'ambiguous_separator' });
    expect(issue && jobIssueText(issue)).toMatch(/thousand or a decimal/);
  });
});

describe('a log that is not as it should be', () => {
  it('has each channel once', () => {
    expect(issuesOf(`${header},pressureDrop [kPa]\n0,800,100,12,9`)).toMatchObject([{ code: 'log_column_twice', column: 'pressureDrop' }]);
  });

  it('is told by the lines of the file, blank ones and broken cells included', () => {
    expect(issuesOf(`\n\n${header},note\n\n0,600,100,3,"two\nlines"\n\n1,600,hot,3`)).toMatchObject([{ code: 'log_cell', line: 8 }]);
    expect(issuesOf(`${header}\r\n\r\n0,600,hot,3\r\n`)).toMatchObject([{ code: 'log_cell', line: 3 }]);
  });

  it('says why a cell is refused', () => {
    const reasons = ['-400', '1e999', '12 K', 'hot'].map((cell) => issuesOf(`${header}\n0,600,${cell},3`)[0]);
    expect(reasons.map((issue) => issue?.code === 'log_cell' && issue.reason)).toEqual([
      'below_absolute_zero',
      'not_finite',
      'unknown_unit',
      'not_numeric',
    ]);
  });

  it('says why a unit is refused, and lists every meaning of an ambiguous one', () => {
    const unit = (name: string) => issuesOf(`${header.replace('mbar', name)}\n0,600,100,3`)[0];
    expect(unit('inH2O')).toMatchObject({
      reason: 'ambiguous_unit',
      candidates: ['inH2O_4C', 'inH2O_60F', 'inH2O_conventional'],
    });
    expect(unit('psig')).toMatchObject({ reason: 'wrong_kind' });
    expect(unit('')).toMatchObject({ reason: 'missing_unit' });
    const issue = unit('inH2O');
    expect(issue && jobIssueText(issue)).toMatch(/can mean more than one unit/);
  });

  it('may repeat a line or a time, but never goes back', () => {
    expect(rowsOf(`${header}\n0,600,100,3\n0,600,100,3\n1,600,100,3`).rows).toHaveLength(2);
    expect(rowsOf(`${header}\n0,600,100,3\n0,610,100,3\n1,600,100,3`).rows).toHaveLength(3);
    expect(issuesOf(`${header}\n1,600,100,3\n0,600,100,3`)).toMatchObject([{ code: 'log_time_order', line: 3 }]);
  });

  it.each(['', '-', '--', '---', '–', 'n/a', 'N/A', '#N/A', 'NaN', 'null'])('keeps a cell "%s" unknown', (cell) => {
    expect(rowsOf(`${header}\n0,600,100,${cell}`).rows[0]).not.toHaveProperty('pressureDrop');
  });

  it('is refused where a quotation mark has no partner, as the rest of the file would be one cell', () => {
    expect(issuesOf(`${header}\n0,600,100,3\n1,"600,100,3\n2,600,100,3`)).toMatchObject([
      { code: 'log_unreadable', detail: 'a quotation mark in line 3 has no partner' },
    ]);
  });

  it.each([undefined, null, 7, {}, new Uint8Array(3)])('is an issue when it is no text at all: %s', (content) => {
    expect(readLog(content as never, 'log.csv')).toMatchObject({ ok: false, issues: [{ code: 'log_unreadable' }] });
  });

  it('is not repeated at length, whatever it is', () => {
    const secret = 'x'.repeat(5000);
    const issues = issuesOf(`${secret},${'y,'.repeat(500)}\n1`);
    expect(JSON.stringify(issues).length).toBeLessThan(2000);
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

  it('give the middle of what was logged, with the uncertainty that its scatter leaves', () => {
    const rows = stretch(0, 50, 800, 500).map((entry, index) => ({ ...entry, pressureDrop: index % 2 === 0 ? 400 : 600 }));
    const [reading] = steadyReadings(rows);
    expect(reading?.mean.pressureDrop).toBeCloseTo(500, 12);
    // Median of absolute deviations 100, times 1.4826, over the root of 39 s / 5 s samples that count (Rousseeuw & Croux 1993 for the factor).
    expect(reading?.uncertainty.pressureDrop).toBeCloseTo(148.26 / Math.sqrt(39 / 5), 9);
  });

  it('take a single dropout for what it is, and name its line', () => {
    const rows = stretch(0, 50, 3000, 36_200).map((entry, index) => ({ ...entry, line: index + 2 }));
    rows[30] = { ...rows[30]!, pressureDrop: 65_535 };
    const [reading] = steadyReadings(rows);
    expect(reading?.mean.pressureDrop).toBe(36_200);
    expect(reading?.leftOut).toMatchObject([{ line: 32, column: 'pressureDrop', reason: 'outlier' }]);
  });

  it('are none where the samples are few or far apart, or where a gap lies between them', () => {
    expect(steadyReadings([row(0, 3000, 5), row(3600, 3000, 5)])).toEqual([]);
    expect(steadyReadings([row(0, 3000, 1000), row(40, 3000, 36_200)])).toEqual([]);
    const gap = [...stretch(0, 20, 3000, 5), ...stretch(320, 20, 3000, 5)];
    expect(steadyReadings(gap)).toEqual([]);
    const slow = Array.from({ length: 4 }, (_, index) => row(index * 9, 3000, 5));
    expect(steadyReadings(slow)).toEqual([]);
  });

  it('call a channel restless that does not stand still', () => {
    const rows = stretch(0, 60, 3000).map((entry, index) => ({ ...entry, pressureDrop: index % 2 === 0 ? 1000 : 36_200 }));
    expect(steadyReadings(rows)[0]?.restless).toEqual(['pressureDrop']);
  });
});

describe('a number that is no reading', () => {
  const air = 'time [s],engineSpeed [rpm],airMassFlow [kg/h],gasTemperature [°C],pressureDrop [mbar],coolantTemperature [°C]';

  it.each([
    ['the all-ones of a lost air mass', '0,3000,6553.5,250,362,88', 'airMassFlow', 'lost_signal'],
    ['the all-ones of a lost drop', '0,3000,206,250,655.35,88', 'pressureDrop', 'lost_signal'],
    ['all ones as a temperature', '0,3000,206,6513.5,362,88', 'gasTemperature', 'lost_signal'],
    ['a temperature sensor without signal', '0,3000,206,-40,362,88', 'gasTemperature', 'lost_signal'],
    ['the all-ones of a coolant temperature', '0,3000,206,250,362,215', 'coolantTemperature', 'lost_signal'],
    ['a drop beyond the limit of a typed one', '0,3000,206,250,30000,88', 'pressureDrop', 'beyond_limits'],
    ['more air than a typed reading may have', '0,3000,5001,250,362,88', 'airMassFlow', 'beyond_limits'],
  ])('is left out, with line and column: %s', (_, cells, column, reason) => {
    const { rows, leftOut } = rowsOf(`${air}\n${cells}`);
    expect(rows[0]).not.toHaveProperty(column);
    expect(leftOut).toMatchObject([{ line: 2, column, reason }]);
  });

  it('does not take an ordinary reading with it', () => {
    const { rows, leftOut } = rowsOf(`${air}\n0,3000,206,215,362,88`);
    expect(leftOut).toEqual([]);
    expect(rows[0]?.gasTemperature).toBeCloseTo(488.15, 9);
  });
});

describe('a point before three digits', () => {
  const semicolons = header.replaceAll(',', ';');

  it.each([
    ['in a log with decimal commas', '0;800;100;12,5\n1;3.000;100;12,5', 'engineSpeed', '3.000'],
    ['in its own column of decimal commas', '0;800;100;1,5\n1;800;100;2.25', 'pressureDrop', '2.25'],
  ])('is refused as ambiguous %s', (_, lines, column, given) => {
    expect(issuesOf(`${semicolons}\n${lines}`)).toMatchObject([
      { code: 'log_cell', line: 3, column, given, reason: 'ambiguous_separator' },
    ]);
  });

  it('is a decimal point where no comma is one', () => {
    expect(rowsOf(`${semicolons}\n0;800;100;1.206`).rows[0]?.pressureDrop).toBeCloseTo(120.6, 9);
  });
});
