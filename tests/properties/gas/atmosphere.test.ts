import { geopotentialAltitude, standardAltitude, standardDensity, standardPressure } from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const altitude = fc
  .double({ min: -1000, max: 11000, noNaN: true, noDefaultInfinity: true })
  .map((height) => Math.round(height * 1e6) / 1e6);

describe('standard atmosphere', () => {
  it('gives back the altitude from its pressure', () => {
    fc.assert(
      fc.property(altitude, (height) => {
        expect(Math.abs(standardAltitude(standardPressure(height)) - height)).toBeLessThan(1e-6);
      }),
    );
  });

  it('is thinner higher up', () => {
    fc.assert(
      fc.property(altitude, fc.double({ min: 1, max: 500, noNaN: true }), (height, step) => {
        fc.pre(height + step <= 11000);
        expect(standardPressure(height + step)).toBeLessThan(standardPressure(height));
        expect(standardDensity(height + step)).toBeLessThan(standardDensity(height));
      }),
    );
  });

  it('has a geopotential altitude that is never above the geometric one, and 0.16 m below it at 1000 m', () => {
    fc.assert(
      fc.property(altitude, (height) => {
        expect(geopotentialAltitude(height)).toBeLessThanOrEqual(height);
      }),
    );
    // US Standard Atmosphere 1976, Eq. 18: 6356766 × 1000 / 6357766.
    expect(geopotentialAltitude(1000)).toBeCloseTo(999.8427, 4);
  });
});
