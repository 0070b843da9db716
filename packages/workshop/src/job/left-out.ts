import { type ChannelName, channels } from './channels.js';

/** A cell that was left out, where it stood and why. */
export interface LeftOutCell {
  readonly line: number;
  readonly column: ChannelName;
  readonly given: string;
  readonly reason: 'lost_signal' | 'beyond_limits' | 'outlier';
}

const reasons: Readonly<Record<LeftOutCell['reason'], string>> = {
  lost_signal: 'what a lost signal shows',
  beyond_limits: 'beyond what can be read there',
  outlier: 'far from all other readings of its stretch',
};

/** Places that are named one by one; more of the same would only fill the sheet. */
const named = 3;

/** One sentence for each column and reason, with the first lines and how many more. */
export function leftOutText(cells: readonly LeftOutCell[]): readonly string[] {
  const groups = new Map<string, LeftOutCell[]>();
  for (const cell of cells) {
    const key = `${cell.column} ${cell.reason}`;
    groups.set(key, [...(groups.get(key) ?? []), cell]);
  }
  return [...groups.values()].map((group) => {
    const places = group.slice(0, named).map(({ line, given }) => `line ${line} (${given})`);
    const more = group.length > named ? ` and ${group.length - named} more` : '';
    const [{ column, reason } = { column: 'time', reason: 'outlier' } as const] = group;
    return `${channels[column].label}, ${places.join(', ')}${more}: ${reasons[reason]}`;
  });
}
