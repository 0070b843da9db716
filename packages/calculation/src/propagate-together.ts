import type { UncertainInput } from './given.js';
import type { Warning } from './issue.js';
import type { Move } from './moved-inputs.js';
import { say } from './words/say.js';

export type Values = Readonly<Record<string, unknown>>;

/** Half the change of a numeric value between two results; with one side missing, the whole change to the other. */
export function change(key: string, nominal: Values, up: Values | undefined, down: Values | undefined): number | undefined {
  const at = (values: Values | undefined) => (typeof values?.[key] === 'number' ? (values[key] as number) : undefined);
  const [high, low, middle] = [at(up), at(down), at(nominal)];
  if (high !== undefined && low !== undefined) return (high - low) / 2;
  if (middle === undefined) return undefined;
  if (high !== undefined) return high - middle;
  return low === undefined ? undefined : middle - low;
}

/** Plus and minus one in an order that looks drawn and is always the same (minimal standard generator of Park and Miller, 1988). */
function drawnSigns(): () => 1 | -1 {
  let state = 1;
  return () => {
    state = (16807 * state) % 2147483647;
    return state > 1073741823 ? 1 : -1;
  };
}

/**
 * First-order propagation with all inputs moved at once, each by its own uncertainty in a drawn direction: the mean square of the
 * change is the sum of the squares of the single contributions. So many readings need no more evaluations than few, but what each
 * of them adds cannot be told, and the uncertainty itself is known to one part in the root of twice the draws.
 */
export function propagateTogether(
  keys: readonly string[],
  nominal: Values,
  uncertain: readonly UncertainInput[],
  draws: number,
  moved: (moves: readonly Move[]) => Values | undefined,
): { readonly values: Record<string, number>; readonly warnings: readonly Warning[]; readonly seen: readonly Values[] } {
  const sign = drawnSigns();
  const squares = new Map<string, number[]>();
  const seen: Values[] = [];
  let missing = false;
  for (let draw = 0; draw < draws; draw += 1) {
    const moves = uncertain.map(({ path, uncertainty }) => ({ path, by: sign() * uncertainty }));
    const up = moved(moves);
    const down = moved(moves.map(({ path, by }) => ({ path, by: -by })));
    missing ||= up === undefined || down === undefined;
    seen.push(...[up, down].filter((values) => values !== undefined));
    for (const key of keys) {
      const moment = change(key, nominal, up, down);
      if (moment !== undefined) squares.set(key, [...(squares.get(key) ?? []), moment ** 2]);
    }
  }
  const mean = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
  const values = Object.fromEntries([...squares].map(([key, all]) => [key, Math.sqrt(mean(all))]));
  const percent = Math.ceil(100 / Math.sqrt(2 * draws));
  const text = say`The ± of ${uncertain.length} inputs were moved together in ${draws} drawn ways, to save time: the ± of the result is itself known to about ${percent} %, and what each input adds to it is not shown.`;
  const warnings: Warning[] = [{ code: 'uncertainty_sampled', text }];
  if (missing) {
    const partly = say`The result does not exist over the whole range of these uncertainties; what is shown covers a part of it.`;
    warnings.push({ code: 'uncertainty_incomplete', text: partly });
  }
  return { values, warnings, seen };
}
