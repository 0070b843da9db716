import * as wf from '@wallflow/calculation';
import { dilutionRatio, fraction, money, time, volume } from '@wallflow/units';
import { cautions } from '../../cautions.js';
import { exact } from '../exact-volume.js';
import { dilutionPractice, fillPractice, leastCostCover, partsArithmetic } from '../sources.js';
import type { Pack, Purchase } from './cheapest-packs.js';
import { type NoPlan, type PlanRequest, planBatches, shopsFor } from './plan.js';

const volumeUnits = ['mL', 'L', 'gal_US', 'gal_imp'] as const;
const volumeOutput = (symbol: string, label: string) => wf.quantityOutput(volume, { symbol, label, digits: 4, units: [...volumeUnits] });
// Marks are decimal facts: they are shown whole, however coarse the other inputs are.
const volumeToMark = (symbol: string, label: string) =>
  wf.quantityOutput(volume, { symbol, label, digits: 8, leastDigits: 5, units: [...volumeUnits] });
const amount = (symbol: string, label: string, example: string, description?: string) =>
  wf.quantity(volume, {
    symbol,
    label,
    ...(description === undefined ? {} : { description }),
    range: '0 mL < x <= 1000 L',
    example,
    units: [...volumeUnits],
  });
const atHand = (symbol: string, label: string, example: string) =>
  wf.quantity(volume, {
    symbol,
    label,
    range: '0 mL <= x <= 1000 L',
    example,
    units: [...volumeUnits],
    default: ['0 mL', 'assumed: nothing at hand'],
  });
const cost = (symbol: string, label: string) =>
  wf.quantityOutput(money, { symbol, label: `${label}, in your currency`, digits: 8, leastDigits: 8 });
const packs = (label: string, description: string, example: { volume: string; price: string }[]) =>
  wf.listOrNone(
    {
      volume: wf.quantity(volume, {
        symbol: 'V',
        label: 'Content of one',
        range: '10 mL <= x <= 1000 L',
        example: '1 L',
        units: [...volumeUnits],
      }),
      price: wf.quantity(money, { symbol: 'k', label: 'Price of one, in your currency', range: '0 <= x <= 1000000', example: '20.00' }),
    },
    { label, description, max: 6, example },
  );

