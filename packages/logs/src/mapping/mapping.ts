import { type ChannelName, channelOf, isChannelName } from '../channels/channels.js';
import { unitOfText } from '../columns/unit-text.js';

/** What a person said of one column: what it is and in which unit, or that it is not used. */
export type ColumnAnswer = { readonly channel: ChannelName; readonly unit?: string } | { readonly channel: null };

/** Answers to what a log's titles leave open, kept for the next log with the same titles. */
export interface Mapping {
  readonly format: 'wallflow-log-mapping';
  readonly version: 1;
  /** Titles of the log for which it was made, in their order. */
  readonly titles: readonly string[];
  /** Answers by title; the second of two equal titles is `title (2)`. In a log with one value a line, by the name of the value. */
  readonly columns: Readonly<Record<string, ColumnAnswer>>;
  /** The decimal sign, where the numbers leave it open. */
  readonly decimal?: '.' | ',';
  /** A clock of two parts, `14:03`. */
  readonly clock?: 'hours and minutes' | 'minutes and seconds';
  /** Seconds from row to row, for a log without a time. */
  readonly interval?: number;
}

/** Why a mapping file cannot be used. */
export interface MappingProblem {
  readonly code: 'not_json' | 'not_a_mapping' | 'other_version' | 'unknown_channel' | 'unknown_unit' | 'wrong_value';
  /** What is meant, shortened. */
  readonly detail: string;
}

/** A mapping, or why there is none. */
export type MappingResult = { readonly ok: true; readonly mapping: Mapping } | { readonly ok: false; readonly problem: MappingProblem };

const short = (value: unknown) => String(typeof value === 'string' ? value : JSON.stringify(value)).slice(0, 80);
const refuse = (code: MappingProblem['code'], detail: unknown): MappingResult => ({ ok: false, problem: { code, detail: short(detail) } });
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Read a mapping file. Never throws. */
export function parseMapping(text: string): MappingResult {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return refuse('not_json', text.slice(0, 40));
  }
  return checkMapping(data);
}

/** Check a mapping that came as data. Never throws. */
export function checkMapping(data: unknown): MappingResult {
  if (!isRecord(data) || data.format !== 'wallflow-log-mapping') return refuse('not_a_mapping', isRecord(data) ? data.format : data);
  if (data.version !== 1) return refuse('other_version', data.version);
  if (!isRecord(data.columns)) return refuse('wrong_value', 'columns');
  const columns: [string, ColumnAnswer][] = [];
  for (const [title, answer] of Object.entries(data.columns)) {
    if (!isRecord(answer)) return refuse('wrong_value', title);
    const { channel, unit } = answer;
    if (channel === null) {
      columns.push([title, { channel: null }]);
      continue;
    }
    if (typeof channel !== 'string' || !isChannelName(channel)) return refuse('unknown_channel', channel);
    if (unit !== undefined && (typeof unit !== 'string' || unitOfText(channelOf(channel), unit) === undefined))
      return refuse('unknown_unit', unit);
    columns.push([title, { channel, ...(unit === undefined ? {} : { unit }) }]);
  }
  const { titles, decimal, clock, interval } = data;
  if (titles !== undefined && !(Array.isArray(titles) && titles.every((title) => typeof title === 'string')))
    return refuse('wrong_value', 'titles');
  if (decimal !== undefined && decimal !== '.' && decimal !== ',') return refuse('wrong_value', decimal);
  if (clock !== undefined && clock !== 'hours and minutes' && clock !== 'minutes and seconds') return refuse('wrong_value', clock);
  if (interval !== undefined && !(typeof interval === 'number' && Number.isFinite(interval) && interval > 0))
    return refuse('wrong_value', interval);
  return {
    ok: true,
    mapping: {
      format: 'wallflow-log-mapping',
      version: 1,
      titles: (titles ?? []) as string[],
      columns: Object.fromEntries(columns),
      ...(decimal === undefined ? {} : { decimal }),
      ...(clock === undefined ? {} : { clock }),
      ...(interval === undefined ? {} : { interval: interval as number }),
    },
  };
}

/** The name of a column in a mapping: its title, numbered where an equal one stands before it. */
export function columnKeys(titles: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return titles.map((title) => {
    const count = (seen.get(title) ?? 0) + 1;
    seen.set(title, count);
    return count === 1 ? title : `${title} (${count})`;
  });
}

/** The mapping among several that was made for a log of these titles; the order of the columns does not matter. */
export function mappingFor(titles: readonly string[], mappings: readonly Mapping[]): Mapping | undefined {
  const shape = JSON.stringify([...titles].sort());
  return mappings.find((mapping) => JSON.stringify([...mapping.titles].sort()) === shape);
}

/** Start a mapping for a log with the answers that were given. */
export function makeMapping(
  titles: readonly string[],
  columns: Readonly<Record<string, ColumnAnswer>>,
  more: Pick<Mapping, 'decimal' | 'clock' | 'interval'> = {},
): Mapping {
  return { format: 'wallflow-log-mapping', version: 1, titles, columns, ...more };
}
