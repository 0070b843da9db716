/** Longer than any regeneration, in s. */
const longest = 7200;

/**
 * A log in order of time, with a warning where it was not: a line out of place must not hide a rise. Another warning where
 * it is longer than any regeneration.
 */
export function checkedLog<L extends { readonly time: number }>(
  log: readonly L[],
  warn: (code: string, text: string) => void,
): readonly L[] {
  const ordered = log.every((line, index) => index === 0 || line.time >= (log[index - 1]?.time ?? line.time));
  if (!ordered) warn('log_sorted', 'The lines of the log were not in order of time; they were put in order.');
  const lines = ordered ? log : [...log].sort((a, b) => a.time - b.time);
  const [first, last] = [lines[0], lines.at(-1)];
  if (first !== undefined && last !== undefined && last.time - first.time > longest)
    warn('long_log', 'The log is longer than two hours; a regeneration takes less. Check the times.');
  return lines;
}
