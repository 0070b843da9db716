import { type LogReading, readLog } from '@wallflow/logs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** The ratio that a log's single state column shows, as the reader took it, row by row; NaN where it took none. */
function taken(cells: readonly string[], separator: string, decimal?: '.' | ','): { numbers: number[]; reading: LogReading } {
  const numbers: number[] = [];
  const text = [`Time [s]${separator}Regeneration status []`, ...cells.map((cell, index) => `${index}${separator}${cell}`)].join('\n');
  const mapping = {
    format: 'wallflow-log-mapping',
    version: 1,
    titles: [],
    columns: { 'Regeneration status []': { channel: 'odometer', unit: 'm' } },
    ...(decimal === undefined ? {} : { decimal }),
  } as const;
  const reading = readLog(`${text}\n`, {
    mapping,
    onBatch: (batch) => {
      const column = batch.values.get('odometer');
      for (let row = 0; row < batch.rows; row += 1) numbers.push(column?.[row] ?? Number.NaN);
    },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problem));
  return { numbers, reading };
}

const digits = (least: number, most: number) => fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: least, maxLength: most });

describe('a number that is accepted', () => {
  it('is the number that stood there, to the last bit', () => {
    // The odometer holds up to 5e9 m; the language's own reading of the text is the judge.
    const number = fc
      .tuple(digits(1, 9), fc.option(digits(0, 25)), fc.constantFrom('', '+'))
      .map(([whole, fraction, sign]) => `${sign}${whole}${fraction === null ? '' : `.${fraction}`}`);
    fc.assert(
      fc.property(fc.array(number, { minLength: 1, maxLength: 20 }), (cells) => {
        const { numbers } = taken(cells, ',');
        const kept = cells.filter((cell) => Number(cell) <= 5e9);
        const read = numbers.filter((value) => !Number.isNaN(value));
        for (const value of read) expect(kept.map(Number)).toContain(value);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same with a decimal comma', () => {
    const number = fc
      .tuple(
        digits(1, 6),
        digits(1, 8).filter((fraction) => fraction.length !== 3),
      )
      .map(([whole, fraction]) => `${whole}.${fraction}`);
    fc.assert(
      fc.property(fc.array(number, { minLength: 1, maxLength: 20 }), (cells) => {
        const point = taken(cells, ';').numbers;
        const comma = taken(
          cells.map((cell) => cell.replace('.', ',')),
          ';',
        ).numbers;
        expect(comma).toEqual(point);
      }),
      { numRuns: 200 },
    );
  });

  it('is never another one, whatever the cell is made of', () => {
    const cell = fc.string({ unit: fc.constantFrom(...'0123456789.,+-eE \'"x%:/#n'), maxLength: 12 });
    fc.assert(
      fc.property(
        fc.array(cell, { minLength: 1, maxLength: 12 }),
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom<('.' | ',' | undefined)[]>('.', ',', undefined),
        (cells, separator, decimal) => {
          const { numbers } = taken(
            cells.map((text) => `"${text.replace(/"/g, '""')}"`),
            separator,
            decimal,
          );
          // Every number that comes out has the digits of a cell that went in, in their order.
          const bare = (text: string) =>
            text
              .replace(/e.*$/i, '')
              .replace(/[^0-9]/g, '')
              .replace(/^0+|0+$/g, '');
          for (const value of numbers) {
            if (Number.isNaN(value) || value === 0) continue;
            const found = cells.some((text) => {
              const exponent = /e([+-]?\d+)/i.exec(text)?.[1];
              const mantissa = bare(text);
              return (
                mantissa !== '' &&
                (exponent === undefined
                  ? bare(value.toFixed(12)) === mantissa || bare(String(value)) === mantissa
                  : bare(value.toExponential(11)) === mantissa || bare(String(value)) === mantissa)
              );
            });
            expect({ cells, value, found }).toMatchObject({ found: true });
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});
