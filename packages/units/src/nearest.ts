const longestCompared = 24;

/** How many letters must be put in, left out or exchanged to make one spelling of the other (Levenshtein). */
function distance(first: string, second: string): number {
  let row = Array.from({ length: second.length + 1 }, (_, index) => index);
  for (const [index, letter] of [...first].entries()) {
    const next = [index + 1];
    for (const [place, other] of [...second].entries()) {
      const exchanged = (row[place] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(exchanged, (row[place + 1] ?? 0) + 1, (next[place] ?? 0) + 1));
    }
    row = next;
  }
  return row[second.length] ?? 0;
}

/** Ids whose spelling is close to what was typed, closest first, made up to six with the most usual ones. */
export function nearestUnits(typed: string, spellings: ReadonlyMap<string, string>, order: readonly string[]): readonly string[] {
  const wanted = typed.toLowerCase().slice(0, longestCompared);
  const allowed = wanted.length < 3 ? 0 : Math.ceil(wanted.length / 4);
  const far = new Map<string, number>();
  for (const [spelling, id] of spellings) {
    if (Math.abs(spelling.length - typed.length) > allowed) continue;
    const away = distance(wanted, spelling.toLowerCase().slice(0, longestCompared));
    if (away <= allowed) far.set(id, Math.min(away, far.get(id) ?? away));
  }
  const close = [...far].sort((a, b) => a[1] - b[1]).map(([id]) => id);
  return [...new Set([...close, ...order])].slice(0, 6);
}
