import {
  acceptanceVerdict,
  figureAgainstLimits,
  massRecovery,
  recoveryVerdict,
  sootVerdict,
  type TestResult,
  testOfPlaces,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const result = fc.constantFrom<TestResult>('pass', 'fail', 'implausible', 'unknown');
const tests = fc.array(fc.record({ result, asked: fc.boolean() }), { maxLength: 8 });

it('accepts only what was tested and passed', () => {
  fc.assert(
    fc.property(tests, (list) => {
      const verdict = acceptanceVerdict(list);
      if (verdict !== 'accepted') return;
      expect(list.some((test) => test.asked)).toBe(true);
      expect(list.filter((test) => test.asked).every((test) => test.result === 'pass')).toBe(true);
      expect(list.some((test) => test.result === 'fail' || test.result === 'implausible')).toBe(false);
    }),
    { numRuns: 500 },
  );
});

it('passes only a figure between its limits, and no figure from too few places', () => {
  const figure = fc.double({ min: -2, max: 3, noNaN: true });
  fc.assert(
    fc.property(figure, fc.nat(9), (found, places) => {
      const bench = figureAgainstLimits(found, { worst: 1.15, best: 0.85 }, 'at-most');
      expect(bench === 'pass').toBe(found >= 0.85 && found <= 1.15);
      expect(bench === 'implausible').toBe(found < 0.85);
      const recovery = figureAgainstLimits(found, { worst: 0.9, best: 1.05 }, 'at-least');
      expect(recovery === 'implausible').toBe(found > 1.05);
      if (places < 5) expect(testOfPlaces(bench, places, 5)).not.toBe('pass');
      if (bench === 'fail') expect(testOfPlaces(bench, places, 5)).toBe('fail');
    }),
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

const grams = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const scale = fc.double({ min: 1e-4, max: 0.02, noNaN: true });
const weighed = (after: number, uncertainty: number) =>
  massRecovery({ before: { mass: 12.3, uncertainty }, after: { mass: after, uncertainty }, whenNew: { mass: 12, uncertainty } });

it('a heavier cleaned filter never has the better recovery, and a worse scale never the better verdict', () => {
  fc.assert(
    fc.property(grams(0.2), grams(0.2), scale, (left, more, uncertainty) => {
      expect(weighed(12 + left + more, uncertainty).share).toBeLessThanOrEqual(weighed(12 + left, uncertainty).share);
      if (recoveryVerdict(weighed(12 + left, 2 * uncertainty), 0.9) === 'clean')
        expect(recoveryVerdict(weighed(12 + left, uncertainty), 0.9)).toBe('clean');
    }),
  );
  expect(recoveryVerdict(undefined, 0.5)).toBe('unknown');
});

it('a filter lighter than when new beyond the error is never clean, however much is missing', () => {
  fc.assert(
    fc.property(grams(5), scale, (missing, uncertainty) => {
      const verdict = recoveryVerdict(weighed(12 - missing, uncertainty), 0.9);
      if (missing > 2 * Math.SQRT2 * uncertainty) expect(verdict).toBe('lighter');
      else expect(verdict).not.toBe('lighter');
    }),
  );
});

it('a worse scale never calls a filter free of soot that a finer one does not, nor finds soot that a finer one does not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.02, max: 0.05, noNaN: true }),
      scale,
      fc.double({ min: 1, max: 100, noNaN: true }),
      (loss, fine, times) => {
        const worse = sootVerdict({ mass: loss, uncertainty: fine * times }, 0.002);
        const finer = sootVerdict({ mass: loss, uncertainty: fine }, 0.002);
        if (worse === 'left') expect(finer).toBe('left');
        if (worse === 'none') expect(['none', 'unclear']).toContain(finer);
        // Free of soot on the worse scale and not on the finer one only when the finer one sees a gain, which proves a misreading.
        if (worse === 'none' && finer === 'unclear') expect(loss).toBeLessThan(0);
      },
    ),
  );
  expect(sootVerdict(undefined, 1)).toBe('unknown');
});
