import { registry } from '@wallflow/exhaust/calculations';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cheapestPacks } from '../../../packages/exhaust/src/cleaning/batch-plan/cheapest-packs.js';
import { type PlanAim, type PlanRequest, planBatches } from '../../../packages/exhaust/src/cleaning/batch-plan/plan.js';
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

function inDecimals(offered: readonly { volume: number; price: number }[]) {
  return offered.map(({ volume, price }) => ({ volume: new Decimal(volume), price: new Decimal(price) }));
}

it('buys enough, and no combination is cheaper or as cheap with less left over', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30 }), packs, (needed, offered) => {
      const bought = cheapestPacks(new Decimal(needed), inDecimals(offered), { left: 50_000 });
      const every = everyCover(needed, offered);
      const cost = Math.min(...every.map((one) => one.cost));
      const surplus = Math.min(...every.filter((one) => one.cost === cost).map((one) => one.surplus));
      expect(bought.cost.toNumber()).toBe(cost);
      expect(bought.surplus.toNumber()).toBe(surplus);
      const volume = bought.counts.reduce((sum, count, index) => sum + count * (offered[index]?.volume ?? 0), 0);
      expect(volume - surplus).toBe(needed);
    }),
    { numRuns: 300 },
  );
});

const cheapestCover = (needed: number, offered: readonly { volume: number; price: number }[]) =>
  Math.min(...everyCover(needed, offered).map(({ cost }) => cost));

const supply = fc.record({ atHand: fc.integer({ min: 0, max: 12 }), packs: fc.array(pack, { minLength: 0, maxLength: 3 }) });
const planInput = fc.record({
  needed: fc.integer({ min: 1, max: 24 }),
  mark: fc.integer({ min: 1, max: 3 }),
  capacity: fc.option(fc.integer({ min: 3, max: 20 }), { nil: undefined }),
  // Quarters keep the products of these ratios exact.
  weakest: fc.constantFrom(0, 0.5, 1, 1.5, 2, 3, 4, 7.5),
  strongest: fc.option(fc.constantFrom(0, 0.5, 1, 2, 3, 4), { nil: undefined }),
  mostBatches: fc.integer({ min: 1, max: 4 }),
  rinse: fc.integer({ min: 0, max: 4 }),
  concentrate: supply,
  water: supply,
});
interface PlanInput {
  readonly needed: number;
  readonly mark: number;
  readonly capacity: number | undefined;
  readonly weakest: number;
  readonly strongest: number | undefined;
  readonly mostBatches: number;
  readonly rinse: number;
  readonly concentrate: { readonly atHand: number; readonly packs: readonly { volume: number; price: number }[] };
  readonly water: PlanInput['concentrate'];
}

interface Alternative {
  readonly cost: number;
  readonly concentrate: number;
}

/** Every plan of equal batches on whole marks that is allowed and can be had, found by trying all numbers of marks. */
function everyPlan(input: PlanInput): Alternative[] {
  const { needed, mark, capacity, weakest, strongest, mostBatches, rinse, concentrate, water } = input;
  const found: Alternative[] = [];
  for (let batches = 1; batches <= mostBatches; batches += 1) {
    const most = Math.ceil(needed / (mark * batches)) + 12;
    for (let ofConcentrate = 0; ofConcentrate <= most; ofConcentrate += 1) {
      for (let ofWater = 0; ofWater <= most; ofWater += 1) {
        const marks = ofConcentrate + ofWater;
        if (marks * mark * batches < needed || (capacity !== undefined && marks * mark > capacity)) continue;
        if (ofWater > weakest * ofConcentrate || (strongest !== undefined && ofWater < strongest * ofConcentrate)) continue;
        // Without a strongest mix a mark less of concentrate must be too little.
        if (strongest === undefined && ofWater + 1 <= weakest * (ofConcentrate - 1)) continue;
        const volume = (count: number) => count * mark * batches;
        const cost =
          cheapestCover(volume(ofConcentrate) - concentrate.atHand, concentrate.packs) +
          cheapestCover(volume(ofWater) + rinse - water.atHand, water.packs);
        if (Number.isFinite(cost)) found.push({ cost, concentrate: volume(ofConcentrate) });
      }
    }
  }
  return found;
}

function asRequest(input: PlanInput): PlanRequest {
  const decimal = (value: number) => new Decimal(value);
  const supplyOf = ({ atHand, packs: offered }: PlanInput['water']) => ({ atHand: decimal(atHand), packs: inDecimals(offered) });
  return {
    needed: decimal(input.needed),
    mark: decimal(input.mark),
    capacity: input.capacity === undefined ? undefined : decimal(input.capacity),
    weakest: decimal(input.weakest),
    strongest: input.strongest === undefined ? undefined : decimal(input.strongest),
    mostBatches: input.mostBatches,
    rinse: decimal(input.rinse),
    concentrate: supplyOf(input.concentrate),
    water: supplyOf(input.water),
  };
}