const inputs = {
  inletVolume: amount('V_i', 'Open volume of the inlet channels', '2.0 L', 'From the geometry of the filter; its inlet side only.'),
  fillShare: wf.quantity(fraction, {
    symbol: 'f',
    label: 'Fill per pass, share of the open inlet volume',
    range: '0 < x <= 200 %',
    usual: ['30 %', '100 %', 'common practice, no source'],
    default: ['80 %', 'common practice, no source'],
  }),
  passes: wf.count({ symbol: 'p', label: 'Passes', min: 1, max: 20, default: [3, 'common practice, no source: 2 to 4'] }),
  reserve: wf.quantity(fraction, {
    symbol: 's',
    label: 'Reserve for spills and what stays in hoses',
    range: '0 <= x <= 100 %',
    default: ['5 %', 'common practice, no source'],
  }),
  rinseVolume: wf.quantity(volume, {
    symbol: 'V_r',
    label: 'Demineralised water to rinse with',
    range: '0 <= x <= 1000 L',
    units: [...volumeUnits],
    default: ['1 L', 'common practice, no source: 0.5 to 1 L'],
  }),
  weakestRatio: wf.quantity(dilutionRatio, {
    symbol: 'n_w',
    label: 'Weakest mix that will do, parts of water to one of concentrate',
    description: 'As the label says it: 1:4 is one part of concentrate and four of water.',
    range: '0 <= x <= 200',
    usual: ['1', '20', 'on the vehicle 1:1 to 1:4 is usual, in a bath up to 1:20'],
    example: '1:5',
  }),
  strongestRatio: wf.optional(
    wf.quantity(dilutionRatio, {
      symbol: 'n_s',
      label: 'Strongest mix that is allowed',
      description: 'Between the two the plan may choose what is cheapest. Leave blank for a mix as weak as the marks allow.',
      range: '0 <= x <= 200',
      example: '1:4',
    }),
  ),
  mark: wf.quantity(volume, {
    symbol: 'g',
    label: 'Graduation of the jug',
    description: 'Volume between two marks.',
    range: '0.1 mL <= x <= 10 L',
    example: '50 mL',
    units: ['mL', 'L', 'floz_US', 'floz_imp'],
  }),
  containerCapacity: wf.optional(amount('V_k', 'Capacity of the mixing container', '5 L', 'Leave blank to mix everything at once.')),
  mostBatches: wf.optional(
    wf.count({
      symbol: 'b_m',
      label: 'Maximum number of batches',
      description: 'Smaller batches can meet the marks better. Leave blank for as few as possible.',
      min: 1,
      max: 50,
      example: 2,
    }),
  ),
  aim: wf.choice({
    label: 'Minimise',
    options: { 'least-cost': 'the cost of the shopping', 'least-concentrate': 'the concentrate used' },
    default: ['least-cost', 'assumed: what is spent now counts'],
  }),
  concentrateAtHand: atHand('V_{c,0}', 'Concentrate at hand', '150 mL'),
  waterAtHand: atHand('V_{w,0}', 'Demineralised water at hand', '0 L'),
  concentratePacks: packs('Packs of concentrate on sale', 'Content and price of each size that can be bought.', [
    { volume: '1.5 L', price: '31.00' },
    { volume: '5 L', price: '94.00' },
  ]),
  waterPacks: packs('Packs of demineralised water on sale', 'Content and price of each size that can be bought.', [
    { volume: '1 L', price: '1.20' },
    { volume: '5 L', price: '4' },
  ]),
  shelfLife: wf.optional(
    wf.quantity(time, {
      symbol: 't_m',
      label: 'How long the mix keeps',
      description: 'From the label or the data sheet; diluted mixes often keep for days only.',
      range: '0 h < x <= 5 year',
      example: '7 d',
      units: ['d', 'h', 'week', 'month'],
    }),
  ),
  nextJobIn: wf.optional(
    wf.quantity(time, {
      symbol: 't_j',
      label: 'Time until the next job that can use it',
      range: '0 h <= x <= 5 year',
      example: '2 d',
      units: ['d', 'h', 'week', 'month'],
    }),
  ),
};

function leftoverUse(left: number, shelfLife: number | undefined, nextJobIn: number | undefined) {
  if (left === 0) return 'none' as const;
  if (shelfLife === undefined || nextJobIn === undefined) return 'unknown' as const;
  return nextJobIn <= shelfLife ? ('keep' as const) : ('discard' as const);
}

interface OnSale {
  readonly volume: number;
  readonly price: number;
}

function exactPacks(offered: readonly OnSale[]): Pack[] {
  return offered.map(({ volume: content, price }) => ({ volume: exact(content), price: exact(price) }));
}

function shoppingRows(item: 'concentrate' | 'water', { counts }: Purchase, offered: readonly OnSale[]) {
  return offered.flatMap((pack, row) => {
    const many = counts[row] ?? 0;
    return many === 0 ? [] : [{ item, pack: pack.volume, count: many, price: pack.price, cost: exact(pack.price).times(many).toNumber() }];
  });
}

const noPlanTexts: Readonly<Record<NoPlan, readonly [text: string, path: string]>> = {
  'small-container': ['the container is too small for so few batches', 'mostBatches'],
  'coarse-marks': [
    'no whole number of marks gives a strength in that range: take a finer jug, a larger container, or a wider range',
    'mark',
  ],
  'too-many-ways-concentrate': [
    'there are too many ways to buy the packs of concentrate: leave out some sizes, or narrow the range of strengths',
    'concentratePacks',
  ],
  'too-many-ways-water': [
    'there are too many ways to buy the packs of water: leave out some sizes, or narrow the range of strengths',
    'waterPacks',
  ],
  'not-enough-concentrate': ['more concentrate is needed than is at hand, and no pack to buy is given', 'concentratePacks'],
  'not-enough-water': ['more water is needed than is at hand, and no pack to buy is given', 'waterPacks'],
};

