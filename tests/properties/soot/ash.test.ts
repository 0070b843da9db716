import { deviationFromOthers, layerThickness, plugAsh, plugShare, weightedMean } from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const channels = fc
  .record({ filterVolume: number(1e-3, 0.03), channelLength: number(0.1, 0.35), cellDensity: number(1.5e5, 5e5), wall: number(1e-4, 4e-4) })
  .map(({ wall, ...rest }) => ({ ...rest, channelWidth: 1 / Math.sqrt(rest.cellDensity) - wall }));

describe('ash in channels', () => {
  it('gives back the ash from the plug that it makes', () => {
    fc.assert(
      fc.property(channels, number(0, 1), number(150, 800), (filter, ash, density) => {
        expect(plugAsh(plugShare(ash, density, filter), density, filter)).toBeCloseTo(ash, 12);
      }),
    );
  });

  it('fills with the layer exactly the volume of the ash', () => {
    fc.assert(
      fc.property(channels, number(1e-6, 0.3), number(150, 800), number(0.3, 1), (filter, ash, density, free) => {
        const thickness = layerThickness(ash, density, free, filter);
        if (thickness === undefined) return;
        expect(thickness).toBeLessThan(filter.channelWidth / 2);
        // 4 w (α − w) of every inlet channel, over the depth that the plug leaves.
        const inlets = (filter.cellDensity / 2) * (filter.filterVolume / filter.channelLength);
        const volume = 4 * thickness * (filter.channelWidth - thickness) * inlets * free * filter.channelLength;
        expect(Math.abs(volume * density - ash)).toBeLessThan(1e-10 * ash);
      }),
    );
  });
});

describe('several figures for the same ash', () => {
  const estimates = fc.array(fc.record({ value: number(0, 1), uncertainty: number(1e-3, 0.3) }), { minLength: 2, maxLength: 4 });

  it('has a mean between them and more certain than each', () => {
    fc.assert(
      fc.property(estimates, (figures) => {
        const { mean, uncertainty, chiSquared } = weightedMean(figures);
        const values = figures.map((figure) => figure.value);
        expect(mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-12);
        expect(mean).toBeLessThanOrEqual(Math.max(...values) + 1e-12);
        for (const figure of figures) expect(uncertainty).toBeLessThanOrEqual(figure.uncertainty);
        expect(chiSquared).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('finds no deviation among equal figures, and of two the same with opposite signs', () => {
    fc.assert(
      fc.property(number(0, 1), number(0, 1), number(1e-3, 0.3), number(1e-3, 0.3), (a, b, ua, ub) => {
        const same = [
          { value: a, uncertainty: ua },
          { value: a, uncertainty: ub },
        ];
        expect(Math.abs(deviationFromOthers(same, 0))).toBeLessThan(1e-9);
        const two = [
          { value: a, uncertainty: ua },
          { value: b, uncertainty: ub },
        ];
        expect(deviationFromOthers(two, 0) + deviationFromOthers(two, 1)).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe('figures for the ash', () => {
  const names = ['model', 'weighed', 'rod', 'drop'];
  const figure = fc.option(fc.record({ ash: number(0, 200), error: number(1, 30) }), { nil: undefined });

  it('give a mean only where two or more of them agree, and that mean lies between them', () => {
    fc.assert(
      fc.property(fc.tuple(figure, figure, figure, figure), (figures) => {
        const given = figures.flatMap((entry, index) => (entry === undefined ? [] : [{ ...entry, name: names[index] }]));
        const grams = (value: number) => ({ value, unit: 'g' });
        const input = Object.fromEntries(
          given.flatMap(({ name, ash, error }) => [
            [`${name}Ash`, grams(ash)],
            [`${name}AshUncertainty`, grams(error)],
          ]),
        );
        const result = registry.get('ash-consistency')?.run(input);
        if (!result?.ok) throw new Error('refused as input');
        const { verdict, bestAsh } = result.outputs as { verdict: string; bestAsh?: number };
        expect(bestAsh !== undefined).toBe(verdict === 'agree' || verdict === 'one-out');
        if (given.length < 2) expect(verdict).toBe('too-few');
        if (given.length === 2) expect(verdict).not.toBe('one-out');
        if (bestAsh === undefined) return;
        expect(bestAsh).toBeGreaterThanOrEqual(Math.min(...given.map(({ ash }) => ash)) / 1000 - 1e-12);
        expect(bestAsh).toBeLessThanOrEqual(Math.max(...given.map(({ ash }) => ash)) / 1000 + 1e-12);
      }),
      { numRuns: 200 },
    );
  });
});
