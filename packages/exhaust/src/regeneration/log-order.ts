/** A log in order of time, with a warning where it was not: a line out of place must not hide a rise. */
export function inOrder<L extends { readonly time: number }>(log: readonly L[], warn: (code: string, text: string) => void): readonly L[] {
  if (log.every((line, index) => index === 0 || line.time >= (log[index - 1]?.time ?? line.time))) return log;
  warn('log_sorted', 'The lines of the log were not in order of time; they were put in order.');
  return [...log].sort((a, b) => a.time - b.time);
}
