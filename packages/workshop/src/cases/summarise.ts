import type { FilterCause } from '../estimate/index.js';
import { causeOrder, type EvaluationRow, heatLimit, type Mark } from './evaluate-case.js';

/** How often a chance that was stated came true. */
export interface ReliabilityBin {
  /** Stated chances from and to. */
  readonly from: number;
  readonly to: number;
  /** How many statements: one for each cause of each case. */
  readonly count: number;
  readonly stated: number;
  readonly seen: number;
}

/** What the answers to many cases were worth. All shares are from 0 to 1. */
export interface EvaluationSummary {
  readonly cases: number;
  readonly first: number;
  readonly firstTwo: number;
  /** Mean chance that was stated for the cause that came first: what `first` would be if every chance were exact. */
  readonly statedFirst: number;
  /** Sum of the squared errors of all chances of a case, averaged (Brier 1950): 0 at best, 2 at worst. */
  readonly brier: number;
  readonly sootCovered: number;
  readonly ashCovered: number;
  readonly above: { readonly seen: number; readonly stated: number };
  /** Cases of which no more than one chance in twenty of a load above the limit was stated. */
  readonly permitted: { readonly cases: number; readonly seen: number; readonly stated: number };
  readonly reliability: readonly ReliabilityBin[];
  /** Of each cause that was hidden: how often each cause came first. */
  readonly confusion: ReadonlyMap<FilterCause, ReadonlyMap<FilterCause, number>>;
  /** Answers that rest on too few draws and say so. */
  readonly fewDraws: number;
}

const edges = [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.98, 1] as const;

/** Causes by their stated chance; those of one chance in the order of the list. */
export function ranking({ chances }: Mark): FilterCause[] {
  return causeOrder
    .map((cause, index) => ({ cause, chance: chances[index] ?? 0 }))
    .sort((a, b) => b.chance - a.chance)
    .map(({ cause }) => cause);
}

/** Sum up the marks of many cases, from their readings or with their trials. */
export function summarise(rows: readonly EvaluationRow[], kind: 'readings' | 'trials'): EvaluationSummary {
  const share = (test: (row: EvaluationRow, mark: Mark) => boolean, of = rows) =>
    of.length === 0 ? 0 : of.filter((row) => test(row, row[kind])).length / of.length;
  const mean = (value: (row: EvaluationRow, mark: Mark) => number, of = rows) =>
    of.length === 0 ? 0 : of.reduce((sum, row) => sum + value(row, row[kind]), 0) / of.length;
  const within = (value: number, [low, high]: readonly [number, number]) => value >= low && value <= high;
  const chance = ({ chances }: Mark, index: number) => (chances[index] ?? 0) / 1000;
  const permitted = rows.filter((row) => row[kind].above <= 500);
  return {
    cases: rows.length,
    first: share(({ cause }, mark) => ranking(mark)[0] === cause),
    firstTwo: share(({ cause }, mark) => ranking(mark).slice(0, 2).includes(cause)),
    statedFirst: mean((_, { chances }) => Math.max(...chances) / 1000),
    brier: mean(({ cause }, mark) => causeOrder.reduce((sum, id, index) => sum + (chance(mark, index) - (id === cause ? 1 : 0)) ** 2, 0)),
    sootCovered: share(({ soot }, mark) => within(soot, mark.soot)),
    ashCovered: share(({ ash }, mark) => within(ash, mark.ash)),
    above: { seen: share(({ soot }) => soot > heatLimit), stated: mean((_, { above }) => above / 1e4) },
    permitted: {
      cases: permitted.length,
      seen: share(({ soot }) => soot > heatLimit, permitted),
      stated: mean((_, { above }) => above / 1e4, permitted),
    },
    reliability: reliabilityOf(rows, kind),
    confusion: confusionOf(rows, kind),
    fewDraws: share((_, { fewDraws }) => fewDraws),
  };
}

function reliabilityOf(rows: readonly EvaluationRow[], kind: 'readings' | 'trials'): ReliabilityBin[] {
  const statements = rows.flatMap((row) =>
    causeOrder.map((id, index) => ({ stated: (row[kind].chances[index] ?? 0) / 1000, true: id === row.cause })),
  );
  return edges.slice(1).flatMap((to, index) => {
    const from = edges[index] ?? 0;
    const here = statements.filter(({ stated }) => stated >= from && (stated < to || to === 1));
    if (here.length === 0) return [];
    return [
      {
        from,
        to,
        count: here.length,
        stated: here.reduce((sum, { stated }) => sum + stated, 0) / here.length,
        seen: here.filter((statement) => statement.true).length / here.length,
      },
    ];
  });
}

function confusionOf(rows: readonly EvaluationRow[], kind: 'readings' | 'trials'): Map<FilterCause, Map<FilterCause, number>> {
  const confusion = new Map<FilterCause, Map<FilterCause, number>>();
  for (const row of rows) {
    const [said] = ranking(row[kind]);
    if (said === undefined) continue;
    const counts = confusion.get(row.cause) ?? new Map<FilterCause, number>();
    counts.set(said, (counts.get(said) ?? 0) + 1);
    confusion.set(row.cause, counts);
  }
  return confusion;
}
