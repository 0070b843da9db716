import { inconsistentInputs, type Refusal } from '@wallflow/calculation';

/** Longer than any regeneration, in s. */
const longest = 7200;

/**
 * A log whose times rise from line to line, or the refusal that names the first line that does not: which of two lines of one
 * time came first nobody knows, and a line out of place can hide a rise or a stop. A warning where it is longer than any
 * regeneration.
 */
export function checkedLog<L extends { readonly time: number }>(
  log: readonly L[],
  warn: (code: string, text: string) => void,
): readonly L[] | Refusal {
  const late = log.findIndex((line, index) => index > 0 && !(line.time > (log[index - 1]?.time ?? Number.NaN)));
  if (late > 0)
    return inconsistentInputs('the times of the log must rise from line to line', ['log', late, 'time'], ['log', late - 1, 'time']);
  const [first, last] = [log[0], log.at(-1)];
  if (first !== undefined && last !== undefined && last.time - first.time > longest)
    warn('long_log', 'The log is longer than two hours; a regeneration takes less. Check the times.');
  return log;
}
