import { CalculationError, issueText } from '@wallflow/calculation';
import { describe, expect, it } from 'vitest';
import { good, heater } from './sample.js';

function nested(depth: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < depth; level += 1) value = level % 2 === 0 ? [value] : { inside: value };
  return value;
}

const circular: Record<string, unknown> = {};
circular.self = circular;

const hostile: readonly (readonly [string, unknown])[] = [
  ['a circle', circular],
  ['a list in itself', [circular, [circular]]],
  ['a BigInt', 12n],
  ['a very long BigInt', 10n ** 5000n],
  ['a BigInt in a record', { value: 12n, unit: 'V' }],
  ['deep nesting', nested(20_000)],
  [
    'a toJSON that throws',
    {
      toJSON: () => {
        throw new Error('toJSON');
      },
    },
  ],
  [
    'a toString that throws',
    {
      toString: () => {
        throw new Error('toString');
      },
    },
  ],
  ['a symbol', Symbol('s')],
  ['a function', () => 1],
  ['a date', new Date(Number.NaN)],
  ['a map', new Map([[1, 2]])],
  ['ten megabytes of text', 'x'.repeat(10_000_000)],
  ['a hundred thousand entries', Array.from({ length: 100_000 }, (_, index) => index)],
  ['a record with ten thousand keys', Object.fromEntries(Array.from({ length: 10_000 }, (_, index) => [`key${index}`, index]))],
  ['not a number', Number.NaN],
];

describe.each(hostile)('%s as an input', (_, value) => {
  it.each(['voltage', 'mode', 'repeats', 'checked', 'name', 'pulses', 'stranger'])('%s is an issue that is short, plain data', (key) => {
    const input = { ...good, [key]: value };
    const result = heater.run(input);
    const issues = result.ok ? [] : result.issues;
    expect(issues.length).toBeGreaterThan(0);
    for (const issue of issues) expect(issueText(issue).length).toBeLessThan(300);
    expect(JSON.stringify(issues).length).toBeLessThan(30_000);
    expect(structuredClone(issues)).toEqual(issues);
    expect(() => heater.calculate(input as never)).toThrow(CalculationError);
  });
});

describe('what was given', () => {
  it('stands in an issue unchanged where it is of usual size', () => {
    for (const given of ['12 furlong', { value: 1, unit: 'furlong' }]) {
      const result = heater.runUnknown({ ...good, voltage: given });
      expect(result.ok ? [] : result.issues).toMatchObject([{ given }]);
    }
  });

  it('is never split within a sign', () => {
    const result = heater.run({ ...good, voltage: '💧'.repeat(5000) });
    const [issue] = result.ok ? [] : result.issues;
    expect(issue && issueText(issue)).not.toMatch(/[\ud800-\udbff](?![\udc00-\udfff])/);
  });

  it('does not make the message of an exception long', () => {
    const strangers = Object.fromEntries(Array.from({ length: 1000 }, (_, index) => [`${'k'.repeat(500)}${index}`, 1]));
    const message = (() => {
      try {
        heater.calculate({ ...good, ...strangers } as never);
        return '';
      } catch (error) {
        return (error as Error).message;
      }
    })();
    expect(message).toMatch(/And 990 more\.$/);
    expect(message.length).toBeLessThan(2000);
  });
});
