import type { ChannelName } from './channels.js';

/** A steady state of the engine, from a stretch of a log or as it was typed in. */
export interface SteadyReading {
  /** Start and end in s of the log's time, the settling time left out. */
  readonly from: number;
  readonly to: number;
  readonly samples: number;
  readonly mean: { readonly [K in ChannelName]?: number };
  /** Standard uncertainty of that, from the scatter of the stretch or as it was typed; absent where nothing is known of it. */
  readonly uncertainty: { readonly [K in ChannelName]?: number };
  /** As it was typed, for the sheet. */
  readonly typed?: { readonly [K in ChannelName]?: string };
  /** Channels that scatter more than a sound signal of a steady engine does; the stretch cannot be used. */
  readonly restless: readonly ChannelName[];
  /** Channels that the log has, but that have no mean in this stretch. */
  readonly lost: readonly ChannelName[];
}
