import { calculations } from '@wallflow/workshop';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const calculation = calculations.find((candidate) => candidate.id === 'before-after');
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const mbar = (value: number) => ({ value, unit: 'mbar' });

interface Answer {
  readonly verdict: string;
  /** Missing where the later reading is no signal. */
  readonly improvement?: number;
}

function answer(change: Record<string, unknown>): Answer {
  const result = calculation?.run({ ...calculation.example, ...change });
  if (!result?.ok) throw new Error('refused as input');
  return result.outputs as unknown as Answer;
}

describe('before and after', () => {
  it('calls nothing cleaned without a drop of the clean filter', () => {
    fc.assert(
      fc.property(number(1, 1500), number(-1000, 1500), (dropBefore, dropAfter) => {
        const { verdict } = answer({ dropBefore: mbar(dropBefore), dropAfter: mbar(dropAfter), cleanDrop: undefined });
        expect(verdict).not.toBe('cleaned');
        expect(verdict).not.toBe('improved');
      }),
    );
  });

  it('calls nothing cleaned that lies outside the band of the clean filter or within twice its error, and never finds the opposite of a change', () => {
    fc.assert(
      fc.property(
        number(1, 1500),
        number(-1000, 1500),
        number(1, 300),
        number(0, 20),
        fc.constantFrom('measured', 'calculated'),
        (dropBefore, dropAfter, cleanDrop, error, cleanFrom) => {
          const { verdict, improvement } = answer({
            dropBefore: mbar(dropBefore),
            dropAfter: mbar(dropAfter),
            cleanDrop: mbar(cleanDrop),
            dropUncertainty: mbar(error),
            cleanFrom,
          });
          const [low, high] = cleanFrom === 'measured' ? [1 / 1.3, 1.3] : [0.3, 2.5];
          if (dropAfter <= 2 * error) expect(['no-signal', 'unclear']).toContain(verdict);
          if (verdict === 'cleaned') {
            expect(dropAfter / cleanDrop).toBeGreaterThanOrEqual(low * (1 - 1e-9));
            expect((dropAfter + 2 * error) / cleanDrop).toBeLessThanOrEqual(high * (1 + 1e-9));
          }
          expect(improvement === undefined).toBe(verdict === 'no-signal');
          if (verdict === 'cleaned' || verdict === 'improved') expect(improvement).toBeGreaterThan(0);
          if (verdict === 'worse') expect(improvement).toBeLessThan(0);
        },
      ),
    );
  });

  it('does not become cleaned by a larger error', () => {
    fc.assert(
      fc.property(number(10, 400), number(5, 60), number(0, 5), number(0, 5), (dropBefore, dropAfter, error, more) => {
        const at = (size: number) =>
          answer({ dropBefore: mbar(dropBefore), dropAfter: mbar(dropAfter), cleanDrop: '17 mbar', dropUncertainty: mbar(size) }).verdict;
        if (at(error) !== 'cleaned') expect(at(error + more)).not.toBe('cleaned');
      }),
    );
  });
});
