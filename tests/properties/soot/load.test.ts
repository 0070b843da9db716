import { sootLoadFrom, sootLoadIn } from '@wallflow/exhaust';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

describe('soot load', () => {
  it('comes back unchanged from every way of stating it', () => {
    fc.assert(
      fc.property(
        positive(0.01, 30),
        positive(1e-3, 0.1),
        positive(300, 1500),
        positive(1, 10),
        positive(1, 3),
        (load, filterVolume, area, trigger, factor) => {
          const reference = { filterVolume, filtrationAreaPerVolume: area, triggerLoad: trigger, limitLoad: factor * trigger };
          const stated = sootLoadIn(load, reference);
          const back = [
            sootLoadFrom('mass', stated.mass, reference),
            sootLoadFrom('surface-load', stated.surfaceLoad ?? Number.NaN, reference),
            sootLoadFrom('percent-of-trigger', stated.fractionOfTrigger ?? Number.NaN, reference),
            sootLoadFrom('percent-of-limit', stated.fractionOfLimit ?? Number.NaN, reference),
          ];
          for (const value of back) expect(value).toBeCloseTo(load, 10);
          // The same load is a smaller share of the limit than of the trigger.
          expect(stated.fractionOfLimit).toBeLessThanOrEqual(stated.fractionOfTrigger ?? 0);
        },
      ),
    );
  });
});
