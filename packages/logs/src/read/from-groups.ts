import type { ChannelName } from '../channels/channels.js';
import { Cleaner } from '../clean/cleaner.js';
import { LeftOutCounts } from '../clean/left-out.js';
import { readTitle } from '../columns/recognise.js';
import { columnKeys, mappingFor } from '../mapping/mapping.js';
import { usualRule } from '../steady/rule.js';
import { SteadyFinder } from '../steady/windows.js';
import { type PlannedColumn, planForName } from './plan.js';
import type { Question } from './question.js';
import type { LogOptions } from './reader.js';
import type { LogReading } from './reading.js';

/** Signals that were sampled together: times in s, rising, and values in the unit that the text names; NaN is no value. */
export interface SignalGroup {
  readonly time: ArrayLike<number>;
  readonly signals: readonly { readonly name: string; readonly unit: string; readonly values: ArrayLike<number> }[];
}

interface Used {
  readonly slot: number;
  readonly values: ArrayLike<number>;
}

/** So many values tell what a signal is. */
const sampled = 400;

function sampleOf(values: ArrayLike<number>): number[] {
  const step = Math.max(1, Math.floor(values.length / sampled));
  const numbers: number[] = [];
  for (let i = 0; i < values.length; i += step) if (Number.isFinite(values[i])) numbers.push(values[i] as number);
  return numbers;
}

/** Understand signals that a file holds as numbers already, as the reader of text does: channels, faults, steady stretches. */
export function readGroups(groups: readonly SignalGroup[], options: LogOptions = {}): LogReading {
  const counts = new LeftOutCounts();
  const steady = new SteadyFinder(options.rule ?? usualRule, counts);
  const cleaner = new Cleaner(counts, steady, options);
  const titles = columnKeys(groups.flatMap(({ signals }) => signals.map(({ name }) => name)));
  const mapping = options.mapping ?? mappingFor(titles, options.mappings ?? []);
  const found: { readonly group: number; readonly column: PlannedColumn; readonly values: ArrayLike<number> }[] = [];
  const questions: Question[] = [];
  const unused: { column: string; why: string }[] = [];
  let place = 0;
  groups.forEach(({ signals }, group) => {
    for (const { name, unit, values } of signals) {
      const column = titles[place] ?? name;
      place += 1;
      const resolved = planForName(column, unit, sampleOf(values), readTitle(name, unit), mapping);
      if (resolved.column !== undefined && resolved.column.channel !== 'time') found.push({ group, column: resolved.column, values });
      else if (resolved.question !== undefined) questions.push(resolved.question);
      else unused.push({ column, why: resolved.why ?? 'not a channel that is known' });
    }
  });
  const byChannel = new Map<ChannelName, typeof found>();
  for (const entry of found) byChannel.set(entry.column.channel, [...(byChannel.get(entry.column.channel) ?? []), entry]);
  const channels: PlannedColumn[] = [];
  const used: Used[][] = groups.map(() => []);
  for (const [channel, same] of byChannel) {
    const [only, ...more] = same;
    if (only === undefined || more.length > 0) {
      questions.push({ ask: 'which column', channel, columns: same.map(({ column }) => column.column) });
      continue;
    }
    channels.push(only.column);
    used[only.group]?.push({ slot: cleaner.addChannel(channel, only.column.scale), values: only.values });
  }
  merge(groups, used, new Float64Array(channels.length), cleaner);
  cleaner.end();
  return {
    ok: true,
    channels: channels.map(({ column, channel, unit, how, sure }) => ({ column, channel, unit, how, sure })),
    rows: cleaner.rows,
    leftOut: counts.list(),
    windows: steady.windows((channel) => cleaner.stepOf(channel)),
    questions,
    unused,
    titles,
    above: [],
    time: cleaner.rows === 0 ? undefined : { from: cleaner.firstTime, to: cleaner.lastTime },
    restarts: cleaner.restarts,
  };
}

/** Hand over the rows of all groups in the order of their times; a row is what was sampled at one time. */
function merge(groups: readonly SignalGroup[], used: readonly (readonly Used[])[], numbers: Float64Array, cleaner: Cleaner): void {
  const at = groups.map(() => 0);
  const wanted = groups.flatMap((_, group) => ((used[group]?.length ?? 0) > 0 ? [group] : []));
  for (let row = 1; ; row += 1) {
    let time = Number.POSITIVE_INFINITY;
    for (const group of wanted) {
      const next = groups[group]?.time[at[group] as number];
      if (next !== undefined && next < time) time = next;
      // A time that is none would hold the group up for ever.
      else if (next !== undefined && Number.isNaN(next)) at[group] = (at[group] as number) + 1;
    }
    if (time === Number.POSITIVE_INFINITY) return;
    numbers.fill(Number.NaN);
    for (const group of wanted) {
      const place = at[group] as number;
      if (groups[group]?.time[place] !== time) continue;
      for (const { slot, values } of used[group] ?? []) numbers[slot] = values[place] ?? Number.NaN;
      at[group] = place + 1;
    }
    cleaner.row(time, numbers, row);
  }
}
