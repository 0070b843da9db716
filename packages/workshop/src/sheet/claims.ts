import type { PlanOptionId } from '../estimate/index.js';
import type { VerificationData } from '../job/estimate-data.js';
import type { FilterState } from './filter-line.js';

/** What a cause that leads means for the work: which part is at fault. */
export type Fault = 'none' | 'deposits' | 'sensor' | 'elsewhere' | 'broken' | 'wet' | 'open';

/** Whether heat may be used, in the words of one line. */
export type HeatWord = 'permitted' | 'refused' | 'not-needed' | 'not-known';

/**
 * What a printed line says, as a value: it stands beside the line that says it, so that two lines of one sheet can be compared without
 * reading their words.
 */
export type Claim =
  | `filter before ${FilterState}`
  | `filter after ${FilterState}`
  | `fault before ${Fault}`
  | `work ${VerificationData['verdict']}`
  | `heat before ${HeatWord}`
  | `heat now ${HeatWord}`
  | `do ${PlanOptionId}`
  | `reset ${'all' | 'some' | 'none'}`
  | `regeneration ${'now' | 'later'}`
  | `ash due ${'now' | 'later'}`;

/** What blocks may carry beside their words. */
export interface Claiming {
  readonly claims?: readonly Claim[];
}
