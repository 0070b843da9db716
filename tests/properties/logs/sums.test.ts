import { addEvent, addFitRow, addValue, finishSums, mergeSums, type PartialSums, type SumsDefinition, startSums } from '@wallflow/logs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const definition: SumsDefinition = {
  channels: ['pressureDrop', 'gasTemperature'],
  histograms: { pressureDrop: [0, 100, 1000, 10_000] },
  fits: [{ name: 'resistance', response: 'drop', predictors: ['viscous', 'inertial'] }],
};
type Row = readonly [drop: number, temperature: number, viscous: number, inertial: number];

function sumsOf(rows: readonly Row[], part: string): PartialSums {
  const sums = startSums(definition, part);
  for (const [drop, temperature, viscous, inertial] of rows) {
    addValue(sums, 'pressureDrop', drop);
    addValue(sums, 'gasTemperature', temperature);
    addFitRow(sums, 'resistance', [viscous, inertial, drop]);
  }
  const [first] = rows;
  if (first !== undefined) addEvent(sums, { part, what: 'regeneration', from: first[0], to: first[0] + 600, figures: { peak: first[1] } });
  return sums;
}

function together(parts: readonly PartialSums[]): PartialSums {
  const [first, ...others] = parts;
  return others.reduce((sum, part) => {
    const merged = mergeSums(sum, part);
    if (!merged.ok) throw new Error(merged.problem);
    return merged.sums;
  }, first!);
}

const near = (a: number, b: number) => Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));
const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true });
// Means far from zero with little spread are the hard case: the squares agree to nearly all digits.
const row = fc.tuple(
  fc.oneof(finite(-2e4, 2e5), finite(99_999, 100_001)),
  fc.oneof(finite(250, 1300), finite(399.999, 400.001)),
  finite(1e3, 1e6),
  finite(1e-3, 1e3),
);

describe('sums over parts', () => {
  it('are those of the whole, whatever the split and the order', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(row, fc.nat(4)), { minLength: 5, maxLength: 150 }), fc.infiniteStream(fc.nat()), (rows, luck) => {
        const whole = finishSums(
          sumsOf(
            rows.map(([values]) => values),
            'whole',
          ),
        );
        const parts = [0, 1, 2, 3, 4].map((part) =>
          sumsOf(
            rows.filter(([, of]) => of === part).map(([values]) => values),
            `part ${part}`,
          ),
        );
        const shuffled = parts
          .map((part) => [luck.next().value ?? 0, part] as const)
          .sort(([a], [b]) => a - b)
          .map(([, part]) => part);
        // Also written and read again, as between machines.
        const merged = together(shuffled.map((part) => JSON.parse(JSON.stringify(part)) as PartialSums));
        expect(merged.parts).toEqual(['part 0', 'part 1', 'part 2', 'part 3', 'part 4']);
        const result = finishSums(merged);
        for (const channel of definition.channels) {
          const [a, b] = [whole.channels[channel]!, result.channels[channel]!];
          expect([b.count, b.least, b.greatest]).toEqual([a.count, a.least, a.greatest]);
          expect(near(a.mean, b.mean)).toBe(true);
          expect(near(a.squaresAboutMean, b.squaresAboutMean)).toBe(true);
        }
        expect(merged.histograms).toEqual(
          sumsOf(
            rows.map(([values]) => values),
            'whole',
          ).histograms,
        );
        expect(merged.events).toEqual(together([...parts]).events);
        const groups = [
          [
            merged.fits[0]!.sums,
            sumsOf(
              rows.map(([values]) => values),
              'whole',
            ).fits[0]!.sums,
          ],
          [
            merged.fits[0]!.products,
            sumsOf(
              rows.map(([values]) => values),
              'whole',
            ).fits[0]!.products,
          ],
        ] as const;
        for (const [ours, theirs] of groups) expect(ours.every((sum, index) => near(sum.high, theirs[index]!.high))).toBe(true);
      }),
      { numRuns: 120 },
    );
  });

  it('give the fit of the whole where the predictors tell it', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(finite(1, 10), finite(0.1, 5), finite(-1, 1), fc.nat(2)), { minLength: 20, maxLength: 80 }), (rows) => {
        const points = rows.map(([x, z, noise, part]): readonly [Row, number] => [[3 + 2 * x + 0.5 * z * z + noise, 400, x, z * z], part]);
        const whole = finishSums(
          sumsOf(
            points.map(([values]) => values),
            'whole',
          ),
        ).fits[0];
        const parts = [2, 0, 1].map((part) =>
          sumsOf(
            points.filter(([, of]) => of === part).map(([values]) => values),
            `part ${part}`,
          ),
        );
        const split = finishSums(together(parts)).fits[0];
        // The solver may magnify the last digit by the condition of its matrix, in both alike only to its own rounding.
        if (whole !== undefined && split !== undefined)
          for (const [index, value] of whole.coefficients.entries()) expect(split.coefficients[index]).toBeCloseTo(value, 9);
        else expect(split).toEqual(whole);
      }),
      { numRuns: 100 },
    );
  });
});