function noPlan(why: NoPlan) {
  const [text, path] = noPlanTexts[why];
  return wf.noSolution(text, [path]);
}

export const cleaningBatchPlanCalculation = wf.defineCalculation({
  id: 'cleaning-batch-plan',
  subject: 'cleaning',
  title: 'What to buy and what to pour for a clean',
  purpose: 'Which packs to buy, and how much to pour to which mark, so that the mix is enough, strong enough and as cheap as possible?',
  keywords: 'shopping list, packs, containers, marks, waste, cost, batch',
  method: 'whole marks by decimal arithmetic, the best of all plans by complete search',
  inputs,
  example: { containerCapacity: '5 L', strongestRatio: '1:4', shelfLife: '7 d', nextJobIn: '2 d' },
  intermediates: {
    mixNeeded: volumeOutput('V_n', 'Mix that is needed'),
    concentrateMarks: wf.countOutput({ symbol: 'N_c', label: 'Marks of concentrate' }),
    waterMarks: wf.countOutput({ symbol: 'N_w', label: 'Marks of water' }),
    concentrateInAll: volumeToMark('V_c', 'Concentrate in all batches'),
    waterInAll: volumeOutput('V_w', 'Demineralised water in all batches and rinse'),
    concentrateCost: cost('k_c', 'Cost of the concentrate to buy'),
    waterCost: cost('k_w', 'Cost of the water to buy'),
    leastCost: cost('k_0', 'Cost of the cheapest plan'),
    leastConcentrate: volumeToMark('V_{c,m}', 'Concentrate of the plan that uses least of it'),
  },
  outputs: {
    batches: wf.countOutput({ symbol: 'b', label: 'Batches' }),
    concentrateToPour: volumeToMark('V_{c,b}', 'Concentrate to pour, each batch'),
    waterToPour: volumeToMark('V_{w,b}', 'Water to pour, each batch'),
    mixedRatio: wf.optional(
      wf.quantityOutput(dilutionRatio, { symbol: 'n', label: 'Parts of water to one of concentrate, as poured', digits: 4 }),
    ),
    mixedShare: wf.quantityOutput(fraction, { symbol: 'c', label: 'Share of concentrate, as poured', digits: 4, units: ['%'] }),
    mixMade: volumeToMark('V_m', 'Finished mix'),
    mixLeft: volumeOutput('V_l', 'Mix left over, once the reserve is used up'),
    shopping: wf.tableOutput({
      label: 'Shopping list',
      columns: {
        item: {
          type: 'choice',
          label: 'What',
          options: { concentrate: 'concentrate', water: 'demineralised water' },
          optional: false,
        },
        pack: wf.quantityOutput(volume, { symbol: 'V', label: 'Pack', digits: 6, units: ['L', 'mL', 'gal_US'] }),
        count: wf.countOutput({ symbol: 'N', label: 'How many' }),
        price: cost('k_1', 'Price of one'),
        cost: cost('k', 'Cost'),
      },
    }),
    concentrateLeft: volumeOutput('V_{c,l}', 'Concentrate left in the packs'),
    waterLeft: volumeOutput('V_{w,l}', 'Water left in the packs'),
    leftover: wf.choiceOutput({
      label: 'Mix that is left',
      options: {
        none: 'nothing is left',
        keep: 'keep it for the next job: it keeps until then',
        discard: 'do not keep it: it expires before the next job. Dispose of it as waste',
        unknown: 'not known: enter how long it keeps and when the next job is, or look at the label',
      },
    }),
    cost: cost('k', 'Cost of the shopping'),
  },
  answer: 'concentrateToPour',
  steps: [
    wf.formula('mixNeeded', 'inletVolume * fillShare * passes * (1 + reserve)', fillPractice),
    wf.found(
      'batches',
      ['not known(containerCapacity) or (concentrateMarks + waterMarks) * mark <= containerCapacity'],
      partsArithmetic,
      undefined,
      'Equal batches that the container holds.',
    ),
    wf.found(
      'concentrateMarks',
      ['waterMarks <= weakestRatio * concentrateMarks', 'not known(strongestRatio) or waterMarks >= strongestRatio * concentrateMarks'],
      leastCostCover,
      undefined,
      'Whole graduation marks within the allowed strength that minimise cost (or concentrate).',
    ),
    wf.found(
      'waterMarks',
      ['(concentrateMarks + waterMarks) * mark * batches >= mixNeeded'],
      leastCostCover,
      undefined,
      'Enough for the clean.',
    ),
    wf.formula('concentrateToPour', 'concentrateMarks * mark', partsArithmetic),
    wf.formula('waterToPour', 'waterMarks * mark', partsArithmetic),
    wf.formula('mixedShare', 'concentrateMarks / (concentrateMarks + waterMarks)', partsArithmetic),
    wf.formula('mixedRatio', 'waterMarks / concentrateMarks', partsArithmetic),
    wf.formula('concentrateInAll', 'batches * concentrateToPour', partsArithmetic),
    wf.formula('waterInAll', 'batches * waterToPour + rinseVolume', partsArithmetic),
    wf.formula('mixMade', 'batches * (concentrateToPour + waterToPour)', partsArithmetic),
    wf.formula('mixLeft', 'mixMade - mixNeeded', partsArithmetic),
    wf.rows('shopping', { cost: 'price * count' }, leastCostCover, undefined, 'Cheapest packs that hold what is not at hand.'),
    wf.formula('concentrateCost', "sum(where(shopping.cost, shopping.item == 'concentrate'))", leastCostCover),
    wf.formula('waterCost', "sum(where(shopping.cost, shopping.item == 'water'))", leastCostCover),
    wf.formula('cost', 'concentrateCost + waterCost', leastCostCover),
    wf.formula(
      'concentrateLeft',
      "concentrateAtHand + sum(where(shopping.pack * shopping.count, shopping.item == 'concentrate')) - concentrateInAll",
      partsArithmetic,
    ),
    wf.formula(
      'waterLeft',
      "waterAtHand + sum(where(shopping.pack * shopping.count, shopping.item == 'water')) - waterInAll",
      partsArithmetic,
    ),
    wf.found('leastCost', ['leastCost <= cost'], leastCostCover, undefined, 'Among all splits, batches and packs none costs less.'),
    wf.found('leastConcentrate', ['leastConcentrate <= concentrateInAll'], leastCostCover, undefined, 'None uses less concentrate.'),
    wf.verdict(
      'leftover',
      {
        none: 'mixLeft == 0',
        unknown: 'not known(shelfLife) or not known(nextJobIn)',
        keep: 'nextJobIn <= shelfLife',
        discard: 'otherwise',
      },
      dilutionPractice,
    ),
  ],
  assumptions: {
    additive_volumes: 'Volumes of concentrate and water add up; for water-based cleaners the error is well below 1 %.',
    bought_counts:
      'What is spent on packs counts, not what is taken out of a pack that is open: what is left in the packs can be used later.',
    no_stronger_than_stated: 'If no strongest mix is entered, the mix is no stronger than the marks make necessary.',
    equal_batches: 'All batches are alike, so there is only one pair of marks to remember.',
    full_packs: 'Packs hold what they say; water from a demineraliser of your own is entered as at hand.',
  },
  limits: { label_counts: 'The label and the safety data sheet of the cleaner come before any figure here.' },
  cautions: [cautions.caustic, cautions.coatedFilter, cautions.waste, cautions.makerFirst],
  uncertaintyNote: 'Marks and packs are counted, so no ± is carried through the plan. Allow for it in the reserve.',
  dimensional: 'volumes are counted in whole decimal marks and packs',
  compute(input) {
    const { weakestRatio, strongestRatio } = input;
    if (strongestRatio !== undefined && strongestRatio > weakestRatio) {
      return wf.inconsistentInputs(
        'the strongest mix allowed is weaker than the weakest that will do',
        ['strongestRatio'],
        ['weakestRatio'],
      );
    }
    const needed = exact(input.inletVolume).times(exact(input.fillShare)).times(input.passes).times(exact(input.reserve).plus(1));
    const request: PlanRequest = {
      needed,
      mark: exact(input.mark),
      capacity: input.containerCapacity === undefined ? undefined : exact(input.containerCapacity),
      weakest: exact(weakestRatio),
      strongest: strongestRatio === undefined ? undefined : exact(strongestRatio),
      mostBatches: input.mostBatches,
      rinse: exact(input.rinseVolume),
      concentrate: { atHand: exact(input.concentrateAtHand), packs: exactPacks(input.concentratePacks) },
      water: { atHand: exact(input.waterAtHand), packs: exactPacks(input.waterPacks) },
    };
    const shops = shopsFor(request);
    const cheapest = planBatches(request, 'least-cost', shops);
    if (typeof cheapest === 'string') return noPlan(cheapest);
    const leanest = planBatches(request, 'least-concentrate', shops);
    if (typeof leanest === 'string') return noPlan(leanest);
    const plan = input.aim === 'least-cost' ? cheapest : leanest;
    const stock = [
      { item: 'concentrate' as const, purchase: plan.concentratePurchase, packs: input.concentratePacks },
      { item: 'water' as const, purchase: plan.waterPurchase, packs: input.waterPacks },
    ];
    const batch = plan.concentrate.plus(plan.water);
    const mixMade = batch.times(plan.batches);
    const mixLeft = mixMade.minus(needed).toNumber();
    return {
      mixNeeded: needed.toNumber(),
      concentrateInAll: plan.concentrateInAll.toNumber(),
      waterInAll: plan.waterInAll.toNumber(),
      concentrateCost: plan.concentratePurchase.cost.toNumber(),
      waterCost: plan.waterPurchase.cost.toNumber(),
      leastCost: cheapest.cost.toNumber(),
      leastConcentrate: leanest.concentrateInAll.toNumber(),
      batches: plan.batches,
      concentrateMarks: plan.concentrate.dividedBy(request.mark).toNumber(),
      waterMarks: plan.water.dividedBy(request.mark).toNumber(),
      concentrateToPour: plan.concentrate.toNumber(),
      waterToPour: plan.water.toNumber(),
      mixedRatio: plan.concentrate.isZero() ? undefined : plan.water.dividedBy(plan.concentrate).toNumber(),
      mixedShare: plan.concentrate.dividedBy(batch).toNumber(),
      mixMade: mixMade.toNumber(),
      mixLeft,
      shopping: stock.flatMap(({ item, purchase, packs: offered }) => shoppingRows(item, purchase, offered)),
      concentrateLeft: plan.concentratePurchase.surplus.toNumber(),
      waterLeft: plan.waterPurchase.surplus.toNumber(),
      leftover: leftoverUse(mixLeft, input.shelfLife, input.nextJobIn),
      cost: plan.cost.toNumber(),
    };
  },
  advise: ({ batches, concentrateInAll, cost, leastConcentrate, leastCost }) => [
    { tone: 'do', text: 'Put the water in first, then the concentrate; write strength and date on the container.' },
    ...(batches > 1 ? ([{ tone: 'note', text: wf.say`Mix ${batches} equal batches, each to the same marks.` }] as const) : []),
    ...(concentrateInAll > leastConcentrate
      ? ([
          {
            tone: 'note',
            text: 'A weaker mix in the range uses less concentrate, but costs more to buy now: choose to minimise the concentrate.',
          },
        ] as const)
      : []),
    ...(cost > leastCost
      ? ([
          {
            tone: 'note',
            text: 'A stronger mix in the range makes the shopping cheaper, but uses more concentrate: choose to minimise the cost.',
          },
        ] as const)
      : []),
  ],
});
