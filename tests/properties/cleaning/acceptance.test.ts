import { acceptanceVerdict, massRecovery, recoveryVerdict, type TestResult } from '@wallflow/exhaust';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const result = fc.constantFrom<TestResult>('pass', 'fail', 'unknown');
const tests = fc.array(fc.record({ result, asked: fc.boolean() }), { maxLength: 8 });

it('accepts only what was tested and passed', () => {
  fc.assert(
    fc.property(tests, (list) => {
      const verdict = acceptanceVerdict(list);
      if (verdict !== 'accepted') return;
      expect(list.some((test) => test.asked)).toBe(true);
      expect(list.filter((test) => test.asked).every((test) => test.result === 'pass')).toBe(true);
      expect(list.some((test) => test.result === 'fail')).toBe(false);
    }),
    { numRuns: 500 },
  );
});

it('taking a result away never turns a filter into an accepted one', () => {
  fc.assert(
    fc.property(tests, fc.nat(7), (list, index) => {
      fc.pre(acceptanceVerdict(list) !== 'accepted' && list[index]?.result === 'pass');
      const fewer = list.map((test, at) => (at === index ? { ...test, result: 'unknown' as const } : test));
      expect(acceptanceVerdict(fewer)).not.toBe('accepted');
    }),
    { numRuns: 500 },
  );
});

it('a heavier cleaned filter never has the better recovery, and a worse scale never the better verdict', () => {
  const grams = fc.double({ min: 0, max: 0.2, noNaN: true });
  fc.assert(
    fc.property(grams, grams, fc.double({ min: 1e-4, max: 0.02, noNaN: true }), (left, more, uncertainty) => {
      const input = { before: 12.3, whenNew: 12, uncertainty };
      const light = massRecovery({ ...input, after: 12 + left });
      const heavy = massRecovery({ ...input, after: 12 + left + more });
      expect(heavy.share).toBeLessThanOrEqual(light.share);
      const worse = massRecovery({ ...input, after: 12 + left, uncertainty: 2 * uncertainty });
      if (recoveryVerdict(worse, 0.9) === 'clean') expect(recoveryVerdict(light, 0.9)).toBe('clean');
    }),
  );
  expect(recoveryVerdict(undefined, 0.5)).toBe('unknown');
});
