import type { ChannelName } from '../channels/channels.js';
import type { Batch } from '../clean/cleaner.js';
import type { FitDefinition, LogEvent, SumsDefinition } from './definition.js';
import { addProductTo, addSumTo, addTo, type ExactSum, noSum } from './exact-sum.js';

/** Count, sum and sum of squares of a channel with all their digits, and its extremes. */
export interface ChannelSums {
  count: number;
  readonly sum: ExactSum;
  readonly squares: ExactSum;
  /** Null while nothing was counted. */
  least: number | null;
  greatest: number | null;
}

/** Counts between fixed edges; the first is what lies below the first edge, the last what lies at or above the last. */
export interface HistogramSums {
  readonly edges: readonly number[];
  readonly counts: number[];
}

/** Sums and sums of products of a fit: predictors first, then the response. */
export interface FitSums {
  readonly definition: FitDefinition;
  count: number;
  readonly sums: ExactSum[];
  /** Row by row, the upper triangle. */
  readonly products: ExactSum[];
}

/** Sums over a part of the logs: plain data, written as JSON, and put together in any order. */
export interface PartialSums {
  readonly format: 'wallflow-log-sums';
  readonly version: 1;
  readonly definition: SumsDefinition;
  /** Names of the parts that are in it, sorted; the same part is not counted twice. */
  readonly parts: string[];
  readonly channels: { [K in ChannelName]?: ChannelSums };
  readonly histograms: { [K in ChannelName]?: HistogramSums };
  readonly fits: FitSums[];
  readonly events: LogEvent[];
}

/** Why sums cannot be put together. */
export type SumsProblem = 'not_sums' | 'other_version' | 'other_definition' | 'same_part_twice';

/** The sums together, or why not. */
export type MergeResult = { readonly ok: true; readonly sums: PartialSums } | { readonly ok: false; readonly problem: SumsProblem };

/** Sums over nothing yet, for a part that is named so that it can be told from others: a file, a day, a vehicle. */
export function startSums(definition: SumsDefinition, part: string): PartialSums {
  const channels = Object.fromEntries(
    definition.channels.map((channel): [string, ChannelSums] => [
      channel,
      { count: 0, sum: noSum(), squares: noSum(), least: null, greatest: null },
    ]),
  );
  const histograms = Object.fromEntries(
    Object.entries(definition.histograms ?? {}).map(([channel, edges]): [string, HistogramSums] => [
      channel,
      { edges, counts: new Array(edges.length + 1).fill(0) },
    ]),
  );
  const fits = (definition.fits ?? []).map((fit): FitSums => {
    const size = fit.predictors.length + 1;
    return {
      definition: fit,
      count: 0,
      sums: Array.from({ length: size }, noSum),
      products: Array.from({ length: (size * (size + 1)) / 2 }, noSum),
    };
  });
  return { format: 'wallflow-log-sums', version: 1, definition, parts: [part], channels, histograms, fits, events: [] };
}

/** Add one value of a channel, in SI. NaN is no value. */
export function addValue(sums: PartialSums, channel: ChannelName, value: number): void {
  if (!Number.isFinite(value)) return;
  const entry = sums.channels[channel];
  if (entry !== undefined) {
    entry.count += 1;
    addTo(entry.sum, value);
    addProductTo(entry.squares, value, value);
    if (entry.least === null || value < entry.least) entry.least = value;
    if (entry.greatest === null || value > entry.greatest) entry.greatest = value;
  }
  const histogram = sums.histograms[channel];
  if (histogram !== undefined) {
    const place = placeOf(histogram.edges, value);
    histogram.counts[place] = (histogram.counts[place] ?? 0) + 1;
  }
}

