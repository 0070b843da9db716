import type { ChannelName } from '../channels/channels.js';

/** What a column could be; the unit is absent where it is asked for too. */
export interface Choice {
  readonly channel: ChannelName;
  readonly unit?: string;
}

/** Something that the log leaves open. The column is not used until it is answered. */
export type Question =
  | { readonly ask: 'channel'; readonly column: string; readonly choices: readonly Choice[] }
  | { readonly ask: 'unit'; readonly column: string; readonly given?: string; readonly choices: readonly Choice[] }
  | { readonly ask: 'which column'; readonly channel: ChannelName; readonly columns: readonly string[] }
  | {
      readonly ask: 'wrong values';
      readonly column: string;
      readonly channel: ChannelName;
      readonly share: number;
      readonly example: string;
    }
  | { readonly ask: 'decimal sign'; readonly column: string; readonly channel: ChannelName; readonly example?: string }
  | { readonly ask: 'clock'; readonly column: string; readonly example: string }
  | { readonly ask: 'time'; readonly columns: readonly string[] };
