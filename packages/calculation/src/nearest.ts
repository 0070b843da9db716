/** Edit distance, bounded by the length of short names. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const substitute = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, substitute));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

/** Up to three known names that the unknown one was probably meant to be. */
export function nearest(unknown: string, known: readonly string[]): string[] {
  const wanted = unknown.slice(0, 60).toLowerCase();
  return known
    .map((name) => ({ name, away: distance(wanted, name.toLowerCase()) }))
    .filter(({ name, away }) => away <= Math.max(2, name.length / 2))
    .sort((a, b) => a.away - b.away)
    .slice(0, 3)
    .map(({ name }) => name);
}
