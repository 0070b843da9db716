import { readLine } from '@wallflow/workshop/estimate';
import { describe, expect, it } from 'vitest';
import { main } from '../../packages/wallflow/src/main.js';

async function judge(...words: string[]) {
  let out = '';
  let error = '';
  const none = () => undefined;
  const code = await main(['judge', ...words], {
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
    readInput: async () => undefined,
    readFile: none,
    readFileWithin: none,
    writeFile: none,
  });
  return { code, out, error };
}

describe('wallflow judge', () => {
  it('answers readings on one line in five lines', async () => {
    const { code, out } = await judge('2.2 L; 800 rpm 14 mbar; 2800 rpm 290 mbar 210 °C');
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines).toHaveLength(5);
    expect(lines[0]).toMatch(/^Restricted: /);
    expect(lines.join(' ')).not.toMatch(/[a-z]+-[a-z]+-[a-z]+|[a-z][A-Z]|undefined|NaN/);
  });

  it('gives the estimate as data', async () => {
    const { out } = await judge('--json', '2.2 L', '800 rpm 14 mbar', '2800 rpm 290 mbar');
    const { estimate, nextTest } = JSON.parse(out);
    expect(estimate.restricted).toBeGreaterThan(0.99);
    expect(estimate.causes.reduce((sum: number, { probability }: { probability: number }) => sum + probability, 0)).toBeCloseTo(1, 9);
    expect(estimate.sootLoad.p5).toBeLessThan(estimate.sootLoad.p95);
    expect(nextTest.question).toMatch(/\?$/);
  });

  it.each([
    ['800 rpm 14 mbar', 'displacement'],
    ['2.2 L', 'reading'],
    ['2.2 L; 800 rpm', 'pressure drop'],
    ['2.2 L; 800 rpm 14 bananas', 'not a speed'],
    ['2.2 L; 80000 rpm 14 mbar', '6000 rpm'],
    ['2200 L; 800 rpm 14 mbar', '20 litres'],
    ['2.2 L; hello', 'numbers with their units'],
  ])('says what is wrong with %s', async (line, words) => {
    const { code, error } = await judge(line);
    expect(code).toBe(1);
    expect(error).toContain(words);
  });

  it.each([
    '3.9 L, 700 rpm 18 mbar 118 °C, 1500 rpm 50 mbar, 2200 rpm 95 mbar 206 °C',
    '3,9 L 700 rpm 18 mbar 118 °C 1500 rpm 50 mbar 2200 rpm 95 mbar 206 °C',
    '3.9 L: 700 rpm = 18 mbar, 118 °C; 1500 rpm = 50 mbar; 2200 rpm = 95 mbar, 206 °C',
    '3900 cc 18 mbar at 700 rpm 118 °C, 50 mbar at 1500 rpm, 95 mbar at 2200 rpm 206 °C',
    '3.9l 700rpm 18mbar 118°C; 1500rpm 50mbar and 2200rpm 95mbar 206°C',
  ])('takes %s, in quotes or word by word', async (line) => {
    const read = readLine(line);
    expect(read).toMatchObject({ ok: true });
    if (!read.ok) return;
    expect(read.input.vehicle.displacement).toBeCloseTo(3.9e-3, 12);
    const seen = read.input.readings.map((one) => [one.engineSpeed * 60, one.pressureDrop / 100, one.gasTemperature]);
    const meant = [
      [700, 18, 391.15],
      [1500, 50, undefined],
      [2200, 95, 479.15],
    ];
    seen.forEach((reading, row) => {
      reading.forEach((value, column) => {
        const expected = meant[row]?.[column];
        if (expected === undefined) expect(value).toBeUndefined();
        else expect(value).toBeCloseTo(expected, 6);
      });
    });
    expect(seen).toHaveLength(3);
    expect(await judge(...line.split(' '))).toEqual(await judge(line));
  });

  it('does not guess to which reading a second drop belongs', () => {
    expect(readLine('2.2 L; 800 rpm 14 mbar 290 mbar')).toMatchObject({ ok: false });
    expect(readLine('2.2 L 800 rpm 14 mbar 290 mbar 2800 rpm')).toMatchObject({ ok: false });
  });

  it('reads units as they are written, and takes rounding from the digits', () => {
    const line = readLine('3,9 L; 146300 km; 0 rpm 0.6 mbar; 700 rpm 18 mbar; 2200 U/min 9.5 kPa 206 °C 300 kg/h');
    expect(line.ok).toBe(true);
    if (!line.ok) return;
    expect(line.input.vehicle.displacement).toBeCloseTo(3.9e-3, 12);
    expect(line.input.vehicle.distance).toBeCloseTo(1.463e8, 0);
    expect(line.input.zero?.pressureDrop).toBeCloseTo(60, 9);
    const fast = line.input.readings[1];
    expect(fast?.pressureDrop).toBeCloseTo(9500, 9);
    expect(fast?.gasTemperature).toBeCloseTo(479.15, 9);
    expect(fast?.airMassFlow).toBeCloseTo(300 / 3600, 12);
    // Half a digit of 0.1 kPa over √3.
    expect(fast?.uncertainty).toBeCloseTo(50 / Math.sqrt(3), 6);
  });
});
