import { beforeAll, describe, expect, it } from 'vitest';
import { main } from '../../packages/wallflow/src/main.js';
import { allCalculations } from '../support/calculations.js';
import { demoFile } from './demo-job.js';

interface Run {
  readonly code: number;
  readonly out: string;
  readonly error: string;
  readonly files: Readonly<Record<string, string>>;
}

async function command(line: readonly string[], input?: string): Promise<Run> {
  let out = '';
  let error = '';
  const files: Record<string, string> = {};
  const code = await main(line, {
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
    readInput: async () => input,
    readFile: (path) => demoFile(path.split('/').at(-1) ?? ''),
    readFileWithin: (_, name) => demoFile(name),
    writeFile: (path, text) => {
      files[path] = text;
    },
  });
  return { code, out, error, files };
}

const density = ['run', 'gas-density', 'gasPressure=101.325 kPa', 'gasTemperature=0 °C', 'molarMass=22.41396954 g/mol'];

describe('wallflow list', () => {
  it('gives every calculation as an array with id, title and subject', async () => {
    const { code, out } = await command(['list', '--json']);
    const entries = JSON.parse(out) as { id: string; title: string; subject: string }[];
    expect(code).toBe(0);
    expect(entries.map((entry) => entry.id)).toEqual(allCalculations.map((calculation) => calculation.id));
    const subjects = ['gas', 'flow', 'filter', 'soot', 'regeneration', 'reductant', 'smoke', 'cleaning', 'workshop'];
    for (const entry of entries) {
      expect(entry.title.length).toBeGreaterThan(3);
      expect(subjects).toContain(entry.subject);
    }
  });

  it('can be cut down to a subject, and refuses one that does not exist', async () => {
    expect((await command(['list', '--subject', 'workshop'])).out).toMatch(/filter-condition/);
    expect((await command(['list', '--subject', 'engines'])).code).toBe(2);
  });
});

describe('wallflow describe', () => {
  it('prints a command that works', async () => {
    for (const calculation of allCalculations) {
      const { code, out } = await command(['describe', calculation.id]);
      expect(code).toBe(0);
      expect(out).toContain(calculation.title);
    }
  });

  it('gives schema, outputs and cautions as JSON', async () => {
    const { out } = await command(['describe', 'regeneration-permission', '--json']);
    const data = JSON.parse(out);
    expect(data.inputs.type).toBe('object');
    expect(data.outputs.verdict.type).toBe('choice');
    expect(data.cautions.length).toBeGreaterThan(0);
  });

  it('suggests what was meant', async () => {
    const { code, error } = await command(['describe', 'gas-densty']);
    expect(code).toBe(2);
    expect(error).toContain('did you mean gas-density');
  });
});

describe('wallflow sweep', () => {
  const line = ['sweep', 'gas-density', 'gasPressure=101.325 ± 1.01325 kPa', 'molarMass=22.41396954 g/mol', '--over', 'gasTemperature'];
  const ends = ['--from', '273.15 K', '--to', '546.3 K', '--points', '3'];

  // Of an ideal gas at 0 °C and 101.325 kPa, 22.41396954 g/mol weigh 1 kg/m³; at twice the temperature half of it, and 1 % is 1 %.
  it('gives a table, CSV with a band, and JSON', async () => {
    const csv = (await command([...line, ...ends, '--show', 'density', '--csv'])).out.trim().split('\n');
    expect(csv[0]?.split(',').map((head) => head.replaceAll('"', ''))).toEqual(expect.arrayContaining(['Density [kg/m3]']));
    expect(csv).toHaveLength(4);
    const last = csv[3]?.split(',').map(Number) ?? [];
    expect(last[0]).toBe(546.3);
    [0.5, 0.495, 0.505].forEach((value, index) => {
      expect(last[index + 1]).toBeCloseTo(value, 7);
    });
    expect((await command([...line, ...ends])).out).toMatch(/546\.3 +0\.5 +0\.495 +0\.505/);
    const data = JSON.parse((await command([...line, ...ends, '--json'])).out);
    expect(data.input.values).toEqual([273.15, 409.725, 546.3]);
  });

  it('says what is missing or cannot be, and refuses what a run refuses', async () => {
    expect((await command([...line, '--from', '0 degC'])).code).toBe(2);
    expect((await command([...line.slice(0, -1), 'temperature', ...ends])).error).toContain('temperature is no input');
    expect((await command(['sweep', 'gas-density', '--over', 'gasTemperature', ...ends])).code).toBe(1);
    expect((await command([...line, '--from', '0 kg', '--to', '1 kg'])).error).toContain('no end of a series');
    expect((await command([...line, ...ends.slice(0, 4), '--points', 'many'])).code).toBe(2);
  });
});

