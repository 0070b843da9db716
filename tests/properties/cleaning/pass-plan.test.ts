import { gainBetween } from '@wallflow/exhaust';
import { calculations } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const plan = calculations.find(({ id }) => id === 'cleaning-pass-plan');
const run = (input: unknown) => {
  const result = plan?.run(input);
  if (result?.ok !== true) throw new Error('refused');
  return result.outputs as { plateau?: number; nextDrop?: number; verdict: string };
};
const text = (pascal: number) => ({ value: pascal, unit: 'Pa' });

it('finds the curve that made the readings', () => {
  const curve = fc.record({
    level: fc.integer({ min: 20, max: 300 }),
    amplitude: fc.integer({ min: 50, max: 800 }),
    length: fc.double({ min: 0.8, max: 4, noNaN: true }),
    passes: fc.integer({ min: 4, max: 8 }),
  });
  fc.assert(
    fc.property(curve, ({ level, amplitude, length, passes }) => {
      const at = (pass: number) => 100 * (level + amplitude * Math.exp(-pass / length));
      const readings = Array.from({ length: passes }, (_, pass) => ({ pass, drop: text(at(pass)) }));
      const { plateau, nextDrop } = run({ readings });
      expect(plateau).toBeCloseTo(100 * level, 1);
      expect(nextDrop).toBeCloseTo(at(passes), 1);
    }),
  );
});

const drop = fc.integer({ min: 100, max: 100_000 });
const drops = fc.array(drop, { minLength: 2, maxLength: 8 });
const noise = 2 * Math.SQRT2 * 300;

it('never calls a filter clean or stops on it where the drop rises between passes, and says so', () => {
  fc.assert(
    fc.property(drops, drop, (values, clean) => {
      const { verdict } = run({ readings: values.map((value, pass) => ({ pass, drop: text(value) })), cleanDrop: text(clean) });
      const last = values.at(-1) ?? 0;
      const rises = last > Math.min(...values.slice(0, -1)) + noise;
      expect(['rising', 'worse'].includes(verdict)).toBe(rises);
    }),
    { numRuns: 300 },
  );
});

it('calls clean only what is near clean, and takes off only what is surely far above', () => {
  fc.assert(
    fc.property(drops, drop, (values, clean) => {
      const { verdict, plateau } = run({ readings: values.map((value, pass) => ({ pass, drop: text(value) })), cleanDrop: text(clean) });
      const last = values.at(-1) ?? 0;
      // A fitted drop stays within three errors of the reading.
      if (verdict === 'clean') expect(last).toBeLessThanOrEqual(1.15 * clean + 900);
      if (verdict === 'clean') expect(last).toBeGreaterThanOrEqual(0.85 * clean - 600);
      if (verdict === 'take-off') expect(Math.max(last, plateau ?? 0)).toBeGreaterThan(1.5 * clean - 900);
      if (last < 0.85 * clean - 600) expect(['too-open', 'rising', 'worse']).toContain(verdict);
    }),
    { numRuns: 300 },
  );
});

it('gives the error of a gain that a small change of both readings gives', () => {
  const size = fc.double({ min: 1e3, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.integer({ min: 1, max: 4 }), (first, second, passes) => {
      const before = { pass: 1, drop: first };
      const after = { pass: 1 + passes, drop: second };
      const step = 1e-3;
      const slope = (one: number, two: number) =>
        (gainBetween({ ...before, drop: first + one }, { ...after, drop: second + two }, 1).share -
          gainBetween({ ...before, drop: first - one }, { ...after, drop: second - two }, 1).share) /
        (2 * step);
      const expected = Math.hypot(slope(step, 0), slope(0, step));
      expect(gainBetween(before, after, 1).uncertainty / expected).toBeCloseTo(1, 4);
    }),
  );
});
