/**
 * The value that would stand at a place if the array were sorted, in a time that grows with its length only; the array is
 * rearranged (C. A. R. Hoare, Comm. ACM 4 (1961) 321, with the middle of three as the pivot).
 */
export function select(values: Float64Array, length: number, place: number): number {
  let low = 0;
  let high = length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    const a = values[low] as number;
    const b = values[middle] as number;
    const c = values[high] as number;
    const least = Math.min(a, b);
    const most = Math.max(a, b);
    const pivot = Math.max(least, Math.min(most, c));
    let i = low;
    let j = high;
    while (i <= j) {
      while ((values[i] as number) < pivot) i += 1;
      while ((values[j] as number) > pivot) j -= 1;
      if (i > j) break;
      const held = values[i] as number;
      values[i] = values[j] as number;
      values[j] = held;
      i += 1;
      j -= 1;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else return values[place] as number;
  }
  return values[place] as number;
}

/** The median of the first values of an array, which is rearranged. */
export function medianOf(values: Float64Array, length: number): number {
  const middle = length >> 1;
  const upper = select(values, length, middle);
  if (length % 2 === 1) return upper;
  // Left of the place lie only values that are no greater.
  let lower = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < middle; i += 1) if ((values[i] as number) > lower) lower = values[i] as number;
  return 0.5 * lower + 0.5 * upper;
}
