import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AnyCalculation } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { allCalculations } from '../../support/calculations.js';
import { recording } from '../../support/record.js';

/**
 * What the example of each version of each calculation came to when it was recorded. This is no check of truth, for which there
 * are the reference cases: it shows that a number has changed, so that nobody who cites a version is given another number by it.
 */
const file = fileURLToPath(new URL('results.json', import.meta.url));

interface Recorded {
  readonly example: unknown;
  readonly result: unknown;
}

const digits = 9;

/** Plain data with numbers as far as any machine gives them; of a table its length and last row. */
function plain(value: unknown): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(digits));
  if (Array.isArray(value)) return { rows: value.length, last: plain(value.at(-1) ?? {}) };
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).flatMap(([key, one]) => (one === undefined ? [] : [[key, plain(one)]])));
}

/** Numbers, verdicts and which warnings there are; sentences may be said better at any time. */
function resultOf(calculation: AnyCalculation): unknown {
  const result = calculation.runUnknown(calculation.example);
  if (!result.ok) return { issues: result.issues.map(({ code }) => code) };
  const fields = { ...calculation.spec.intermediates, ...calculation.spec.outputs };
  const values = Object.entries({ ...result.intermediates, ...result.outputs }).filter(([key]) => fields[key]?.type !== 'text');
  const withoutTexts = (key: string, value: unknown): unknown => {
    const field = fields[key];
    if (field?.type !== 'table' || !Array.isArray(value)) return value;
    const kept = Object.keys(field.columns).filter((column) => field.columns[column]?.type !== 'text');
    return value.map((row: Readonly<Record<string, unknown>>) => Object.fromEntries(kept.map((column) => [column, row[column]])));
  };
  return plain(Object.fromEntries(values.map(([key, value]) => [key, withoutTexts(key, value)])));
}

const nameOf = ({ id, version }: AnyCalculation) => `${id}@${version}`;
const records: Record<string, Recorded> = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};

for (const calculation of recording.length === 0 ? [] : allCalculations) {
  const name = nameOf(calculation);
  if (records[name] !== undefined && !recording.includes(calculation.id) && !recording.includes('all')) continue;
  records[name] = { example: calculation.example, result: resultOf(calculation) };
}
if (recording.length > 0) {
  const sorted = Object.fromEntries(Object.entries(records).sort(([one], [other]) => (one < other ? -1 : 1)));
  writeFileSync(file, `${JSON.stringify(sorted, undefined, 2)}\n`);
}

/** Numbers that no other machine gives differently. */
function closeTo(value: unknown): unknown {
  if (typeof value === 'number') return expect.closeTo(value, 7 - Math.ceil(Math.log10(Math.abs(value) + 1e-300)));
  if (Array.isArray(value)) return value.map(closeTo);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, closeTo(one)]));
}

describe('the result of the example of each version', () => {
  it.each(allCalculations.map((calculation) => [nameOf(calculation), calculation] as const))(
    '%s is the recorded one: a changed number is a new version with a line of history, `npm run record` writes it',
    (name, calculation) => {
      const kept = records[name];
      expect(kept, 'npm run record').toBeDefined();
      expect(calculation.example, `another example: npm run record -- ${calculation.id}`).toEqual(kept?.example);
      expect(resultOf(calculation), `before the first release only: npm run record -- ${calculation.id}`).toEqual(closeTo(kept?.result));
    },
  );

  it('says what changed and why in each version after the first', () => {
    const silent = allCalculations.filter(({ version, spec }) => version !== '1.0.0' && spec.history?.[0]?.version !== version);
    expect(silent.map(nameOf)).toEqual([]);
  });
});
