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

it('never calls a filter clean that reads above clean, and never asks for a pass on one that reads below', () => {
  const drops = fc.array(fc.integer({ min: 1, max: 100_000 }), { minLength: 2, maxLength: 8 });
  fc.assert(
    fc.property(drops, fc.integer({ min: 1, max: 100_000 }), (values, clean) => {
      const { verdict } = run({ readings: values.map((value, pass) => ({ pass, drop: text(value) })), cleanDrop: text(clean) });
      const last = values.at(-1) ?? 0;
      if (last > clean) expect(verdict).not.toBe('clean');
      else expect(['clean', 'worse']).toContain(verdict);
    }),
    { numRuns: 300 },
  );
});