describe('wallflow run', () => {
  // Molar volume of the ideal gas at 0 °C and 101.325 kPa, 22.41396954 L/mol (CODATA 2018), as a density of 1 kg/m³.
  it('gives the result in words and as JSON', async () => {
    expect((await command(density)).out).toContain('Density: 1.00 kg/m³');
    const { code, out } = await command([...density, '--json']);
    const data = JSON.parse(out);
    expect(code).toBe(0);
    expect(data.outputs.density.value).toBeCloseTo(1, 8);
    expect(data.outputs.density.unit).toBe('kg/m3');
  });

  it('shows results in another system and language', async () => {
    // A pound of 0.45359237 kg and a foot of 0.3048 m: 1 kg/m³ is 0.062428 lb/ft³.
    const { code, out } = await command([...density, '--system', 'us', '--locale', 'de']);
    expect(code).toBe(0);
    expect(out).toContain('Density: 0,0624 lb/ft³');
    expect((await command([...density, '--system', 'imperial'])).error).toContain('--system is metric or us');
    expect((await command([...density, '--locale', '_'])).code).toBe(2);
  });

  it('reads JSON from standard input', async () => {
    const input = JSON.stringify({
      gasPressure: { value: 101325, unit: 'Pa' },
      gasTemperature: '273.15 K',
      molarMass: '22.41396954 g/mol',
    });
    const { out } = await command(['run', 'gas-density', '--json'], input);
    expect(JSON.parse(out).outputs.density.value).toBeCloseTo(1, 8);
  });

  it('takes a list as JSON and shows its rows', async () => {
    const readings = JSON.stringify([{ state: 'idle', pressureDrop: '10 mbar', exhaustVolumeFlow: '56 m3/h', gasTemperature: '130 °C' }]);
    const line = [
      'run',
      'filter-condition',
      `readings=${readings}`,
      'cellDensity=200 cpsi',
      'wallThickness=14 mil',
      'filterDiameter=144 mm',
      'filterLength=152 mm',
    ];
    const { code, out } = await command(line);
    expect(code).toBe(0);
    expect(out).toMatch(/Engine state: idle/);
  });

  it('refuses bad input with the field, what was given and what would be right', async () => {
    const { code, error } = await command(['run', 'gas-density', 'gasPressure=1.2 kg', 'gasTemperature=20']);
    expect(code).toBe(1);
    expect(error).toContain('Absolute pressure of the gas: "kg" is not a unit of absolute pressure; use one of kPa');
    expect(error).toMatch(/Gas temperature: "20" has no unit.*\[gasTemperature\]/);
  });

  it('refuses as JSON with codes', async () => {
    const { code, out } = await command(['run', 'gas-density', 'gasPressure=101 kPa', 'gasTemperature=-300 °C', '--json']);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ ok: false, issues: [{ code: 'out_of_range', path: ['gasTemperature'], given: '-300 °C' }] });
  });

  it.each([
    ['no calculation', ['run']],
    ['no input', ['run', 'gas-density']],
    ['a word without =', ['run', 'gas-density', 'gasPressure']],
    ['a key twice', ['run', 'gas-density', 'gasPressure=1 bar', 'gasPressure=2 bar']],
    ['an option that does not exist', ['run', 'gas-density', '--fast']],
    ['no command', []],
    ['a command that does not exist', ['calculate']],
    ['too many words', ['list', 'all']],
  ])('%s is wrong usage', async (_, line) => {
    const { code, error } = await command(line);
    expect(code).toBe(2);
    expect(error).toMatch(/^wallflow: /);
  });

  it('input that is not JSON is wrong usage', async () => {
    expect((await command(['run', 'gas-density'], '{"gasPressure":')).code).toBe(2);
  });
});

describe('wallflow job', () => {
  let run: Run;
  beforeAll(async () => {
    run = await command(['job', 'examples/demo-job/job.json', '--out', 'sheets']);
  });

  it('prints the sheet, and writes it and its annex in three forms', () => {
    expect(run.code).toBe(0);
    expect(run.out).toContain('loaded');
    expect(Object.keys(run.files).sort()).toEqual(
      ['annex', 'sheet'].flatMap((part) => ['html', 'md', 'txt'].map((form) => `sheets/job-${part}.${form}`)),
    );
    expect(run.files['sheets/job-sheet.html']).toMatch(/^<!doctype html>/);
  });

  it('gives the whole job as JSON', async () => {
    const data = JSON.parse((await command(['job', 'job.json', '--json'])).out);
    expect(data.before.condition.outputs.verdict.value).toBe('loaded');
    expect(data.comparison.outputs.verdict.value).toBe('cleaned');
  });

  it('tells a missing file from a file that is not JSON', async () => {
    expect((await command(['job', 'nowhere.json'])).code).toBe(2);
    const { code, error } = await command(['job', 'before.csv']);
    expect(code).toBe(1);
    expect(error).toContain('before.csv is not JSON');
  });
});
