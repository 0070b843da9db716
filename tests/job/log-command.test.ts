import { parseMapping } from '@wallflow/logs';
import { describe, expect, it } from 'vitest';
import { main } from '../../packages/wallflow/src/main.js';
import { log, usualTitles } from '../unit/logs/drive.js';

async function command(line: readonly string[], files: Readonly<Record<string, string>>) {
  let out = '';
  let error = '';
  const code = await main(line, {
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
    readInput: async () => undefined,
    readFile: (path) => files[path.replace('./', '')],
    readFileWithin: () => undefined,
    writeFile: () => {},
    filesIn: (path) => (path === '.' ? Object.keys(files) : undefined),
  });
  return { code, out, error };
}

const unclear = log({ titles: usualTitles.map((title, index) => (index === 3 ? 'EGT [°C]' : title)) });

describe('wallflow log', () => {
  it('shows columns, what was left out, and the steady stretches', async () => {
    const { code, out } = await command(['log', 'a.csv'], { 'a.csv': log({ below: ['End of recording'] }) });
    expect(code).toBe(0);
    expect(out).toMatch(/DPF differential pressure \[mbar\] +pressure drop across the filter in mbar \(certain/);
    expect(out).toContain('line that is no row of values, once, in line 137');
    // 12 rows at 704, 12 at 700 and 11 at 696 rpm: their mean, and their deviation of 3.29 with a step of 4 over the root of 12.
    expect(out).toMatch(/55 to 89 s: engine speed 700\.1 ± 3\.5 rpm; .*pressure drop across the filter 17\.997 ± 0\.087 mbar/);
  });

  it('gives the same as data', async () => {
    const { out } = await command(['log', 'a.csv', '--json'], { 'a.csv': log({ below: ['End of recording'] }) });
    const data = JSON.parse(out);
    expect(data.channels[4]).toMatchObject({ column: usualTitles[4], channel: 'pressureDrop', unit: 'mbar', sure: 'certain' });
    expect(data.rows).toBe(135);
    expect(data.leftOut).toEqual([{ reason: 'no-row', count: 1, firstLine: 137 }]);
    expect(data.windows[1]).toMatchObject({ from: 55, to: 89, values: { engineSpeed: { unit: 'rpm' } } });
    expect(data.windows[1].values.pressureDrop.mean).toBeCloseTo(18, 2);
  });

  it('asks, prints answers to start from, and finds them beside the next log', async () => {
    const first = await command(['log', 'a.csv'], { 'a.csv': unclear });
    expect(first.out).toContain('What is “EGT [°C]”? It could be gas temperature before the filter in °C;');
    const start = first.out.slice(first.out.indexOf('{'), first.out.indexOf('\n}\n') + 3);
    expect(parseMapping(start)).toMatchObject({ ok: true });
    const second = await command(['log', 'b.csv'], { 'b.csv': unclear, 'a.csv.log-map.json': start });
    expect(second.out).toContain('gas temperature before the filter in °C (certain: as the mapping says)');
    expect(second.out).not.toContain('Open questions');
    const named = await command(['log', 'b.csv', '--map', 'mine.json'], {
      'b.csv': unclear,
      'mine.json': start.replace('"gasTemperature"', '"gasTemperatureAfterFilter"'),
    });
    expect(named.out).toContain('gas temperature after the filter in °C (certain: as the mapping says)');
  });

  it.each([
    ['no log is named', ['log'], {}, 2, /name a log/],
    ['there is no such file', ['log', 'none.csv'], {}, 2, /there is no file none\.csv/],
    ['the mapping is none', ['log', 'a.csv', '--map', 'm.json'], { 'a.csv': unclear, 'm.json': '[1]' }, 2, /not a mapping/],
    [
      'it is a spreadsheet',
      ['log', 'a.xlsx'],
      { 'a.xlsx': 'PK\u0003\u0004xx' },
      1,
      /spreadsheet file\. Open it in the spreadsheet program and save the sheet as CSV/,
    ],
  ] as const)('says so when %s', async (_, line, files, expected, message) => {
    const { code, error } = await command(line, files as Readonly<Record<string, string>>);
    expect(code).toBe(expected);
    expect(error).toMatch(message);
  });

  it('draws the log where it is asked to', async () => {
    const { out } = await command(['log', 'a.csv', '--plot'], { 'a.csv': log() });
    expect(out).toContain('engine speed, 0.0 to 2204.0 rpm, over 0 to 134 s');
  });
});
