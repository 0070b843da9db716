import {
  absorptionFromOpacity,
  freeAcceleration,
  freshAirFor,
  leakArea,
  leakShare,
  opacityFromAbsorption,
  particleVerdict,
  roomFractionAfter,
  steadyRoomFraction,
} from '@wallflow/exhaust';
import { registry } from '@wallflow/exhaust/calculations';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

describe('opacity', () => {
  it('comes back after there and back, over any path', () => {
    fc.assert(
      fc.property(number(0, 0.99), number(0.05, 2), (opacity, path) => {
        expect(opacityFromAbsorption(absorptionFromOpacity(opacity, path), path)).toBeCloseTo(opacity, 12);
      }),
    );
  });

  it('adds along a path as clear shares multiply', () => {
    fc.assert(
      fc.property(number(0, 10), number(0.05, 1), number(0.05, 1), (k, a, b) => {
        const clear = (path: number) => 1 - opacityFromAbsorption(k, path);
        expect(clear(a) * clear(b)).toBeCloseTo(clear(a + b), 12);
      }),
    );
  });
});

describe('free acceleration', () => {
  it('has its mean between the readings that count, and a first reading that does not count changes nothing', () => {
    fc.assert(
      fc.property(fc.array(number(0, 5), { minLength: 4, maxLength: 10 }), number(0, 5), (readings, first) => {
        const found = freeAcceleration(readings, 'mean-of-three');
        if (found === undefined) throw new Error('refused');
        expect(found.mean).toBeGreaterThanOrEqual(Math.min(...found.counted) - 1e-12);
        expect(found.mean).toBeLessThanOrEqual(Math.max(...found.counted) + 1e-12);
        expect(freeAcceleration([first, ...readings], 'mean-of-three')).toEqual(found);
      }),
    );
  });
});

describe('leak', () => {
  it('finds the share that made the count', () => {
    fc.assert(
      fc.property(number(0, 1), number(0.5, 0.9999), (share, soundEfficiency) => {
        const penetration = share + (1 - share) * (1 - soundEfficiency);
        expect(leakShare({ penetration, soundEfficiency })).toBeCloseTo(share, 9);
      }),
    );
  });

  it('is smaller where more pressure drives the same flow', () => {
    fc.assert(
      fc.property(number(1e-6, 1), number(10, 1e4), number(1.01, 5), (leakFlow, pressureDrop, factor) => {
        const hole = (pressure: number) => leakArea({ leakFlow, pressureDrop: pressure, density: 0.8, dischargeCoefficient: 0.61 });
        expect(hole(pressureDrop * factor)).toBeCloseTo(hole(pressureDrop) / Math.sqrt(factor), 12);
      }),
    );
  });
});

describe('particle number', () => {
  it('is never below the limit where the upper end of its uncertainty is above', () => {
    fc.assert(
      fc.property(number(0, 1e12), number(0, 0.9), number(1e10, 1e12), (mean, uncertainty, limit) => {
        const verdict = particleVerdict(mean, uncertainty, limit);
        if (mean * (1 + uncertainty) > limit) expect(verdict).not.toBe('below');
        if (mean * (1 - uncertainty) <= limit) expect(verdict).not.toBe('above');
      }),
    );
  });
});

describe('workshop air', () => {
  it('never gets worse than its steady value, and the fresh air that is said to be enough is', () => {
    fc.assert(
      fc.property(
        number(1e-3, 0.1),
        number(1e-5, 1e-2),
        number(1e-3, 1),
        number(10, 1e4),
        number(0, 1e5),
        (exhaustFlow, exhaustFraction, freshAirFlow, volume, time) => {
          const room = { exhaustFlow, exhaustFraction, freshAirFlow };
          expect(roomFractionAfter(room, volume, time)).toBeLessThanOrEqual(steadyRoomFraction(room) * (1 + 1e-12));
          const needed = freshAirFor(exhaustFlow, exhaustFraction, 1e-6);
          expect(steadyRoomFraction({ ...room, freshAirFlow: needed })).toBeLessThanOrEqual(1e-6 * (1 + 1e-9));
        },
      ),
    );
  });
});

describe('smoke limit', () => {
  const calculation = registry.get('smoke-limit');
  const verdict = (input: Record<string, unknown>) => {
    const result = calculation?.run(input);
    if (!result?.ok) throw new Error('refused as input');
    return (result.outputs as { verdict: string }).verdict;
  };
  const vehicle = {
    regime: fc.constantFrom('eu', 'uk', 'california'),
    firstUseYear: fc.integer({ min: 1980, max: 2026 }),
  };
  const known = {
    firstUseMonth: fc.integer({ min: 1, max: 12 }),
    engine: fc.constantFrom('turbocharged', 'aspirated'),
    levelThreeRetrofit: fc.boolean(),
    filterFitted: fc.constantFrom('yes', 'no'),
    visibleSmoke: fc.constantFrom('yes', 'no'),
    emissionClass: fc.constantFrom('older', 'four-or-five', 'six'),
  };
  /** Euro 4 was on sale from 2005 and Euro 6 from 2013. */
  const onSale = ({ firstUseYear, emissionClass }: { firstUseYear: number; emissionClass: string }) =>
    emissionClass === 'older' || firstUseYear >= (emissionClass === 'six' ? 2013 : 2005);
  const readings = {
    absorptionReading: number(0, 5).map((value) => ({ value, unit: '1/m' })),
    opacityReading: number(0, 1).map((value) => ({ value, unit: '1' })),
  };

  it('passes with something unknown only what every answer would pass', () => {
    fc.assert(
      fc.property(fc.record({ ...vehicle, ...known, ...readings }).filter(onSale), fc.subarray(Object.keys(known)), (input, left) => {
        const lacking = Object.fromEntries(Object.entries(input).filter(([key]) => !left.includes(key)));
        if (verdict(lacking) === 'meets') expect(verdict(input)).toBe('meets');
      }),
      { numRuns: 400 },
    );
  });
});
