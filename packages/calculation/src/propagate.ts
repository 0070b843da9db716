import type * as z from 'zod/mini';
import type { BudgetEntry, Constants, DefinitionSpec, Uncertainty } from './definition.js';
import type { UncertainInput } from './given.js';
import type { Path, Warning } from './issue.js';
import { evaluateMoved, type Move } from './moved-inputs.js';
import type { Outputs } from './outputs.js';
import { change, propagateTogether, type Values } from './propagate-together.js';
import { unsureChoices } from './unsure-choices.js';
import { say } from './words/say.js';

interface Contribution {
  readonly path: Path;
  /** Of one input to one output, with its sign. */
  readonly contribution: number;
  /** By how much the input was moved for it. */
  readonly by: number;
}

/**
 * The moves that together shift an output by the whole of its uncertainty: every input in proportion to what it adds, the point
 * of the ellipse of inputs at which the output is farthest off.
 */
function farthest(parts: readonly Contribution[], total: number): Move[] {
  return parts.map(({ path, contribution, by }) => ({ path, by: by * (contribution / total) }));
}

/**
 * Cosine between two directions above which they are one: where one output is farthest off, the other is so too, to 2 %. Outputs
 * that hang on the inputs in the same way, as a drop and its parts do, then cost no evaluation each.
 */
const sameDirection = 0.98;

/** The directions of several inputs at once in which some output is farthest off, each once. One input alone was moved before. */
function directions(outputs: readonly (readonly Contribution[])[]): Move[][] {
  const kept: { readonly parts: ReadonlyMap<string, number>; readonly moves: Move[] }[] = [];
  for (const parts of outputs) {
    const total = Math.hypot(...parts.map((part) => part.contribution));
    if (parts.length < 2 || total === 0) continue;
    const unit = new Map(parts.map(({ path, contribution }) => [path.join('\n'), contribution / total]));
    if (Math.max(...[...unit.values()].map(Math.abs)) > sameDirection) continue;
    const cosine = (other: ReadonlyMap<string, number>) => [...unit].reduce((sum, [path, part]) => sum + part * (other.get(path) ?? 0), 0);
    if (kept.some((one) => Math.abs(cosine(one.parts)) > sameDirection)) continue;
    kept.push({ parts: unit, moves: farthest(parts, total) });
  }
  return kept.map(({ moves }) => moves);
}

/**
 * How often a ± may ask for the result again where a definition does not say: twice for each of two hundred readings. A log of
 * thousands of lines would keep a form or a server busy for minutes; there the work is bounded by the values that are moved in all.
 */
const usualMost = 400;
const mostMoved = 200_000;

/** Fewer draws than this would say little about the ±: it is then known to a third. */
const leastMost = 10;

function evaluationsFor(uncertain: number): number {
  return Math.max(leastMost, Math.min(usualMost, Math.floor(mostMoved / uncertain)));
}

/**
 * First-order propagation by moving each uncertain input up and down by its own uncertainty
 * (JCGM 100:2008, 5.1.2 and note 2 of 5.1.3), inputs taken as independent. The result has the coverage
 * that the inputs had: a standard uncertainty for standard uncertainties. A choice that changes on the way, or where inputs
 * together move an output by its uncertainty, gives a warning.
 */
export function propagate<I extends z.core.$ZodObject, O extends Outputs, M extends Outputs, C extends Constants>(
  spec: DefinitionSpec<I, O, M, C>,
  input: z.output<I>,
  nominal: Values,
  uncertain: readonly UncertainInput[],
  evaluate: (input: z.output<I>) => Values | undefined,
): (Uncertainty & { readonly warnings: readonly Warning[] }) | undefined {
  if (uncertain.length === 0) return undefined;
  const moved = (moves: readonly Move[]) => evaluateMoved(spec.inputs, input, moves, evaluate);
  const fields: Outputs = { ...spec.intermediates, ...spec.outputs };
  const keys = Object.keys(fields).filter((key) => fields[key]?.type === 'quantity');
  const hasChoice = Object.values(fields).some(({ type }) => type === 'choice');
  const { mostEvaluations } = spec;
  const bound = mostEvaluations ?? evaluationsFor(uncertain.length);
  if (2 * uncertain.length > bound) {
    const { values, warnings, seen } = propagateTogether(keys, nominal, uncertain, Math.floor(bound / 2), moved);
    return { values, budget: {}, warnings: [...warnings, ...unsureChoices(fields, nominal, seen)] };
  }
  const warnings: Warning[] = [];
  const seen: Values[] = [];
  const contributions = new Map<string, Contribution[]>();
  for (const { path, uncertainty } of uncertain) {
    const up = moved([{ path, by: uncertainty }]);
    const down = moved([{ path, by: -uncertainty }]);
    seen.push(...[up, down].filter((values) => values !== undefined));
    if (up === undefined || down === undefined) {
      const text = say`The result does not exist over the whole range of this uncertainty; what is shown covers one side only.`;
      warnings.push({ code: 'uncertainty_incomplete', path, text });
    }
    for (const key of keys) {
      const contribution = change(key, nominal, up, down);
      if (contribution === undefined) continue;
      contributions.set(key, [...(contributions.get(key) ?? []), { path, contribution, by: uncertainty }]);
    }
  }
  const values: Record<string, number> = {};
  const budget: Record<string, BudgetEntry[]> = {};
  for (const [key, parts] of contributions) {
    const total = Math.hypot(...parts.map((part) => part.contribution));
    values[key] = total;
    budget[key] = parts
      .map(({ path, contribution }) => ({ path, contribution, share: total === 0 ? 0 : (contribution / total) ** 2 }))
      .sort((a, b) => b.share - a.share);
  }
  if (hasChoice) {
    // Those of the outputs first, should there be more than may be asked for.
    const inOrder = [...new Set([...Object.keys(spec.outputs), ...contributions.keys()])].map((key) => contributions.get(key) ?? []);
    const most = mostEvaluations === undefined ? Infinity : (mostEvaluations - 2 * uncertain.length) / 2;
    const all = directions(inOrder);
    if (all.length > most) {
      const text = say`With so many uncertain inputs, not every way in which they can be wrong together was tried; a verdict may be less sure than it is called.`;
      warnings.push({ code: 'uncertainty_not_all_tried', text });
    }
    for (const together of all.slice(0, most)) {
      for (const sign of [1, -1]) {
        const there = moved(together.map(({ path, by }) => ({ path, by: sign * by })));
        if (there !== undefined) seen.push(there);
      }
    }
  }
  return { values, budget, warnings: [...warnings, ...unsureChoices(fields, nominal, seen)] };
}