/** How many edges lie at or below a value. */
function placeOf(edges: readonly number[], value: number): number {
  let low = 0;
  let high = edges.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (value >= (edges[middle] as number)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Add one row of a fit: the predictors in their order, then the response. A row with a gap is passed over. */
export function addFitRow(sums: PartialSums, name: string, values: ArrayLike<number>): void {
  const fit = sums.fits.find(({ definition }) => definition.name === name);
  if (fit === undefined || values.length !== fit.sums.length) return;
  for (let i = 0; i < values.length; i += 1) if (!Number.isFinite(values[i])) return;
  fit.count += 1;
  let at = 0;
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i] as number;
    addTo(fit.sums[i] as ExactSum, value);
    for (let j = i; j < values.length; j += 1) {
      addProductTo(fit.products[at] as ExactSum, value, values[j] as number);
      at += 1;
    }
  }
}

/** Add the rows of a batch, as a log's reader gives them. */
export function addBatch(sums: PartialSums, batch: Batch): void {
  const wanted = new Set([...sums.definition.channels, ...Object.keys(sums.histograms)]);
  for (const [channel, column] of batch.values) {
    if (!wanted.has(channel)) continue;
    for (let row = 0; row < batch.rows; row += 1) addValue(sums, channel, column[row] as number);
  }
}

/** Add an event. */
export function addEvent(sums: PartialSums, event: LogEvent): void {
  sums.events.push(event);
  sortEvents(sums.events);
}

function sortEvents(events: LogEvent[]): void {
  const key = (event: LogEvent) => JSON.stringify(event.figures);
  const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  events.sort((a, b) => order(a.part, b.part) || a.from - b.from || a.to - b.to || order(a.what, b.what) || order(key(a), key(b)));
}

const isSums = (data: unknown): data is PartialSums =>
  typeof data === 'object' &&
  data !== null &&
  'format' in data &&
  data.format === 'wallflow-log-sums' &&
  'definition' in data &&
  'parts' in data;

/** A copy that shares nothing. */
const copyOf = (sums: PartialSums): PartialSums => JSON.parse(JSON.stringify(sums)) as PartialSums;

/** Put the sums of two parts together; neither is changed. Sums of anything else, or the same part again, are refused. */
export function mergeSums(a: PartialSums, b: PartialSums): MergeResult {
  if (!isSums(a) || !isSums(b)) return { ok: false, problem: 'not_sums' };
  if (a.version !== 1 || b.version !== 1) return { ok: false, problem: 'other_version' };
  if (definitionKey(a.definition) !== definitionKey(b.definition)) return { ok: false, problem: 'other_definition' };
  if (a.parts.some((part) => b.parts.includes(part))) return { ok: false, problem: 'same_part_twice' };
  const sums = copyOf(a);
  sums.parts.push(...b.parts);
  sums.parts.sort();
  for (const [channel, entry] of Object.entries(b.channels)) mergeChannel(sums.channels[channel as ChannelName], entry);
  for (const [channel, { counts }] of Object.entries(b.histograms)) {
    const own = sums.histograms[channel as ChannelName]?.counts ?? [];
    counts.forEach((count, place) => {
      own[place] = (own[place] ?? 0) + count;
    });
  }
  b.fits.forEach((fit, index) => {
    const own = sums.fits[index];
    if (own === undefined) return;
    own.count += fit.count;
    own.sums.forEach((sum, place) => {
      addSumTo(sum, fit.sums[place] ?? noSum());
    });
    own.products.forEach((sum, place) => {
      addSumTo(sum, fit.products[place] ?? noSum());
    });
  });
  sums.events.push(...copyOf(b).events);
  sortEvents(sums.events);
  return { ok: true, sums };
}

function mergeChannel(own: ChannelSums | undefined, other: ChannelSums): void {
  if (own === undefined) return;
  own.count += other.count;
  addSumTo(own.sum, other.sum);
  addSumTo(own.squares, other.squares);
  if (other.least !== null && (own.least === null || other.least < own.least)) own.least = other.least;
  if (other.greatest !== null && (own.greatest === null || other.greatest > own.greatest)) own.greatest = other.greatest;
}

/** What a definition says, whatever the order of its keys. */
function definitionKey({ channels, histograms = {}, fits = [] }: SumsDefinition): string {
  const edges = Object.entries(histograms).sort(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([[...channels].sort(), edges, fits.map(({ name, response, predictors }) => [name, response, predictors])]);
}
