import type { ChannelName } from '../channels/channels.js';

/** Why a line or a single value was not used. */
export type LeftOutReason =
  // Whole lines.
  | 'no-time'
  | 'time-back'
  | 'same-line-again'
  | 'header-again'
  | 'too-many-cells'
  | 'cut-off'
  | 'comment'
  | 'no-row'
  | 'too-long'
  // Single values.
  | 'not-a-number'
  | 'thousand-or-decimal'
  | 'mixed-signs'
  | 'unit-in-cell'
  | 'too-large'
  | 'too-small'
  | 'outside-limits'
  | 'signal-lost'
  | 'open-circuit'
  | 'stuck'
  | 'saturated'
  | 'outlier'
  | 'scattered';

/** What was not used, and how often. */
export interface LeftOut {
  readonly reason: LeftOutReason;
  /** The channel, where single values were left out and not whole lines. */
  readonly channel?: ChannelName;
  readonly count: number;
  /** The line of the file where it happened first. */
  readonly firstLine: number;
}

const sentences: Readonly<Record<LeftOutReason, string>> = {
  'no-time': 'line without a time',
  'time-back': 'time ran back',
  'same-line-again': 'line repeats the one before it',
  'header-again': 'titles repeated',
  'too-many-cells': 'more cells than columns',
  'cut-off': 'line cut off at the end of the file',
  comment: 'comment',
  'no-row': 'line that is no row of values',
  'too-long': 'line too long to be a row',
  'not-a-number': 'not a number',
  'thousand-or-decimal': 'may be a thousand or a decimal',
  'mixed-signs': 'points and commas both used as the decimal sign',
  'unit-in-cell': 'another unit in the cell than the column has',
  'too-large': 'number too large',
  'too-small': 'number too small to be kept exactly',
  'outside-limits': 'outside what a working sensor shows',
  'signal-lost': 'the value that stands for a lost signal',
  'open-circuit': 'the value that an open sensor circuit gives',
  stuck: 'did not move while the engine speed changed',
  saturated: 'stood at the end of its range while the engine speed changed',
  outlier: 'far from the other values of a steady stretch',
  scattered: 'too scattered in a steady stretch for a mean',
};

/** The reason in words. */
export function reasonText(reason: LeftOutReason): string {
  return sentences[reason];
}

/** Counts what is left out, by reason and channel. */
export class LeftOutCounts {
  readonly #entries = new Map<string, { reason: LeftOutReason; channel?: ChannelName; count: number; firstLine: number }>();

  add(reason: LeftOutReason, line: number, channel?: ChannelName, count = 1): void {
    if (count <= 0) return;
    const key = channel === undefined ? reason : `${reason} ${channel}`;
    const entry = this.#entries.get(key);
    if (entry === undefined) this.#entries.set(key, { reason, ...(channel === undefined ? {} : { channel }), count, firstLine: line });
    else {
      entry.count += count;
      if (line < entry.firstLine) entry.firstLine = line;
    }
  }

  list(): LeftOut[] {
    return [...this.#entries.values()].sort((a, b) => a.firstLine - b.firstLine);
  }
}