it.each<PlanAim>(['least-cost', 'least-concentrate'])('never falls short, and among all plans there is no better one: %s', (aim) => {
  let plans = 0;
  let choices = 0;
  fc.assert(
    fc.property(planInput, (input) => {
      fc.pre(input.strongest === undefined || input.strongest <= input.weakest);
      const plan = planBatches(asRequest(input), aim);
      const every = everyPlan(input);
      if (typeof plan === 'string') {
        expect(every, plan).toEqual([]);
        return;
      }
      plans += 1;
      if (new Set(every.map(({ concentrate }) => concentrate)).size > 1) choices += 1;
      const poured = plan.concentrate.plus(plan.water).times(plan.batches).toNumber();
      expect(poured).toBeGreaterThanOrEqual(input.needed);
      expect(plan.concentrateInAll.toNumber()).toBe(plan.concentrate.times(plan.batches).toNumber());
      const chosen: Alternative = { cost: plan.cost.toNumber(), concentrate: plan.concentrateInAll.toNumber() };
      expect(every).toContainEqual(chosen);
      const leastCost = Math.min(...every.map(({ cost }) => cost));
      const leanest = Math.min(...every.map(({ concentrate }) => concentrate));
      const leastCostOfLeanest = Math.min(...every.filter(({ concentrate }) => concentrate === leanest).map(({ cost }) => cost));
      if (aim === 'least-cost') expect(chosen.cost).toBe(leastCost);
      else expect(chosen).toEqual({ concentrate: leanest, cost: leastCostOfLeanest });
    }),
    { numRuns: 250 },
  );
  // The inputs drawn must leave something to choose, or the comparison shows nothing.
  expect(plans).toBeGreaterThan(60);
  expect(choices).toBeGreaterThan(20);
});

it('mixes stronger when that saves a bottle of water, and not when concentrate is what is to be saved', () => {
  const request = asRequest({
    needed: 10,
    mark: 1,
    capacity: undefined,
    weakest: 4,
    strongest: 1,
    mostBatches: 1,
    rinse: 0,
    concentrate: { atHand: 5, packs: [] },
    water: { atHand: 5, packs: [{ volume: 5, price: 4 }] },
  });
  const cheapest = planBatches(request, 'least-cost');
  const leanest = planBatches(request, 'least-concentrate');
  if (typeof cheapest === 'string' || typeof leanest === 'string') throw new Error('no plan');
  expect([cheapest.concentrate, cheapest.water, cheapest.cost].map(Number)).toEqual([5, 5, 0]);
  expect([leanest.concentrate, leanest.water, leanest.cost].map(Number)).toEqual([2, 8, 4]);
});

it('counts decimals as decimals: three packs of 0.1 hold 0.3', () => {
  const bought = cheapestPacks(new Decimal('0.3'), [{ volume: new Decimal('0.1'), price: new Decimal('0.1') }], { left: 100 });
  expect(bought.counts).toEqual([3]);
  expect(bought.cost.toString()).toBe('0.3');
});

