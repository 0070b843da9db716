import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cheapestPacks } from '../../../packages/exhaust/src/cleaning/batch-plan/cheapest-packs.js';
import { mixToMarks } from '../../../packages/exhaust/src/cleaning/batch-plan/mix-to-marks.js';

const pack = fc.record({ volume: fc.integer({ min: 1, max: 12 }), price: fc.integer({ min: 0, max: 30 }) });
const packs = fc.array(pack, { minLength: 1, maxLength: 4 });

interface Combination {
  readonly cost: number;
  readonly surplus: number;
}

/** Every combination of packs up to the count of each that alone covers the need. */
function everyCover(needed: number, offered: readonly { volume: number; price: number }[]): Combination[] {
  const [first, ...others] = offered;
  if (first === undefined) return needed <= 0 ? [{ cost: 0, surplus: -needed }] : [];
  const most = Math.max(0, Math.ceil(needed / first.volume));
  return Array.from({ length: most + 1 }, (_, count) =>
    everyCover(needed - count * first.volume, others).map(({ cost, surplus }) => ({ cost: cost + count * first.price, surplus })),
  ).flat();
}

it('buys enough, and no combination is cheaper or as cheap with less left over', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30 }), packs, (needed, offered) => {
      const bought = cheapestPacks(
        new Decimal(needed),
        offered.map(({ volume, price }) => ({ volume: new Decimal(volume), price: new Decimal(price) })),
      );
      const every = everyCover(needed, offered);
      const cost = Math.min(...every.map((one) => one.cost));
      const surplus = Math.min(...every.filter((one) => one.cost === cost).map((one) => one.surplus));
      expect(bought?.cost.toNumber()).toBe(cost);
      expect(bought?.surplus.toNumber()).toBe(surplus);
      const volume = bought?.counts.reduce((sum, count, index) => sum + count * (offered[index]?.volume ?? 0), 0) ?? 0;
      expect(volume - surplus).toBe(needed);
    }),
    { seed: 23, numRuns: 300 },
  );
});

const request = fc.record({
  needed: fc.integer({ min: 1, max: 40 }),
  mark: fc.integer({ min: 1, max: 5 }),
  capacity: fc.option(fc.integer({ min: 5, max: 30 }), { nil: undefined }),
  weakest: fc.constantFrom(0, 0.5, 1, 1.5, 2, 3, 4, 7.5, 10),
  strongest: fc.option(fc.constantFrom(0, 0.5, 1, 2, 3, 4), { nil: undefined }),
});

it('mixes enough, strong enough, on the marks, and no mix of as many batches takes less', () => {
  fc.assert(
    fc.property(request, ({ needed, mark, capacity, weakest, strongest }) => {
      fc.pre(strongest === undefined || strongest <= weakest);
      const mix = mixToMarks({
        needed: new Decimal(needed),
        mark: new Decimal(mark),
        capacity: capacity === undefined ? undefined : new Decimal(capacity),
        weakest: new Decimal(weakest),
        strongest: strongest === undefined ? undefined : new Decimal(strongest),
      });
      // Counted in marks; quarters keep the products of these ratios exact.
      const fits = (concentrate: number, water: number, batches: number) =>
        (concentrate + water) * mark * batches >= needed &&
        (capacity === undefined || (concentrate + water) * mark <= capacity) &&
        water <= weakest * concentrate &&
        (strongest === undefined || water >= strongest * concentrate);
      const every = (batches: number) => {
        const found: { concentrate: number; water: number }[] = [];
        for (let concentrate = 0; concentrate <= 60; concentrate += 1)
          for (let water = 0; water <= 60; water += 1) if (fits(concentrate, water, batches)) found.push({ concentrate, water });
        return found;
      };
      if (mix === undefined) {
        expect(every(1).concat(every(2), every(40))).toEqual([]);
        return;
      }
      const poured = { concentrate: mix.concentrate.toNumber() / mark, water: mix.water.toNumber() / mark };
      expect(fits(poured.concentrate, poured.water, mix.batches)).toBe(true);
      const others = every(mix.batches);
      expect(Math.min(...others.map(({ concentrate }) => concentrate))).toBe(poured.concentrate);
      expect(Math.min(...others.map(({ concentrate, water }) => concentrate + water))).toBe(poured.concentrate + poured.water);
      if (mix.batches > 1) expect(every(mix.batches - 1)).toEqual([]);
    }),
    { seed: 29, numRuns: 400 },
  );
});

it('counts decimals as decimals: three packs of 0.1 hold 0.3', () => {
  const bought = cheapestPacks(new Decimal('0.3'), [{ volume: new Decimal('0.1'), price: new Decimal('0.1') }]);
  expect(bought?.counts).toEqual([3]);
  expect(bought?.cost.toString()).toBe('0.3');
});
