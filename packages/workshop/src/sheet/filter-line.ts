import { chanceText, type FilterCause, type FilterEstimate } from '../estimate/index.js';
import { type Evaluation, wordOf } from '../job/evaluation.js';

/** What a sheet says of a filter, from its deciding reading and the estimate together. */
export type FilterState = 'sound' | 'filling-up' | 'blocked' | 'doubtful' | 'not-clear';

export interface FilterLine {
  readonly state: FilterState;
  /** What all readings together add to, or take from, the one that decides; empty where they agree. */
  readonly together: string;
}

const readsOpen = new Set(['clean', 'in-service']);
const readsFull = new Set(['blocked', 'loaded']);
/** From here on a cause is named as the likely one. */
const likelyFrom = 0.5;
/** Control units may be wrong about a filter that is in order. */
const soundCauses: readonly FilterCause[] = ['nothing-wrong', 'figures-wrong'];

/** Whether the one reading that decides says that the filter is open. */
export function isReadOpen(condition: Evaluation): boolean {
  return readsOpen.has(wordOf(condition, 'verdict'));
}

/** One reading decides the condition, all of them the estimate: a sheet says one thing, and the estimate has the last word. */
export function filterLine(condition: Evaluation, estimate: FilterEstimate | undefined): FilterLine {
  const [open, full] = [isReadOpen(condition), readsFull.has(wordOf(condition, 'verdict'))];
  const agreed: FilterLine = { state: open ? 'sound' : full ? 'blocked' : 'not-clear', together: '' };
  const [first, second] = estimate?.causes ?? [];
  if (estimate === undefined || first === undefined) return agreed;
  const chance = (...ids: readonly FilterCause[]) =>
    estimate.causes.reduce((sum, { id, probability }) => sum + (ids.includes(id) ? probability : 0), 0);
  const [sound, deposits] = [chance(...soundCauses), chance('soot', 'ash')];
  const leading = `${first.title} (${chanceText(first.probability)})`;
  if (!(open || full)) return first.probability > likelyFrom ? { state: 'not-clear', together: leading } : agreed;
  if (open && sound > likelyFrom) return agreed;
  if (full && sound > likelyFrom) return { state: 'doubtful', together: leading };
  if (deposits > likelyFrom) return open ? { state: 'filling-up', together: `filling up with ${depositText(chance)}` } : agreed;
  if (first.probability > likelyFrom) return { state: 'doubtful', together: leading };
  const both = [first, second].flatMap((one) => (one === undefined ? [] : [`${one.title} (${chanceText(one.probability)})`]));
  return open ? { state: 'not-clear', together: both.join(', or ') } : agreed;
}

function depositText(chance: (id: FilterCause) => number): string {
  const [soot, ash] = [chance('soot'), chance('ash')];
  if (soot > likelyFrom) return `soot (${chanceText(soot)})`;
  return ash > likelyFrom ? `ash (${chanceText(ash)})` : `soot or ash (${chanceText(soot + ash)})`;
}
