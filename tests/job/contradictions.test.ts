import {
  type Block,
  type Claim,
  claimsOf,
  contradictions,
  contradictoryPairs,
  type Evaluation,
  type JobResult,
  jobAnnex,
  jobSheet,
  printedContradictions,
  printedPairs,
  type Sheet,
} from '@wallflow/workshop';
import { generateCase } from '@wallflow/workshop/cases';
import type { FilterCause, FilterEstimate } from '@wallflow/workshop/estimate';
import { describe, expect, it } from 'vitest';
import { jobEstimate } from '../../packages/workshop/src/job/estimate-data.js';
import { demoResult, resultOf } from './demo-job.js';

describe('contradictions', () => {
  /** A generated vehicle as a job with readings that were written down. */
  const asJob = (seed: number) => {
    const { input } = generateCase(seed);
    const rows = input.readings.map(({ engineSpeed, pressureDrop, gasTemperature }, index) => ({
      engineSpeed: `${(engineSpeed * 60).toFixed(0)} rpm`,
      pressureDrop: `${(pressureDrop / 100).toFixed(0)} mbar`,
      gasTemperature: `${((gasTemperature ?? [393, 433, 473][index] ?? 433) - 273.15).toFixed(0)} °C`,
    }));
    const zero = { engineSpeed: '0 rpm', pressureDrop: `${((input.zero?.pressureDrop ?? 0) / 100).toFixed(0)} mbar` };
    return {
      format: 'wallflow-job/2',
      title: 'Generated',
      date: '2026-03-12',
      vehicle: { description: 'Generated vehicle' },
      complaint: 'Low power',
      engine: { displacement: `${input.vehicle.displacement * 1000} L`, strokes: 'four-stroke' },
      readings: { before: [zero, ...rows] },
    };
  };

  it.each(Array.from({ length: 12 }, (_, index) => 500 + index))('are none on the sheet of generated vehicle %d', (seed) => {
    expect(contradictions(resultOf(asJob(seed)))).toEqual([]);
  });

  it('are none on the sheet of the demo job, whose lines claim something of filter, work, heat, reset and plan', () => {
    expect(contradictions(demoResult())).toEqual([]);
    const claims = [...claimsOf([jobSheet(demoResult()), jobAnnex(demoResult())])];
    for (const topic of ['filter before', 'filter after', 'work', 'heat before', 'heat now', 'do', 'reset', 'fault before'])
      expect(claims.filter((claim) => claim.startsWith(`${topic} `))).toHaveLength(1);
  });

  it('have names of their own', () => {
    const ids = [...contradictoryPairs, ...printedPairs].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('a sheet that is doctored to print both', () => {
  const line = (claim: Claim): Block => ({ type: 'paragraph', text: claim, claims: [claim] });
  const sheet = (...claims: readonly Claim[]): Sheet => ({ title: 'Doctored', blocks: claims.map(line) });

  it.each(printedPairs)('is caught: $id', ({ id, one, other }) => {
    for (const first of one) {
      expect(printedContradictions([sheet(first)])).toEqual([]);
      for (const second of other) {
        if (first === second) continue;
        expect(printedContradictions([sheet(first, second)])).toContain(id);
        expect(printedContradictions([sheet(first), sheet(second)])).toContain(id);
      }
    }
  });

  it('is caught where only a line of the verdicts was changed', () => {
    const printed = jobSheet(demoResult());
    const said = [...claimsOf([printed])];
    const changed = said.includes('filter before sound') ? ('filter before blocked' as const) : ('filter before sound' as const);
    const blocks = printed.blocks.map((block) =>
      block.type !== 'verdicts'
        ? block
        : { ...block, lines: block.lines.map((one) => (one.question === 'Filter before' ? { ...one, claims: [changed] } : one)) },
    );
    expect(printedContradictions([printed])).toEqual([]);
    expect(printedContradictions([{ ...printed, blocks }])).toContain('the filter before the work is told in two ways');
  });
});

describe('a result that is doctored to hold both', () => {
  const base = demoResult();
  const drawn = jobEstimate(base);
  const { estimateBefore, estimateAfter } = base;
  if (drawn === undefined || estimateBefore === undefined || estimateAfter === undefined) throw new Error('no estimate');
  type Drawn = typeof drawn;
  const reading = (evaluation: Evaluation, verdict: string): Evaluation => ({
    ...evaluation,
    result: { ...evaluation.result, outputs: { ...evaluation.result.outputs, verdict } },
  });
  const estimate = (first: FilterCause, restricted: number, chance = 0): FilterEstimate => ({
    ...estimateBefore,
    restricted,
    causes: [{ id: first, title: first, probability: 0.97, bearings: [] }],
    chanceOfSootAbove: () => chance,
  });
  const before = (verdict: string) => ({ ...base.before, condition: reading(base.before.condition, verdict) });
  const plan = (id: Drawn['plan'][number]['id']) => drawn.plan.map((option) => ({ ...option, chosen: option.id === id }));
  const tested = drawn.nextTest;
  if (tested === undefined) throw new Error('no test');
  // A permission that only the lack of soot refuses.
  const { permissionBefore } = base;
  const tooLittle = {
    ...permissionBefore,
    result: {
      ...(permissionBefore as Evaluation).result,
      outputs: {
        ...(permissionBefore as Evaluation).result.outputs,
        refusals: 1,
        countedLoad: 0.1,
        countedUncertainty: 0.1,
        highestLoad: 6,
      },
    },
  } as Evaluation;

  const doctored: Readonly<Record<string, readonly [Partial<JobResult>, Partial<Drawn>]>> = {
    'reads as clean, and is restricted almost for certain': [{ before: before('clean'), estimateBefore: estimate('soot', 0.95) }, {}],
    'reads as blocked, and nothing is wrong almost for certain': [
      { before: before('blocked'), estimateBefore: estimate('nothing-wrong', 0) },
      {},
    ],
    'heat is permitted, and the chance of a load above the limit is too high': [
      {},
      { permission: { ...drawn.permission, verdict: 'permitted', chanceAboveLimit: 0.06 } },
    ],
    'a regeneration is the thing to do, and the chance of a load above the limit is too high': [
      { estimateBefore: estimate('soot', 0.9, 0.06) },
      { plan: plan('regenerate') },
    ],
    'leave it alone, and something restricts the exhaust': [{ estimateBefore: estimate('soot', 0.6) }, { plan: plan('leave') }],
    'clean or replace the filter, and sensor or hoses are most likely at fault': [
      { estimateBefore: estimate('hose-leaking', 0) },
      { plan: plan('clean-off-vehicle') },
    ],
    'the work is proved, and something may still restrict the exhaust': [
      { estimateAfter: { ...estimateAfter, restricted: 0.2 } },
      { verification: { verdict: 'proved', probability: 0.8 } },
    ],
    'too little soot to burn, and the soot is most likely above the limit': [
      { permissionBefore: tooLittle, estimateBefore: estimate('soot', 0.5, 0.6) },
      {},
    ],
    'a test to do next that was already done': [
      { job: { ...base.job, trials: { after: { hoses: 'tight' } } } },
      { nextTest: { ...tested, id: 'hoses' } },
    ],
    'no codes after the work, and codes that refuse heat after the work': [
      { job: { ...base.job, faultCodes: { after: [] }, permission: { before: {}, after: { faultCodes: true } } } },
      {},
    ],
    'the chances of the causes do not make a whole': [{}, { estimate: { ...drawn.estimate, causes: drawn.estimate.causes.slice(1) } }],
  };

  it.each(contradictoryPairs)('is caught: $id', ({ id, both }) => {
    const [result, found] = doctored[id] ?? [{}, {}];
    expect(both(base, drawn)).toBe(false);
    expect(both({ ...base, ...result }, { ...drawn, ...found })).toBe(true);
  });
});
