import { describe, expect, it } from 'vitest';
import { allCalculations } from '../support/calculations.js';
import { processorTime } from '../support/processor-time.js';
import { seeded, worstInput } from '../support/worst-input.js';

/** Longest time that an answer may take, ms of processor time: a form waits for it, and a server does nothing else meanwhile. */
const ceiling = 500;

/** A fixed piece of arithmetic, and the ms that it takes where the ceiling was set. */
const yardstick = 6;
function yardstickWork(): void {
  let sum = 0;
  for (let turn = 1; turn < 1_200_000; turn += 1) sum += Math.exp(-1 / turn) * Math.sqrt(turn);
  if (Number.isNaN(sum)) throw new Error('no number');
}

/**
 * The ceiling on this machine at this moment. Processor time leaves out what others compute, but not that they share caches and
 * cores with us: on a busy machine the same work takes up to twice of it. So the yardstick is measured next to what it is compared
 * with, and only a slower machine moves the ceiling, up to four times.
 */
function ceilingNow(): number {
  const took = Math.min(processorTime(yardstickWork), processorTime(yardstickWork));
  return ceiling * Math.min(4, Math.max(1, took / yardstick));
}

/** The least of three runs: the first ones also compile, and any may collect garbage of others. A run below the ceiling is enough. */
function leastTime(work: () => void): { readonly spent: number; readonly allowed: number } {
  let spent = Number.POSITIVE_INFINITY;
  let allowed = ceiling;
  for (let run = 0; run < 3 && spent > allowed; run += 1) {
    spent = Math.min(spent, processorTime(work));
    allowed = spent > ceiling ? ceilingNow() : ceiling;
  }
  return { spent, allowed };
}

describe.each(allCalculations.map((calculation) => [calculation.id, calculation] as const))('%s', (id, calculation) => {
  it('answers within half a second of processor time, whatever it is given, with every ±', () => {
    const random = seeded(1 + ([...id].reduce((sum, letter) => 31 * sum + letter.charCodeAt(0), 7) % 1_000_000));
    let answered = 0;
    const slow: string[] = [];
    // First the example itself with every ±, then some of it moved, then all of it, with every list at its longest.
    for (const moved of [0, 2, 3, 40]) {
      const input = worstInput(calculation, moved, random);
      const { spent, allowed } = leastTime(() => {
        if (calculation.run(input).ok) answered += 1;
      });
      if (spent > allowed) slow.push(`${Math.round(spent)} ms: ${JSON.stringify(input).slice(0, 600)}`);
    }
    expect(answered, 'no input was accepted').toBeGreaterThan(0);
    expect(slow).toEqual([]);
  });
});
