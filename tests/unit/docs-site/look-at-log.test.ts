import { makeMapping } from '@wallflow/logs';
import { describe, expect, it } from 'vitest';
import { logText } from '../../../docs-site/src/logs/log-text.js';
import { type LogLook, lookAtLog } from '../../../docs-site/src/logs/look-at-log.js';
import { log, usualTitles } from '../logs/drive.js';

function lookOf(text: string, ...rest: Parameters<typeof lookAtLog> extends [string, ...infer R] ? Partial<R> : never): LogLook {
  const result = lookAtLog(text, rest[0] ?? [], rest[1]);
  if (!result.ok) throw new Error(result.problem);
  return result.look;
}

const unclear = log({ titles: usualTitles.map((title, index) => (index === 3 ? 'EGT [°C]' : title)) });

describe('a look at a log', () => {
  it('says of each column what it is read as, how sure, and by what', () => {
    const look = lookOf(log());
    expect(look.columns[4]).toEqual({
      column: usualTitles[4],
      what: 'pressure drop across the filter in mbar',
      sure: 'certain',
      how: 'title understood, unit in brackets',
    });
    expect(look.questions).toEqual([]);
    expect(look.windows[1]).toMatch(/^55 to 89 s: engine speed 700\.1 ± 3\.5 rpm; pressure drop across the filter 17\.997 ± 0\.087 mbar/);
  });

  it('asks what is open, and each offer answers it', () => {
    const look = lookOf(unclear);
    const [question] = look.questions;
    expect(question?.text).toMatch(/What is “EGT \[°C\]”/);
    const offer = question?.offers.find(({ label }) => label === 'gas temperature before the filter in °C');
    const mapping = makeMapping(look.titles, offer?.answer.columns ?? {});
    const answered = lookOf(unclear, [mapping]);
    expect(answered.questions).toEqual([]);
    expect(answered.mapping).toEqual(mapping);
    expect(answered.columns).toContainEqual(expect.objectContaining({ column: 'EGT [°C]', how: 'as the mapping says' }));
    for (const { answer } of look.assignments) {
      const assigned = lookAtLog(unclear, [makeMapping(look.titles, { 'EGT [°C]': answer })]);
      expect(assigned.ok).toBe(true);
    }
  });

  it('counts what was left out by reason, with the first line', () => {
    expect(lookOf(log({ below: ['End of recording'] })).leftOut).toEqual(['line that is no row of values, once, in line 137']);
    expect(lookAtLog('PK\u0003\u0004xx', [])).toMatchObject({ ok: false, problem: expect.stringContaining('spreadsheet') });
  });

  it('reduces the points of a long log, and loses no peak', () => {
    const rows = 100_000;
    const lines = ['time [s],engine speed [rpm],DPF differential pressure [mbar]'];
    for (let row = 0; row < rows; row += 1) lines.push(`${row / 10},${900 + (row % 700)},${row === 54_321 ? 999 : 20 + (row % 7)}`);
    const shares: number[] = [];
    const { plot } = lookOf(lines.join('\n'), [], (share) => shares.push(share));
    const drop = plot?.series.find(({ channel }) => channel === 'pressureDrop');
    expect(plot?.time.length).toBeLessThanOrEqual(1200);
    expect(plot?.time.length).toBeGreaterThan(300);
    expect(Math.max(...(drop?.values ?? []).map((value) => value ?? 0))).toBeCloseTo(999, 9);
    expect(Math.min(...(drop?.values ?? []).map((value) => value ?? 999))).toBeCloseTo(20, 9);
    expect(drop).toMatchObject({ label: 'pressure drop across the filter', unit: 'mbar' });
    expect(shares.length).toBeGreaterThan(5);
    expect(shares.at(-1)).toBe(1);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  });
});

describe('the text of a log', () => {
  const text = 'Zeit (s);Kühlmittel (°C)\n0;88';
  const wide = (mark: boolean, big: boolean) => {
    const codes = [...(mark ? [0xfeff] : []), ...[...text].map((sign) => sign.charCodeAt(0))];
    return Uint8Array.from(codes.flatMap((code) => (big ? [code >> 8, code & 255] : [code & 255, code >> 8])));
  };

  it.each([
    ['UTF-8', new TextEncoder().encode(text)],
    ['Latin-1', Uint8Array.from([...text].map((sign) => sign.charCodeAt(0)))],
    ['UTF-16 with its mark', wide(true, false)],
    ['UTF-16 the other way round with its mark', wide(true, true)],
    ['UTF-16 without a mark', wide(false, false)],
    ['UTF-16 the other way round without a mark', wide(false, true)],
  ])('is the same from %s', (_, bytes) => {
    expect(logText(bytes)).toBe(text);
  });
});