it('as a whole never falls short, never leaves the range, and no plan costs less', () => {
  const plan = registry.get('cleaning-batch-plan');
  const litres = (value: number) => `${value} L`;
  const tooStrong = (share: number, strongest: number) => share > 1 / (1 + strongest) + 1e-12;
  const onSale = (offered: readonly { volume: number; price: number }[]) =>
    offered.map(({ volume, price }) => ({ volume: litres(volume), price: String(price) }));
  const input = fc.record({
    needed: fc.integer({ min: 1, max: 12 }),
    rinse: fc.integer({ min: 0, max: 5 }),
    weakest: fc.integer({ min: 1, max: 5 }),
    spread: fc.integer({ min: 0, max: 4 }),
    concentrate: packs,
    water: packs,
    stock: fc.integer({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(input, ({ needed, rinse, weakest, spread, concentrate, water, stock }) => {
      const strongest = Math.max(0, weakest - spread);
      const result = plan?.run({
        inletVolume: litres(needed),
        fillShare: '100 %',
        passes: 1,
        reserve: '0 %',
        rinseVolume: litres(rinse),
        weakestRatio: String(weakest),
        strongestRatio: String(strongest),
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
      expect(tooStrong(found.mixedShare ?? 1, strongest)).toBe(false);
      const all = everyPlan({
        needed,
        mark: 1,
        capacity: undefined,
        weakest,
        strongest,
        mostBatches: 1,
        rinse,
        concentrate: { atHand: stock, packs: concentrate },
        water: { atHand: 0, packs: water },
      });
      expect(found.cost).toBe(Math.min(...all.map(({ cost }) => cost)));
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
      const tries = { left: 50_000 };
      const bought = cheapestPacks(new Decimal('400.3'), packs, tries);
      expect(tries.left).toBeGreaterThanOrEqual(0);
      expect(bought.counts.reduce((sum, count, index) => sum + count * (offer[index]?.[0] ?? 0), 0)).toBeGreaterThanOrEqual(400.3 - 1e-9);
    });
    expect(spent).toBeLessThan(1000);
  }
});

const job = {
  inletVolume: '800 mL',
  fillShare: '80 %',
  passes: 3,
  reserve: '5 %',
  rinseVolume: '1 L',
  weakestRatio: '1:4',
  mark: '50 mL',
  concentratePacks: [{ volume: '1 L', price: '40' }],
  waterPacks: [{ volume: '1 L', price: '1.20' }],
};
const planOf = (input: object) => registry.get('cleaning-batch-plan')?.run({ ...job, ...input });
/** Sizes without a common measure that would thin out the search, of about one price per volume. */
const awkward = [1.00001, 1.01003, 1.02007, 1.03013, 1.04009, 1.05019].map((content) => ({
  volume: `${content} L`,
  price: String(10 * content),
}));

it('ends within half a second of processor time for the most awkward inputs that it takes', () => {
  const inputs = [
    { rinseVolume: '100 L', waterPacks: [{ volume: '10 mL', price: '1.20' }] },
    {
      rinseVolume: '1000 L',
      waterPacks: [
        { volume: '10 mL', price: '1' },
        { volume: '1000 L', price: '1000000' },
      ],
    },
    { inletVolume: '1000 L', fillShare: '200 %', passes: 20, reserve: '100 %', waterPacks: awkward, concentratePacks: awkward },
    { inletVolume: '1000 L', strongestRatio: '0', mark: '0.1 mL', waterPacks: awkward, concentratePacks: awkward, mostBatches: 50 },
    { inletVolume: '20 L', strongestRatio: '1:3', mark: '1 mL', waterPacks: awkward, concentratePacks: awkward, mostBatches: 50 },
    { inletVolume: '20 L', strongestRatio: '1:3.9999999', weakestRatio: '1:4', mark: '10 L', mostBatches: 50, containerCapacity: '1000 L' },
    { inletVolume: '0.001 mL', weakestRatio: '200', strongestRatio: '200', mark: '10 L', mostBatches: 50 },
  ];
  for (const input of inputs) {
    const spent = processorTime(() => {
      const result = planOf(input);
      expect(result?.ok === true || (result?.issues.length ?? 0) > 0).toBe(true);
    });
    expect(spent, JSON.stringify(input)).toBeLessThan(500);
  }
});

it('is a plain division where one pack is on sale, however many it takes', () => {
  const result = planOf({ rinseVolume: '1000 L', waterPacks: [{ volume: '10 mL', price: '1.20' }] });
  if (result?.ok !== true) throw new Error('refused');
  const { shopping, cost } = result.outputs as { shopping: { item: string; count: number }[]; cost: number };
  // 2.0 L of mix at 1 + 4 is 450 mL with 1.6 L of water to marks; the rinse adds 1000 L.
  const water = shopping.find(({ item }) => item === 'water');
  const concentrate = shopping.find(({ item }) => item === 'concentrate');
  expect(concentrate?.count).toBe(1);
  expect(water?.count).toBe(Math.ceil((1000 + 1.6) / 0.01));
  expect(cost).toBeCloseTo(40 + 1.2 * (water?.count ?? 0), 6);
});

it('refuses a pack that nobody sells, and names the liquid whose packs are too many to try', () => {
  expect(planOf({ waterPacks: [{ volume: '0.001 mL', price: '1' }] })).toMatchObject({
    ok: false,
    issues: [{ code: 'out_of_range', path: ['waterPacks', 0, 'volume'] }],
  });
  const many = { inletVolume: '1000 L', strongestRatio: '1:1', mark: '10 mL' };
  expect(planOf({ ...many, waterPacks: awkward })).toMatchObject({ ok: false, issues: [{ code: 'no_solution', path: ['waterPacks'] }] });
  expect(planOf({ ...many, concentratePacks: awkward })).toMatchObject({
    ok: false,
    issues: [{ code: 'no_solution', path: ['concentratePacks'] }],
  });
});
