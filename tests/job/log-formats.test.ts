import { type Mapping, makeMapping } from '@wallflow/logs';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { describe, expect, it } from 'vitest';
import { main } from '../../packages/wallflow/src/main.js';
import { log, rows, usualTitles } from '../unit/logs/drive.js';
import { writeMdf4 } from '../unit/logs/mdf4-writer.js';
import { demoFile, demoJob } from './demo-job.js';

async function command(line: readonly string[], files: Readonly<Record<string, string | Uint8Array>>) {
  let out = '';
  let error = '';
  const bytes = (path: string) => {
    const found = files[path.replace(`${process.cwd()}/`, '').replace('./', '')];
    return typeof found === 'string' ? new TextEncoder().encode(found) : found;
  };
  const text = (path: string) => {
    const found = bytes(path);
    return found === undefined ? undefined : new TextDecoder().decode(found);
  };
  const code = await main(line, {
    out: (part) => {
      out += part;
    },
    error: (part) => {
      error += part;
    },
    readInput: async () => undefined,
    readFile: text,
    readFileWithin: (_, name) => text(name),
    readBytesWithin: (_, name) => bytes(name),
    readParts: async function* (path) {
      yield bytes(path) ?? new Uint8Array(0);
    },
    writeFile: () => {},
    filesIn: (path) => (path === '.' || path === process.cwd() ? Object.keys(files) : undefined),
  });
  return { code, out, error };
}

type Window = { from: number; to: number; values: Record<string, { mean: number }> };
const drops = (out: string) =>
  (JSON.parse(out).windows as Window[]).map(({ from, to, values }) => [from, to, Number(values.pressureDrop?.mean.toFixed(6))]);

const columns = rows.map((row) => [row.time, row.speed, row.air, row.temperature, row.drop]);
const parquet = () =>
  new Uint8Array(
    parquetWriteBuffer({
      columnData: usualTitles.map((name, index) => ({ name, data: columns.map((row) => row[index] ?? 0), type: 'DOUBLE' as const })),
    }),
  );

describe('a log that is no text', () => {
  it('gives the same stretches from a Parquet file as from text, by how it begins and not by its name', async () => {
    const fromText = await command(['log', 'a.csv', '--json'], { 'a.csv': log() });
    const fromParquet = await command(['log', 'b.csv', '--json'], { 'b.csv': parquet() });
    expect(fromParquet.code).toBe(0);
    expect(drops(fromParquet.out)).toEqual(drops(fromText.out));
  });

  it('says why where a measurement file is none that can be read', async () => {
    const old = writeMdf4([], '3.30    ');
    const { code, error } = await command(['log', 'old.mf4'], { 'old.mf4': old });
    expect(code).toBe(2);
    expect(error).toContain('its version is 3.30, not 4');
  });

  it('serves a job as text does, in any encoding', async () => {
    const job = { ...demoJob(), logs: { before: 'before.csv', after: 'after.csv' } };
    const texts = { 'before.csv': demoFile('before.csv') ?? '', 'after.csv': demoFile('after.csv') ?? '' };
    const asText = await command(['job', 'job.json', '--json'], { 'job.json': JSON.stringify(job), ...texts });
    const wide = Uint8Array.from([
      0xff,
      0xfe,
      ...[...texts['before.csv']].flatMap((sign) => [sign.charCodeAt(0) & 255, sign.charCodeAt(0) >> 8]),
    ]);
    const asWide = await command(['job', 'job.json', '--json'], { 'job.json': JSON.stringify(job), ...texts, 'before.csv': wide });
    expect(asText.code).toBe(0);
    expect(asWide.out).toBe(asText.out);
  });
});

describe('a log of frames with a CAN database', () => {
  // Bytes 4 and 5 of the engine controller's first message, 0.125 rpm a bit, little-endian (as published signal lists of open projects give it).
  const database = [
    'VERSION ""',
    'BO_ 2364540158 EEC1: 8 Vector__XXX',
    ' SG_ EngSpeed : 24|16@1+ (0.125,0) [0|8031.875] "rpm" Vector__XXX',
    'BA_ "SPN" SG_ 2364540158 EngSpeed 190;',
  ].join('\n');
  const frames = Array.from({ length: 60 }, (_, second) => `(${1_000_000 + second}.500000) can0 0CF00400#FFFFFF8016FFFFFF`).join('\n');

  it('is read by the numbers of its signals', async () => {
    const { code, out } = await command(['log', 'frames.log', '--can', 'bus.dbc', '--json'], { 'frames.log': frames, 'bus.dbc': database });
    expect(code).toBe(0);
    const data = JSON.parse(out);
    expect(data.channels).toMatchObject([{ column: 'EngSpeed', channel: 'engineSpeed', unit: 'rpm' }]);
    // 0x1680 = 5760; 5760 · 0.125 = 720 rpm.
    expect(data.windows[0].values.engineSpeed.mean).toBeCloseTo(720, 9);
    expect(data.windows[0]).toMatchObject({ from: 10, to: 59 });
  });

  it('needs a database that has messages', async () => {
    const { code, error } = await command(['log', 'frames.log', '--can', 'bus.dbc'], { 'frames.log': frames, 'bus.dbc': 'VERSION ""' });
    expect(code).toBe(2);
    expect(error).toContain('bus.dbc has no messages of a CAN database');
  });
});

describe('the answers on the logs of a job', () => {
  const unclear = (demoFile('before.csv') ?? '').replace('gasTemperature [°C]', 'EGT [°C]');
  const titles = (unclear.split('\n')[0] ?? '').trim().split(',');
  const mapping: Mapping = makeMapping(titles, { 'EGT [°C]': { channel: 'gasTemperature', unit: 'degC' } });
  const files = (job: object) => ({ 'job.json': JSON.stringify(job), 'before.csv': unclear, 'after.csv': demoFile('after.csv') ?? '' });
  const logs = { before: 'before.csv', after: 'after.csv' };

  it('are asked for, kept in the job file, or found beside it', async () => {
    const asked = await command(['job', 'job.json'], files({ ...demoJob(), logs }));
    expect(asked.code).toBe(1);
    expect(asked.error).toContain('What is “EGT [°C]”?');
    const kept = await command(['job', 'job.json', '--json'], files({ ...demoJob(), logs: { ...logs, mappings: [mapping] } }));
    expect(kept.code).toBe(0);
    const beside = await command(['job', 'job.json', '--json'], {
      ...files({ ...demoJob(), logs }),
      'tool.log-map.json': JSON.stringify(mapping),
    });
    expect(beside.code).toBe(0);
  });

  it('are refused where they are none', async () => {
    const { code, error } = await command(['job', 'job.json'], files({ ...demoJob(), logs: { ...logs, mappings: [{ format: 'other' }] } }));
    expect(code).toBe(1);
    expect(error).toContain('the answers kept for its columns cannot be used');
  });
});
