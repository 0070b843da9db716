/** Largest value of a signal over a window that only moves forward; every value goes in and out once. */
export class SlidingLargest {
  private readonly kept: { readonly index: number; readonly value: number }[] = [];
  private head = 0;

  add(index: number, value: number): void {
    const { kept } = this;
    while (kept.length > this.head && kept[kept.length - 1]!.value <= value) kept.pop();
    kept.push({ index, value });
  }

  /** Largest of what was added from an index on; −∞ where there is none. */
  since(start: number): number {
    while (this.head < this.kept.length && this.kept[this.head]!.index < start) this.head += 1;
    return this.kept[this.head]?.value ?? -Infinity;
  }
}

/** First index from which on every line lies within `age` s before the one at `index`, and at least the line before it. */
export function windowStart(log: readonly { readonly time: number }[], index: number, age: number, from: number): number {
  let start = from;
  while (start < index && log[index]!.time - log[start]!.time > age) start += 1;
  return Math.max(0, Math.min(start, index - 1));
}
