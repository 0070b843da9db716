import type { ChannelName } from '../channels/channels.js';

/** What is summed. Parts with another definition are not put together. */
export interface SumsDefinition {
  /** Channels of which count, mean, spread and extremes are kept. */
  readonly channels: readonly ChannelName[];
  /** Edges of the histogram of a channel in SI, rising. */
  readonly histograms?: { readonly [K in ChannelName]?: readonly number[] };
  /** Fits of one quantity by others, `y = a + b1 x1 + b2 x2 + …`; the quantities are named by whoever gives the rows. */
  readonly fits?: readonly FitDefinition[];
}

/** One fit: what is explained, and by what. */
export interface FitDefinition {
  readonly name: string;
  readonly response: string;
  readonly predictors: readonly string[];
}

/** Something that began and ended in a log, such as a regeneration. */
export interface LogEvent {
  /** Part of which it comes; see {@link PartialSums.parts}. */
  readonly part: string;
  readonly what: string;
  /** In s of the part's time. */
  readonly from: number;
  readonly to: number;
  /** Figures of the event in SI. */
  readonly figures: Readonly<Record<string, number>>;
}
