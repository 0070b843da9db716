import type * as z from 'zod';
import type { BudgetEntry, Constants, DefinitionSpec, Uncertainty } from './definition.js';
import type { UncertainInput } from './given.js';
import type { Path, Warning } from './issue.js';
import type { Outputs } from './outputs.js';
import { mapQuantities } from './walk.js';

type Values = Readonly<Record<string, unknown>>;

function samePath(a: Path, b: Path): boolean {
  return a.length === b.length && a.every((part, index) => part === b[index]);
}

/** Half the change of a numeric value between two results; with one side missing, the whole change to the other. */
function change(key: string, nominal: Values, up: Values | undefined, down: Values | undefined): number | undefined {
  const at = (values: Values | undefined) => (typeof values?.[key] === 'number' ? (values[key] as number) : undefined);
  const [high, low, middle] = [at(up), at(down), at(nominal)];
  if (high !== undefined && low !== undefined) return (high - low) / 2;
  if (middle === undefined) return undefined;
  if (high !== undefined) return high - middle;
  return low === undefined ? undefined : middle - low;
}

/**
 * First-order propagation by moving each uncertain input up and down by its own uncertainty
 * (JCGM 100:2008, 5.1.2 and note 2 of 5.1.3), inputs taken as independent. The result has the coverage
 * that the inputs had: a standard uncertainty for standard uncertainties.
 */
export function propagate<I extends z.ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
  input: z.output<I>,
  nominal: Values,
  uncertain: readonly UncertainInput[],
  evaluate: (input: z.output<I>) => Values | undefined,
): (Uncertainty & { readonly warnings: readonly Warning[] }) | undefined {
  if (uncertain.length === 0) return undefined;
  const moved = (path: Path, delta: number) =>
    evaluate(mapQuantities(spec.inputs, input, (value, _field, at) => (samePath(at, path) ? value + delta : value)));
  const keys = Object.entries({ ...spec.intermediates, ...spec.outputs })
    .filter(([, field]) => field.type === 'quantity')
    .map(([key]) => key);
  const warnings: Warning[] = [];
  const contributions = new Map<string, { path: Path; contribution: number }[]>();
  for (const { path, uncertainty } of uncertain) {
    const up = moved(path, uncertainty);
    const down = moved(path, -uncertainty);
    if (up === undefined || down === undefined) {
      const text = 'The result does not exist over the whole range of this uncertainty; what is shown covers one side only.';
      warnings.push({ code: 'uncertainty_incomplete', path, text });
    }
    for (const key of keys) {
      const contribution = change(key, nominal, up, down);
      if (contribution === undefined) continue;
      contributions.set(key, [...(contributions.get(key) ?? []), { path, contribution }]);
    }
  }
  const values: Record<string, number> = {};
  const budget: Record<string, BudgetEntry[]> = {};
  for (const [key, parts] of contributions) {
    const total = Math.hypot(...parts.map((part) => part.contribution));
    values[key] = total;
    budget[key] = parts
      .map((part) => ({ ...part, share: total === 0 ? 0 : (part.contribution / total) ** 2 }))
      .sort((a, b) => b.share - a.share);
  }
  return { values, budget, warnings };
}
