import { registry } from '@wallflow/exhaust/calculations';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cheapestPacks } from '../../../packages/exhaust/src/cleaning/batch-plan/cheapest-packs.js';
import { mixToMarks } from '../../../packages/exhaust/src/cleaning/batch-plan/mix-to-marks.js';
import { processorTime } from '../../support/processor-time.js';

const pack = fc.record({ volume: fc.integer({ min: 1, max: 12 }), price: fc.integer({ min: 0, max: 30 }) });
const packs = fc.array(pack, { minLength: 1, maxLength: 4 });

interface Combination {
  readonly cost: number;
  readonly surplus: number;
}

/** Every combination of packs up to the count of each that alone covers the need. */
function everyCover(needed: number, offered: readonly { volume: number; price: number }[]): Combination[] {
  const [first, ...others] = offered;
  if (first === undefined) return needed <= 0 ? [{ cost: 0, surplus: 0 - needed }] : [];
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
    { numRuns: 300 },
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
    { numRuns: 400 },
  );
});

it('counts decimals as decimals: three packs of 0.1 hold 0.3', () => {
  const bought = cheapestPacks(new Decimal('0.3'), [{ volume: new Decimal('0.1'), price: new Decimal('0.1') }]);
  expect(bought?.counts).toEqual([3]);
  expect(bought?.cost.toString()).toBe('0.3');
});

it('as a whole never falls short, never leaves the range, and buys as cheaply as the poured amounts can be bought', () => {
  const plan = registry.get('cleaning-batch-plan');
  const litres = (value: number) => `${value} L`;
  const onSale = (offered: readonly { volume: number; price: number }[]) =>
    offered.map(({ volume, price }) => ({ volume: litres(volume), price: String(price) }));
  const input = fc.record({
    needed: fc.integer({ min: 1, max: 12 }),
    rinse: fc.integer({ min: 0, max: 5 }),
    weakest: fc.integer({ min: 1, max: 5 }),
    concentrate: packs,
    water: packs,
    stock: fc.integer({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(input, ({ needed, rinse, weakest, concentrate, water, stock }) => {
      const result = plan?.run({
        inletVolume: litres(needed),
        fillShare: '100 %',
        passes: 1,
        reserve: '0 %',
        rinseVolume: litres(rinse),
        weakestRatio: String(weakest),
        mark: '1 L',
        concentrateAtHand: litres(stock),
        concentratePacks: onSale(concentrate),
        waterPacks: onSale(water),
      });
      if (result?.ok !== true) throw new Error('refused');
      const found = result.outputs as Record<string, number>;
      const inLitres = (key: string) => Math.round((found[key] ?? Number.NaN) * 1e6) / 1e3;
      expect(inLitres('mixMade')).toBeGreaterThanOrEqual(needed);
      expect(inLitres('waterToPour')).toBeLessThanOrEqual(weakest * inLitres('concentrateToPour'));
      const cheapest = (liquid: number, offered: typeof concentrate) => Math.min(...everyCover(liquid, offered).map(({ cost }) => cost));
      const cost = cheapest(inLitres('concentrateToPour') - stock, concentrate) + cheapest(inLitres('waterToPour') + rinse, water);
      expect(found.cost).toBe(cost);
    }),
    { numRuns: 150 },
  );
});

it('finds a plan in a moment however awkward, alike or free the packs are', () => {
  const offers: [number, number][][] = [
    [0.97, 1.03, 1.09, 1.13, 1.27, 1.31].map((litres) => [litres, 10 * litres]),
    [1, 5, 20].map((litres) => [litres, 10 * litres]),
    [0.25, 0.5, 1, 5].map((litres) => [litres, 0]),
  ];
  for (const offer of offers) {
    const packs = offer.map(([litres, price]) => ({ volume: new Decimal(litres), price: new Decimal(price.toPrecision(12)) }));
    const spent = processorTime(() => {
      const bought = cheapestPacks(new Decimal('400.3'), packs);
      expect(bought?.counts.reduce((sum, count, index) => sum + count * (offer[index]?.[0] ?? 0), 0)).toBeGreaterThanOrEqual(400.3 - 1e-9);
    });
    expect(spent).toBeLessThan(1000);
  }
});
