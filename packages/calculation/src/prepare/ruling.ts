import type * as z from 'zod/mini';
import { applyRules, hasRules } from '../apply-rules.js';
import type { Warning } from '../issue.js';
import { type Slot, unsettled } from './slots.js';

/** What the rules among inputs say of rows in which the same inputs are given and the same ways are chosen. */
export interface Ruling {
  /** By slot: whether it counts. */
  readonly counts: readonly boolean[];
  readonly warnings: readonly Warning[];
}

/**
 * Applies the rules of a definition to rows. What they say hangs on which inputs are given and on what is chosen, never on numbers
 * with units, so that the answer for one row holds for the next ones like it.
 */
export function rulingOf(inputs: z.core.$ZodObject, slots: readonly Slot[]): (raws: readonly unknown[]) => Ruling | undefined {
  const all: Ruling = { counts: slots.map(() => true), warnings: [] };
  if (!hasRules(inputs)) return () => all;
  const asked: unknown[] = slots.map(() => unsettled);
  let last: Ruling | undefined;

  return (raws) => {
    let same = true;
    for (let at = 0; at < slots.length; at += 1) {
      const raw = raws[at];
      // Lists and groups may hold rules of their own; those that change from row to row go the whole way in any case.
      const decisive = slots[at]?.decides === true ? raw : raw === undefined;
      if (asked[at] === decisive) continue;
      asked[at] = decisive;
      same = false;
    }
    if (!same) last = judged(inputs, slots, raws);
    return last;
  };
}

function judged(inputs: z.core.$ZodObject, slots: readonly Slot[], raws: readonly unknown[]): Ruling | undefined {
  const given = slots.flatMap(({ key }, at) => (raws[at] === undefined ? [] : [[key, raws[at]] as const]));
  const { issues, idle, warnings } = applyRules(inputs, Object.fromEntries(given));
  const isInner = [...idle].some((path) => /[.[]/.test(path));
  return issues.length > 0 || isInner ? undefined : { counts: slots.map(({ key }) => !idle.has(key)), warnings };
}
