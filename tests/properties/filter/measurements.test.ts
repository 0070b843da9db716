import {
  cleanDropParts,
  compressibleDrop,
  compressibleDropParts,
  dropAtState,
  dropShares,
  filterChannels,
  fitViscousInertial,
  furthestDropAbove,
  hoseSwapVerdict,
  incompressibleDrop,
  lagVerdict,
  separateZero,
  sharesVerdict,
  slipCorrectedPermeability,
  slipFactor,
  stepResponse,
  totalDrop,
  wallPermeabilityFromDrop,
  zeroVerdict,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const options = { numRuns: 300, seed: 20_240_229 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const log = (min: number, max: number) => number(Math.log(min), Math.log(max)).map(Math.exp);

describe('fit of a viscous and an inertial part', () => {
  it('finds the parts that the points were made of', () => {
    const state = fc.record({ volumeFlow: log(0.01, 0.3), viscosity: number(1.8e-5, 4e-5), density: number(0.3, 1.2) });
    fc.assert(
      fc.property(
        log(1e8, 1e11),
        log(1e4, 1e7),
        number(-500, 500),
        fc.array(state, { minLength: 4, maxLength: 12 }),
        (a, b, zero, states) => {
          const flows = states.map((entry) => entry.volumeFlow).sort((x, y) => x - y);
          fc.pre(flows.every((flow, i) => i === 0 || flow > 1.2 * flows[i - 1]!));
          const points = states.map((entry) => ({
            ...entry,
            pressureDrop: zero + a * entry.viscosity * entry.volumeFlow + b * entry.density * entry.volumeFlow ** 2,
          }));
          const fit = fitViscousInertial(points, 100, true);
          if (fit.status !== 'fitted') throw new Error(fit.status);
          const size = Math.max(...points.map((point) => Math.abs(point.pressureDrop)));
          expect(Math.abs(fit.offset - zero)).toBeLessThan(1e-7 * size + 1e-6);
          for (const { viscosity, volumeFlow, density, pressureDrop } of points) {
            const fitted =
              fit.offset + fit.viscousCoefficient * viscosity * volumeFlow + fit.inertialCoefficient * density * volumeFlow ** 2;
            expect(Math.abs(fitted - pressureDrop)).toBeLessThan(1e-8 * size);
          }
          const [, row] = fit.covariance!;
          expect(row![1]!).toBeGreaterThan(0);
        },
      ),
      { ...options, numRuns: 100 },
    );
  });

  it('refuses one flow taken twice', () => {
    const point = { pressureDrop: 1000, volumeFlow: 0.05, viscosity: 2.5e-5, density: 0.7 };
    expect(fitViscousInertial([point, point]).status).toBe('rank_deficient');
    expect(fitViscousInertial([point], undefined, true).status).toBe('too_few_points');
  });
});

const anyState = fc.record({ volumeFlow: log(0.01, 0.3), viscosity: number(1.8e-5, 4e-5), density: number(0.3, 1.2) });

describe('drop at another state', () => {
  it('is the same at the same state and comes back on the way back', () => {
    fc.assert(
      fc.property(log(10, 1e5), anyState, anyState, fc.constantFrom(0, 1), (drop, one, other, share) => {
        expect(dropAtState(drop, one, one, share)).toBeCloseTo(drop, 6);
        expect(dropAtState(dropAtState(drop, one, other, share), other, one, share) / drop).toBeCloseTo(1, 9);
      }),
      options,
    );
  });
});

describe('compressible form', () => {
  it('is below the incompressible one, undone by its inverse, and sums from its parts', () => {
    fc.assert(
      fc.property(fc.array(log(1, 5e4), { minLength: 8, maxLength: 8 }), number(6e4, 2e5), (drops, outlet) => {
        const keys = [
          'wallDrop',
          'inletChannelDrop',
          'outletChannelDrop',
          'contractionDrop',
          'expansionDrop',
          'forchheimerDrop',
          'sootDrop',
          'ashDrop',
        ] as const;
        const parts = Object.fromEntries(keys.map((key, i) => [key, drops[i]!])) as Record<(typeof keys)[number], number>;
        const whole = totalDrop(parts);
        const drop = compressibleDrop(whole, outlet);
        expect(drop).toBeLessThan(whole);
        expect(incompressibleDrop(drop, outlet) / whole).toBeCloseTo(1, 9);
        expect(totalDrop(compressibleDropParts(parts, outlet)) / drop).toBeCloseTo(1, 9);
      }),
      options,
    );
  });
});

describe('slip', () => {
  it('never lowers a permeability with a longer free path, and vanishes in large pores', () => {
    fc.assert(
      fc.property(log(1e-8, 1e-3), log(3e-8, 3e-7), number(1, 3), (diameter, path, factor) => {
        expect(slipCorrectedPermeability(1, diameter, path, factor * path)).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(slipFactor(2 * path)).toBeCloseTo(1, 5);
      }),
      options,
    );
  });
});

describe('wall permeability from a clean drop', () => {
  it('undoes the clean drop', () => {
    const channels = filterChannels({
      cellDensity: 310000,
      wallThickness: 0.3e-3,
      frontalArea: 0.02,
      filterLength: 0.2,
      plugLength: 0.005,
      layout: 'alternate',
      inletWidthRatio: 1.2,
    })!;
    fc.assert(
      fc.property(
        log(1e-14, 1e-11),
        anyState,
        number(0, 1e7),
        number(0, 2),
        (wallPermeability, flow, forchheimerCoefficient, entranceExitCoefficient) => {
          const wall = { forchheimerCoefficient, entranceExitCoefficient };
          const drop = totalDrop(cleanDropParts(channels, flow, { ...wall, wallPermeability }));
          const found = wallPermeabilityFromDrop(drop, channels, flow, wall).wallPermeability!;
          expect(found / wallPermeability).toBeCloseTo(1, 6);
        },
      ),
      options,
    );
  });
});

describe('sensor tests', () => {
  it('a hose swap gives back the drop and the zero error', () => {
    fc.assert(
      fc.property(number(-1e4, 1e4), number(-1e3, 1e3), (drop, zero) => {
        const found = separateZero(drop + zero, -drop + zero);
        expect(found.pressureDrop).toBeCloseTo(drop, 6);
        expect(found.zeroError).toBeCloseTo(zero, 6);
      }),
      options,
    );
  });

  it('never calls a hose swap plausible with a zero error above what is accepted', () => {
    fc.assert(
      fc.property(number(-1e4, 1e4), number(-1e4, 1e4), log(10, 1000), (normal, swapped, allowed) => {
        if (hoseSwapVerdict(normal, swapped, allowed) !== 'plausible') return;
        expect(Math.abs(normal + swapped) / 2).toBeLessThanOrEqual(allowed);
        expect(normal).toBeGreaterThan(swapped);
      }),
      options,
    );
  });

  it('a hose swap and a zero check judge the same zero error alike', () => {
    fc.assert(
      fc.property(number(-2e4, 2e4), number(-2e4, 2e4), log(10, 1000), (normal, swapped, allowed) => {
        const verdict = hoseSwapVerdict(normal, swapped, allowed);
        const zero = zeroVerdict((normal + swapped) / 2, allowed);
        if (zero === 'repair') expect(['unchanged', 'one-sided', 'repair']).toContain(verdict);
        if (verdict === 'plausible') expect(zero).toBe('accepted');
        if (verdict === 'zero-error') expect(zero).toBe('take-off');
      }),
      options,
    );
  });

  it('a swap that changes nothing is never used', () => {
    fc.assert(
      fc.property(number(-3e4, 3e4), log(10, 1000), number(-1, 1), (reading, allowed, part) => {
        const verdict = hoseSwapVerdict(reading, reading + 1.99 * part * allowed, allowed);
        expect(['unchanged', 'no-signal']).toContain(verdict);
      }),
      options,
    );
  });

  it('a lag is only accepted when it is quick enough, however short or long the record', () => {
    let accepted = 0;
    fc.assert(
      fc.property(log(0.05, 100), log(0.1, 10), log(0.01, 1), fc.integer({ min: 4, max: 600 }), (tau, allowed, interval, count) => {
        const after = Array.from({ length: count }, (_, i) => 10 + 50 * (1 - Math.exp((-(i + 1) * interval) / tau)));
        const response = stepResponse([10], after);
        if (response === undefined) return;
        const verdict = lagVerdict(response, count, interval, allowed);
        // What is left of the step at the end of a steady record, and straight lines between readings, are worth a few per cent.
        if (verdict === 'accepted') {
          accepted += 1;
          expect(tau).toBeLessThan(1.1 * allowed + 0.5 * interval);
        }
        if (verdict === 'slow') expect(tau).toBeGreaterThan(0.95 * allowed - interval);
      }),
      { ...options, numRuns: 2000 },
    );
    expect(accepted).toBeGreaterThan(100);
  });

  it('the response to a step is the time constant of a first-order lag', () => {
    fc.assert(
      fc.property(number(5, 40), number(-5e3, 5e3), log(10, 1e4), (tau, level, change) => {
        const after = Array.from({ length: Math.ceil(25 * tau) }, (_, i) => level + change * (1 - Math.exp(-(i + 1) / tau)));
        const found = stepResponse([level, level], after);
        expect(Math.abs(found!.responseIntervals / tau - 1)).toBeLessThan(0.02);
      }),
      { ...options, numRuns: 100 },
    );
  });

  it('shares and rest make the whole', () => {
    fc.assert(
      fc.property(log(10, 1e5), fc.array(log(1, 1e5), { minLength: 1, maxLength: 8 }), (total, parts) => {
        const { shares, rest, largest } = dropShares(total, parts);
        expect(shares.reduce((sum, share) => sum + share * total, rest) / total).toBeCloseTo(1, 9);
        expect(parts[largest]).toBe(Math.max(...parts));
      }),
      options,
    );
  });

  it('blames no part beyond the whole, and none where more is unexplained than any part drops', () => {
    fc.assert(
      fc.property(
        log(10, 1e5),
        fc.array(fc.tuple(log(1, 1e5), fc.option(log(1, 1e5), { nil: undefined })), { minLength: 1, maxLength: 8 }),
        log(1, 1e3),
        (total, parts, error) => {
          const drops = parts.map(([drop]) => drop);
          const normals = parts.map(([, normal]) => normal);
          const shares = dropShares(total, drops);
          const verdict = sharesVerdict(shares, drops, normals, error);
          if (drops.reduce((sum, drop) => sum + drop, 0) > total + 2 * error * Math.sqrt(drops.length + 1))
            expect(verdict).toBe('contradict');
          else if (shares.rest > Math.max(...drops)) expect(verdict).toBe('rest');
          if (verdict === 'none-above')
            for (const [drop, normal] of parts) expect(drop).toBeLessThanOrEqual((normal ?? -Infinity) + 2 * error + 1e-9 * drop);
          const worst = furthestDropAbove(drops, normals, error);
          if (worst !== undefined) expect(drops[worst]!).toBeGreaterThan(normals[worst]! + 2 * error);
          if (verdict === 'part-above') expect(worst).toBeDefined();
        },
      ),
      options,
    );
  });
});
