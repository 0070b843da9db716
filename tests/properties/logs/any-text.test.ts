import { LogReader, readLog } from '@wallflow/logs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const word = fc.constantFrom(
  'Time',
  'Zeit',
  'Engine speed',
  'Motordrehzahl',
  'MAF',
  'EGT before DPF',
  'Differenzdruck',
  'x',
  '',
  'sep=;',
  '#',
  'Name',
  'Value',
  'Unit',
  'Date',
  'soot',
  '__proto__',
  'constructor',
  '=1+1',
);
const unit = fc.constantFrom('', ' [s]', ' (rpm)', ' [kg/h]', ', °C', ' / mbar', ' [', ' (°C', '[]', ' <%>');
const title = fc.tuple(word, unit).map(([name, given]) => name + given);
const cell = fc.oneof(
  fc.constantFrom(
    '',
    '-',
    'n/a',
    '0',
    '1',
    '700',
    '2200',
    '1.206',
    '1,206',
    '36,5',
    '36.5',
    '-40',
    '655.35',
    '6553.5',
    '1e5',
    '1e999',
    '"',
    '""',
    '"7"',
    'hot',
    '12:03',
    '12:03:04',
    '30.11.2026',
    '1764000000',
    '\u0000',
    '\ufeff',
    '\u2028',
    '7 mbar',
  ),
  fc.string({ maxLength: 8 }),
  fc.double().map(String),
);
const separator = fc.constantFrom(',', ';', '\t', '|', ', ', '');
const lineEnd = fc.constantFrom('\n', '\r\n', '\r', '\n\n', '\n\r');

/** Logs by a grammar that is right now and then. */
const text = fc
  .tuple(
    fc.array(title, { maxLength: 6 }),
    fc.array(fc.array(cell, { maxLength: 7 }), { maxLength: 30 }),
    separator,
    lineEnd,
    fc.array(fc.string({ maxLength: 20 }), { maxLength: 3 }),
  )
  .map(([titles, rows, sign, end, above]) => [...above, titles.join(sign), ...rows.map((row) => row.join(sign))].join(end));

describe('any text', () => {
  it('is read or refused, and gives no number that is not one', () => {
    fc.assert(
      fc.property(text, (content) => {
        const result = readLog(content);
        if (!result.ok) return;
        for (const { from, to, values } of result.windows) {
          expect(from).toBeLessThanOrEqual(to);
          for (const { mean, deviation, plusMinus, samples } of Object.values(values)) {
            expect([mean, deviation, plusMinus].every(Number.isFinite)).toBe(true);
            expect(samples).toBeGreaterThan(0);
          }
        }
        for (const { count, firstLine } of result.leftOut) {
          expect(count).toBeGreaterThan(0);
          expect(firstLine).toBeGreaterThan(0);
        }
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
      { numRuns: 800 },
    );
  });

  it('gives the same however it is cut into parts', () => {
    fc.assert(
      fc.property(text, fc.array(fc.nat(40), { maxLength: 40 }), (content, sizes) => {
        const bytes = new TextEncoder().encode(content);
        const reader = new LogReader();
        let at = 0;
        for (const size of sizes) {
          reader.push(bytes.subarray(at, at + size));
          at += size;
        }
        reader.push(bytes.subarray(at));
        expect(reader.end()).toEqual(readLog(content));
      }),
      { numRuns: 400 },
    );
  });

  it('gives the same however it is cut beyond the head', () => {
    const header = `${'x'.repeat(262_000)}\nTime [s],Engine speed [rpm],Remark,DPF pressure drop [mbar]\n`;
    const row = fc.tuple(
      fc.nat(5000),
      fc.oneof(fc.constantFrom('', 'a', '"a,b"', '"a\nb"', '"a""b"', '"', 'ä'), fc.string({ maxLength: 5 })),
      cell,
    );
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 60 }),
        fc.constantFrom('\n', '\r\n', '\r'),
        fc.array(fc.nat(30), { maxLength: 60 }),
        (rows, end, sizes) => {
          const content = header + rows.map(([speed, remark, drop], index) => `${index},${speed},${remark},${drop}`).join(end);
          const bytes = new TextEncoder().encode(content);
          const whole = new LogReader();
          whole.push(bytes);
          const reader = new LogReader();
          reader.push(bytes.subarray(0, header.length));
          let at = header.length;
          for (const size of sizes) {
            reader.push(bytes.subarray(at, at + size));
            at += size;
          }
          reader.push(bytes.subarray(at));
          expect(reader.end()).toEqual(whole.end());
        },
      ),
      { numRuns: 200 },
    );
  });

  it('may be any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const result = readLog(bytes);
        expect(typeof result.ok).toBe('boolean');
      }),
      { numRuns: 500 },
    );
  });
});
