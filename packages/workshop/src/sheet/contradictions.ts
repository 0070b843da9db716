import { greatestRiskOfHeat } from '../estimate/index.js';
import { jobEstimate } from '../job/estimate-data.js';
import { succeeded, wordOf } from '../job/evaluation.js';
import type { JobResult } from '../job/run-job.js';
import { jobAnnex, jobSheet } from './job-sheet.js';
import { printedContradictions } from './printed-pairs.js';
import { isNotNeeded } from './sections.js';

/** Two things that one sheet must never say together. */
interface Pair {
  readonly id: string;
  readonly both: (result: JobResult, found: NonNullable<ReturnType<typeof jobEstimate>>) => boolean;
}

const reads = (attempt: Parameters<typeof succeeded>[0], ...words: readonly string[]) =>
  succeeded(attempt) && words.includes(wordOf(attempt, 'verdict'));
const chosen = ({ plan }: NonNullable<ReturnType<typeof jobEstimate>>) => plan.find((option) => option.chosen)?.id;

export const contradictoryPairs: readonly Pair[] = [
  {
    id: 'reads as clean, and is restricted almost for certain',
    both: ({ before, estimateBefore }) =>
      reads(before.condition, 'clean') && deposits(estimateBefore) > 0.9 && (estimateBefore?.restricted ?? 0) > 0.9,
  },
  {
    id: 'reads as blocked, and nothing is wrong almost for certain',
    both: ({ before, estimateBefore }) =>
      reads(before.condition, 'blocked') && estimateBefore?.causes[0]?.id === 'nothing-wrong' && estimateBefore.causes[0].probability > 0.9,
  },
  {
    id: 'heat is permitted, and the chance of a load above the limit is too high',
    both: (_, { permission }) => permission.verdict === 'permitted' && permission.chanceAboveLimit > greatestRiskOfHeat,
  },
  {
    id: 'a regeneration is the thing to do, and the chance of a load above the limit is too high',
    both: ({ estimateBefore }, found) =>
      chosen(found) === 'regenerate' && (estimateBefore?.chanceOfSootAbove(found.permission.sootLimit) ?? 0) > greatestRiskOfHeat,
  },
  {
    id: 'leave it alone, and something restricts the exhaust',
    both: ({ estimateBefore }, found) => chosen(found) === 'leave' && (estimateBefore?.restricted ?? 0) > 0.5,
  },
  {
    id: 'clean or replace the filter, and sensor or hoses are most likely at fault',
    both: ({ estimateBefore }, found) => {
      const first = estimateBefore?.causes[0]?.id ?? '';
      return (
        ['clean-off-vehicle', 'clean-on-vehicle', 'regenerate'].includes(chosen(found) ?? '') && /^(?:hose|sensor|figures)/.test(first)
      );
    },
  },
  {
    id: 'the work is proved, and something may still restrict the exhaust',
    both: ({ estimateAfter }, { verification }) => verification?.verdict === 'proved' && (estimateAfter?.restricted ?? 0) > 0.1,
  },
  {
    id: 'too little soot to burn, and the soot is most likely above the limit',
    both: ({ permissionBefore, estimateBefore }, { permission }) =>
      isNotNeeded(permissionBefore) && (estimateBefore?.chanceOfSootAbove(permission.sootLimit) ?? 0) > 0.5,
  },
  {
    id: 'a test to do next that was already done',
    both: ({ job, after }, { nextTest }) => {
      const done = (after === undefined ? job.trials?.before : job.trials?.after) as Readonly<Record<string, unknown>> | undefined;
      return nextTest !== undefined && done?.[nextTest.id] !== undefined;
    },
  },
  {
    id: 'no codes after the work, and codes that refuse heat after the work',
    both: ({ job }) => job.faultCodes?.after?.length === 0 && job.permission.after?.faultCodes === true,
  },
  {
    id: 'the chances of the causes do not make a whole',
    both: (_, { estimate }) => Math.abs(estimate.causes.reduce((sum, { probability }) => sum + probability, 0) - 1) > 1e-6,
  },
];

function deposits(estimate: JobResult['estimateBefore']): number {
  return (estimate?.causes ?? []).filter(({ id }) => id === 'soot' || id === 'ash').reduce((sum, { probability }) => sum + probability, 0);
}

/** What sheet and annex of a job say that contradicts each other, as data or as printed; nothing on a sheet that may be handed over. */
export function contradictions(result: JobResult): readonly string[] {
  const found = jobEstimate(result);
  const held = found === undefined ? [] : contradictoryPairs.filter(({ both }) => both(result, found)).map(({ id }) => id);
  return [...held, ...printedContradictions([jobSheet(result), jobAnnex(result)])];
}
