import { type ChannelName, readLog } from '@wallflow/logs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** One moment, in tenths: what is written with one digit behind the point is the same number in every shape. */
interface Moment {
  readonly speed: number;
  readonly drop: number;
  readonly coolant: number;
}

interface Shape {
  readonly form: 'wide' | 'long' | 'in turn';
  readonly separator: ',' | ';' | '\t' | '|';
  readonly comma: boolean;
  readonly encoding: 'utf-8' | 'utf-8 with mark' | 'utf-16le' | 'utf-16be' | 'latin-1';
  readonly time: 's' | 'ms' | 'clock' | 'date and clock' | 'since 1970';
  readonly units: 'square' | 'round' | 'row' | 'after a comma';
  readonly lineEnd: '\n' | '\r\n';
}

const channels = [
  ['Engine speed', 'rpm', 'engineSpeed', 'speed'],
  ['DPF differential pressure', 'mbar', 'pressureDrop', 'drop'],
  ['Coolant temperature', '°C', 'coolantTemperature', 'coolant'],
] as const satisfies readonly (readonly [string, string, ChannelName, keyof Moment])[];

const tenths = (most: number) => fc.integer({ min: 1, max: 10 * most });
const moments = fc.array(fc.record({ speed: tenths(3000), drop: tenths(400), coolant: tenths(120) }), { minLength: 3, maxLength: 40 });
const shapes: fc.Arbitrary<Shape> = fc
  .record({
    form: fc.constantFrom<Shape['form'][]>('wide', 'long', 'in turn'),
    separator: fc.constantFrom<Shape['separator'][]>(',', ';', '\t', '|'),
    comma: fc.boolean(),
    encoding: fc.constantFrom<Shape['encoding'][]>('utf-8', 'utf-8 with mark', 'utf-16le', 'utf-16be', 'latin-1'),
    time: fc.constantFrom<Shape['time'][]>('s', 'ms', 'clock', 'date and clock', 'since 1970'),
    units: fc.constantFrom<Shape['units'][]>('square', 'round', 'row', 'after a comma'),
    lineEnd: fc.constantFrom<Shape['lineEnd'][]>('\n', '\r\n'),
  })
  // A comma cannot part cells and decimals, nor cells and a title from its unit; a log with one value a line names each unit.
  .filter(({ separator, comma, units }) => separator !== ',' || !(comma || units === 'after a comma'));

const two = (value: number) => String(value).padStart(2, '0');

function timeCell(form: Shape['time'], second: number): string {
  const clock = `14:${two(Math.floor(second / 60))}:${two(second % 60)}`;
  return {
    s: String(second),
    ms: String(1000 * second),
    clock,
    'date and clock': `2026-03-12 ${clock}`,
    'since 1970': String(1_773_324_000 + second),
  }[form];
}

const timeTitles = {
  s: ['Time', 's'],
  ms: ['Time', 'ms'],
  clock: ['Time', ''],
  'date and clock': ['Time', ''],
  'since 1970': ['Timestamp', 's'],
} as const;

function titled(name: string, unit: string, units: Shape['units']): string {
  if (unit === '' || units === 'row') return name;
  return { square: `${name} [${unit}]`, round: `${name} (${unit})`, 'after a comma': `${name}, ${unit}` }[units];
}

function written(rows: readonly Moment[], { form, separator, comma, time, units, lineEnd }: Shape): string {
  const number = (tenth: number) => (tenth / 10).toFixed(1).replace('.', comma ? ',' : '.');
  const [timeName, timeUnit] = timeTitles[time];
  if (form === 'long') {
    const lines = rows.flatMap((row, second) =>
      channels.map(([name, unit, , key]) => [timeCell(time, second), name, number(row[key]), unit].join(separator)),
    );
    return [[titled(timeName, timeUnit, units === 'row' ? 'square' : units), 'Name', 'Value', 'Unit'].join(separator), ...lines].join(
      lineEnd,
    );
  }
  const header = [titled(timeName, timeUnit, units), ...channels.map(([name, unit]) => titled(name, unit, units))].join(separator);
  const unitRow = units === 'row' ? [[timeUnit === '' ? 's' : timeUnit, ...channels.map(([, unit]) => unit)].join(separator)] : [];
  const lines = rows.map((row, second) =>
    [
      timeCell(time, second),
      ...channels.map(([, , , key], index) => (form === 'wide' || second % 3 === index ? number(row[key]) : '')),
    ].join(separator),
  );
  return [header, ...unitRow, ...lines].join(lineEnd);
}

function encoded(text: string, encoding: Shape['encoding']): Uint8Array {
  if (encoding === 'utf-8') return new TextEncoder().encode(text);
  if (encoding === 'utf-8 with mark') return new TextEncoder().encode(`\ufeff${text}`);
  const codes = [...(encoding === 'latin-1' ? text : `\ufeff${text}`)].map((sign) => sign.charCodeAt(0));
  if (encoding === 'latin-1') return Uint8Array.from(codes);
  return Uint8Array.from(codes.flatMap((code) => (encoding === 'utf-16le' ? [code & 255, code >> 8] : [code >> 8, code & 255])));
}

/** Every value by channel and second, as it came out. */
function readBack(bytes: Uint8Array): Map<string, number> {
  const values = new Map<string, number>();
  let first: number | undefined;
  const result = readLog(bytes, {
    onBatch: (batch) => {
      for (let row = 0; row < batch.rows; row += 1) {
        first ??= batch.time[row] ?? 0;
        for (const [channel, column] of batch.values) {
          const value = column[row] ?? Number.NaN;
          if (!Number.isNaN(value)) values.set(`${channel} ${Math.round((batch.time[row] ?? 0) - first)}`, value);
        }
      }
    },
  });
  if (!result.ok) throw new Error(result.problem.code);
  expect(result.questions).toEqual([]);
  expect(result.leftOut).toEqual([]);
  return values;
}

// The units of the three columns in SI, as their definitions have it: a turn a minute, 100 Pa, 273.15 K.
const inSI = {
  engineSpeed: (rpm: number) => rpm / 60,
  pressureDrop: (mbar: number) => mbar * 100,
  coolantTemperature: (celsius: number) => celsius + 273.15,
};

describe('a log in any shape', () => {
  it('gives back the numbers that were written', () => {
    fc.assert(
      fc.property(moments, shapes, (rows, shape) => {
        const values = readBack(encoded(written(rows, shape), shape.encoding));
        let count = 0;
        rows.forEach((row, second) => {
          channels.forEach(([, , channel, key], index) => {
            if (shape.form === 'in turn' && second % 3 !== index) return;
            count += 1;
            const expected = inSI[channel](row[key] / 10);
            const found = values.get(`${channel} ${second}`) ?? Number.NaN;
            if (!(Math.abs(found - expected) <= 4e-16 * Math.abs(expected)))
              expect({ shape, channel, second, found }).toEqual({ expected });
          });
        });
        expect(values.size).toBe(count);
      }),
      { numRuns: 300 },
    );
  });
});
