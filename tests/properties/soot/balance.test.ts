import {
  bai2016,
  bissettShadman1985,
  drivePattern,
  patternMap,
  peakMass,
  preventingStretch,
  reachTrigger,
  type SootKinetics,
  settledSootMass,
  sootBalance,
  sootOxidationRate,
} from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const logNumber = (min: number, max: number) => number(Math.log(min), Math.log(max)).map(Math.exp);
const kinetics: fc.Arbitrary<SootKinetics> = fc.constantFrom(bai2016, bissettShadman1985);
const stretch = fc.record({
  duration: logNumber(10, 20_000),
  speed: number(0, 40),
  sootFlow: number(0, 5e-6),
  rate: fc.oneof(fc.constant(0), logNumber(1e-9, 1e-2)),
});
const pattern = fc.array(stretch, { minLength: 1, maxLength: 6 });

describe('soot balance', () => {
  it('closes: what was there and came in is there or burnt, and nothing is negative', () => {
    const rate = fc.oneof(fc.constant(0), logNumber(1e-14, 100));
    fc.assert(
      fc.property(number(0, 0.5), number(0, 1e-4), rate, logNumber(1e-3, 1e6), (initialMass, sootFlow, k, duration) => {
        const { finalMass, deposited, oxidised } = sootBalance({ initialMass, sootFlow, rate: k, duration });
        expect(Math.min(finalMass, deposited, oxidised)).toBeGreaterThanOrEqual(0);
        const total = initialMass + deposited;
        expect(Math.abs(finalMass + oxidised - total)).toBeLessThanOrEqual(1e-12 * total);
        if (k === 0) expect(oxidised).toBe(0);
      }),
    );
  });

  it('burns nothing without oxidants, and never slower when hotter or richer in them', () => {
    fc.assert(
      fc.property(
        kinetics,
        number(300, 1500),
        number(0, 200),
        number(0, 0.2),
        number(0, 2e-3),
        (laws, temperature, warmer, oxygen, no2) => {
          expect(sootOxidationRate(laws, { temperature, oxygen: 0, nitrogenDioxide: 0 }).total).toBe(0);
          const here = sootOxidationRate(laws, { temperature, oxygen, nitrogenDioxide: no2 }).total;
          expect(sootOxidationRate(laws, { temperature: temperature + warmer, oxygen, nitrogenDioxide: no2 }).total).toBeGreaterThanOrEqual(
            here,
          );
          expect(sootOxidationRate(laws, { temperature, oxygen: oxygen + 0.01, nitrogenDioxide: no2 }).total).toBeGreaterThanOrEqual(here);
          expect(sootOxidationRate(laws, { temperature, oxygen, nitrogenDioxide: no2 + 1e-5 }).total).toBeGreaterThanOrEqual(here);
        },
      ),
    );
  });
});

describe('driving pattern', () => {
  it('gives the same whether a stretch is driven whole or in two parts', () => {
    fc.assert(
      fc.property(stretch, number(0.01, 0.99), number(0, 0.1), (whole, share, mass) => {
        const start = { time: 0, distance: 0, mass };
        const once = drivePattern([whole], start).at(-1);
        const parts = [
          { ...whole, duration: share * whole.duration },
          { ...whole, duration: (1 - share) * whole.duration },
        ];
        const twice = drivePattern(parts, start).at(-1);
        expect(twice?.mass).toBeCloseTo(once?.mass ?? Number.NaN, 12);
        expect(twice?.distance).toBeCloseTo(once?.distance ?? Number.NaN, 6);
      }),
    );
  });

  it('is a straight line in the mass before it, and keeps the settled mass', () => {
    fc.assert(
      fc.property(pattern, number(0, 0.1), (driven, mass) => {
        const { keep, add } = patternMap(driven);
        const after = drivePattern(driven, { time: 0, distance: 0, mass }).at(-1)?.mass ?? Number.NaN;
        expect(Math.abs(after - (keep * mass + add))).toBeLessThanOrEqual(1e-12 * (mass + add) + 1e-300);
        const settled = settledSootMass(driven);
        if (settled === undefined) return;
        const again = drivePattern(driven, { time: 0, distance: 0, mass: settled }).at(-1)?.mass ?? Number.NaN;
        expect(Math.abs(again - settled)).toBeLessThanOrEqual(1e-9 * settled);
      }),
    );
  });

  it('reaches the trigger when it says so, and not before', () => {
    fc.assert(
      fc.property(pattern, number(0, 0.02), number(0.001, 0.03), (driven, mass, above) => {
        const trigger = mass + above;
        const reached = reachTrigger(driven, mass, trigger);
        const settled = settledSootMass(driven);
        if (reached === undefined) {
          if (settled !== undefined)
            expect(Math.max(peakMass(driven, settled), peakMass(driven, mass))).toBeLessThanOrEqual(trigger * (1 + 1e-9));
          return;
        }
        const { duration } = patternMap(driven);
        const passes = Math.floor(reached.time / duration);
        if (passes > 2000) return;
        let state = { time: 0, distance: 0, mass };
        for (let pass = 0; pass < passes; pass += 1) {
          expect(peakMass(driven, state.mass)).toBeLessThanOrEqual(trigger * (1 + 1e-9));
          state = drivePattern(driven, state).at(-1) ?? state;
        }
        let left = reached.time - state.time;
        for (const part of driven) {
          const time = Math.min(left, part.duration);
          if (time > 0) state = drivePattern([{ ...part, duration: time }], state).at(-1) ?? state;
          left -= time;
        }
        expect(Math.abs(state.mass / trigger - 1)).toBeLessThanOrEqual(1e-6);
      }),
    );
  });

  it('needs no regeneration once the preventing stretch is driven, and would without it', () => {
    const hot = { speed: 30, sootFlow: 1e-6, rate: 1e-3 };
    fc.assert(
      fc.property(pattern, number(0.005, 0.05), (driven, trigger) => {
        const needed = preventingStretch(driven, hot, trigger, 86_400);
        if (needed === undefined) return;
        expect(reachTrigger([...driven, { ...hot, duration: needed * (1 + 1e-6) + 1e-6 }], 0, trigger * (1 + 1e-6))).toBeUndefined();
        if (needed > 1) expect(reachTrigger([...driven, { ...hot, duration: 0.9 * needed }], 0, trigger)).toBeDefined();
      }),
      { numRuns: 60 },
    );
  });
});
