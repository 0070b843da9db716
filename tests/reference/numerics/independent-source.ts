import type { NumericsCase, Ours } from './numerics-case.js';

/** A case whose expected values other code has computed, with the call of ours beside it. */
export interface IndependentCase extends NumericsCase {
  ours(): Ours;
}

type Code = 'mpmath 1.3.0' | 'SciPy 1.17.1';
const years = { 'mpmath 1.3.0': 2023, 'SciPy 1.17.1': 2026 } as const;

/** What every case from other code has in common. */
export function computedBy(code: Code, method: string) {
  const source = { by: code, title: method, year: years[code], locator: 'computed for this check', mark: 'read' as const };
  return { source, origin: 'independent-code' as const, given: null };
}

/** `y1`, `y2`, … at each of several times. */
export function statesAt(values: Readonly<Record<string, readonly string[]>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(values).flatMap(([time, states]) => states.map((value, i) => [`y${i + 1} at t = ${time}`, value])),
  );
}

/** Our states by the same names. */
export function oursAt(times: readonly string[], states: (time: number) => ArrayLike<number>): Ours {
  return Object.fromEntries(
    times.flatMap((time) => Array.from(states(Number(time)), (value, i) => [`y${i + 1} at t = ${time}`, value] as const)),
  );
}
