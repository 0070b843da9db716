import { kinds } from '@wallflow/units';
import type { PlanOption, PlanOptionId } from '../estimate/index.js';
import { type Attempt, numberOf, succeeded } from './evaluation.js';
import { givenValue } from './given.js';
import type { JobFile } from './job-file.js';

/** What an option of the plan costs, in the currency of the prices that were entered. */
export interface QuoteLine {
  readonly option: PlanOptionId;
  readonly minutes: number;
  readonly work: number;
  /** Cleaner or parts; absent where their price was not entered. */
  readonly material?: number;
  /** Work and material; absent where the option needs material of unknown price. */
  readonly total?: number;
}

const needsCleaner: ReadonlySet<PlanOptionId> = new Set(['clean-on-vehicle', 'clean-off-vehicle']);

/** Whole bottles: an opened one is not taken back. */
function cleanerCost({ quote }: JobFile, cleaning: Attempt | undefined): number | undefined {
  const price = givenValue(kinds.money, quote?.bottlePrice);
  const content = givenValue(kinds.volume, quote?.bottleVolume);
  if (price === undefined || content === undefined || !succeeded(cleaning)) return undefined;
  return Math.ceil(numberOf(cleaning, 'concentrateVolume') / content - 1e-9) * price;
}

/** The quote for every option; undefined where no price of work was entered. */
export function quoteOf(job: JobFile, plan: readonly PlanOption[], cleaning: Attempt | undefined): readonly QuoteLine[] | undefined {
  const rate = givenValue(kinds.money, job.quote?.hourlyRate);
  if (rate === undefined) return undefined;
  const part = givenValue(kinds.money, job.quote?.filterPrice);
  const cleaner = cleanerCost(job, cleaning);
  return plan.map(({ id, minutes }) => {
    const work = (minutes / 60) * rate;
    const material = needsCleaner.has(id) ? cleaner : id === 'replace' ? part : 0;
    return { option: id, minutes, work, ...(material === undefined ? {} : { material, total: work + material }) };
  });
}
