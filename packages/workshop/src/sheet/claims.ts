import type { PlanOptionId } from '../estimate/index.js';
import type { VerificationData } from '../job/estimate-data.js';
import type { FilterState } from './filter-line.js';

/** What a cause that leads means for the work: which part is at fault. */
export type Fault = 'none' | 'deposits' | 'sensor' | 'elsewhere' | 'broken' | 'wet' | 'open';

/** Whether heat may be used, in the words of one line. */
export type HeatWord = 'permitted' | 'refused' | 'not-needed' | 'not-known';

/** A subject and what is said of it, apart by a blank. */
export type Said<Subject extends string, Word extends string> = `${Subject} ${Word}`;

/**
 * What a printed line says, as a value: it stands beside the line that says it, so that two lines of one sheet can be compared without
 * reading their words.
 */
export type Claim =
  | Said<'filter before' | 'filter after', FilterState>
  | Said<'fault before', Fault>
  | Said<'work', VerificationData['verdict']>
  | Said<'heat before' | 'heat now', HeatWord>
  | Said<'do', PlanOptionId>
  | Said<'reset', 'all' | 'some' | 'none'>
  | Said<'regeneration' | 'ash due', 'now' | 'later'>;

/** What blocks may carry beside their words. */
export interface Claiming {
  readonly claims?: readonly Claim[];
}
