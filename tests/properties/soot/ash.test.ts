import { deviationFromOthers, layerThickness, plugAsh, plugShare, weightedMean } from '@wallflow/exhaust';
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
